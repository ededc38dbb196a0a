// A plan as plain data for other programs: the content of lay.json.

import { laidWidth } from './cloth';
import type { LayPlan } from './plan';

/**
 * Lengths in mm. `width` is what the outlines lie on: half of the usable width on folded cloth, which lies in two `layers`. An
 * outline is the cut line as it lies, x along the cloth, y across it from the selvedge or the fold; its end is not repeated. `turn`
 * in degrees from the grain along the cloth with the head first.
 */
export function layFile(plan: LayPlan) {
  return {
    unit: 'mm',
    width: rounded(laidWidth(plan.cloth)),
    length: rounded(plan.lengthMm),
    density: rounded(plan.density),
    layers: plan.cloth.folded ? 2 : 1,
    placed: plan.placed.map(({ piece, of, copy, mirrored, onFold, turn, outline }) => ({
      ...(of === null ? {} : { of }),
      piece: piece.id,
      copy,
      mirrored,
      onFold,
      turn,
      outline: outline.map(({ x, y }) => [rounded(x), rounded(y)]),
    })),
  };
}

/** Rounded to 1e-6; adding zero turns −0 into 0. */
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
