// What the drawings of the blocks and of the closed panels say of themselves.

import { catalogue } from '../../catalogue';

export const TABLE = catalogue({
  blocks: 'Front and back half blocks',
  /** A number with where it has come to rest. */
  valueAt: ({ value, place }: { value: string; place: string }) => `${value}, ${place}`,
  panelWidth: ({ piece, width }: { piece: string; width: string }) => `${piece} ${width}`,
  partWidth: ({ piece, width }: { piece: string; width: string }) => `${width} of ${piece}`,
  withoutFittings: 'Broken lines: without the fittings',
  closedHalf: 'The panels closed up along their seams, centre front on the left',
  closedWhole: 'The panels closed up along their seams, centre front in the middle',
});
