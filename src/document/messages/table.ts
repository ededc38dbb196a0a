// What the drawing of the blocks says of itself, and of a handle while it is dragged.

import { catalogue } from './catalogue';

export const TABLE = catalogue({
  blocks: 'Front and back half blocks',
  /** A number with where it has come to rest. */
  valueAt: ({ value, place }: { value: string; place: string }) => `${value}, ${place}`,
  panelWidth: ({ piece, width }: { piece: string; width: string }) => `${piece} ${width}`,
  partWidth: ({ piece, width }: { piece: string; width: string }) => `${width} of ${piece}`,
});
