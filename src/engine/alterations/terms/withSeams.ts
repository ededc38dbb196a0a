// An alteration that names other seams.

import type { Alteration, AlteredPlace, PlacedAmount, SeamName } from './alteration';

/** The alteration with each seam that it names, itself or as a place, put in another's stead; landmarks and amounts stay. */
export function withSeams(alteration: Alteration, seamFor: (name: SeamName) => SeamName): Alteration {
  const place = (each: AlteredPlace): AlteredPlace => (each.kind === 'landmark' ? each : seamFor(each));
  const placed = (at: readonly PlacedAmount[]) => at.map((each) => ({ ...each, place: place(each.place) }));
  switch (alteration.kind) {
    case 'seam':
      return { ...alteration, seam: seamFor(alteration.seam) };
    case 'length':
      return { ...alteration, at: placed(alteration.at) };
    case 'edge':
      return { ...alteration, at: placed(alteration.at) };
    case 'bustPoint':
      return alteration;
  }
}
