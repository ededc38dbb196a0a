// What is printed of a draft and its client wherever the pattern is: faults, estimates, tight lacing, zips.

import type { BlockName } from '../../../engine';
import { catalogue } from '../catalogue';

export const REMARKS = catalogue({
  doNotCut: 'This draft has blocking faults: do not cut.',
  estimates: {
    heading: 'Estimated, not measured',
    measureFirst: 'Measure before you cut; ± holds for nineteen women in twenty.',
    /** A line each. */
    line: ({ measurement, amount }: { measurement: string; amount: string }) =>
      `${measurement}: estimated, ${amount}`,
    /** One of them within `all`. */
    item: ({ measurement, amount }: { measurement: string; amount: string }) => `${measurement} ${amount}`,
    all: ({ items }: { items: readonly string[] }) =>
      `Estimated, not measured: ${items.join('; ')}. Measure before you cut; ± holds for nineteen women in twenty.`,
  },
  tightLacing: {
    notAcknowledged: 'The cautions for this reduction have not been acknowledged.',
    acknowledged: {
      waist: ({ waist }: { waist: string }) =>
        `The cautions for a waist reduction of ${waist} were read and acknowledged.`,
      ribs: ({ ribs }: { ribs: string }) =>
        `The cautions for an under-bust reduction of ${ribs} were read and acknowledged.`,
      both: ({ waist, ribs }: { waist: string; ribs: string }) =>
        `The cautions for a waist reduction of ${waist} and an under-bust reduction of ${ribs} were read and acknowledged.`,
    },
  },
  zips: {
    /** On an edge that closes with one. */
    here: 'zip',
    onTheLeft: 'zip on the left',
    centre: ({ block }: { block: BlockName }) => `Zip at centre ${block}.`,
    side: 'Zip in the left side seam; the right one is sewn.',
  },
});
