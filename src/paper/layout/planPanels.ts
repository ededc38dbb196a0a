// Lays all panels on one plan that is not cut into sheets: for a roll, a projector, SVG and DXF.

import { GAP_MM } from '../packing/arrange';
import { onRoll } from '../packing/onRoll';
import { movedPlacements, outlineWays } from '../packing/placements';
import { linedPieces, type PlacedPanel, placePanels, type Reading } from './placePanels';
import type { PlanInput } from './planInput';

export interface Plan {
  readonly panels: readonly PlacedPanel[];
  /** Size with the rim around the outermost cut lines, where texts beside an edge may stand. mm */
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Rim around the panels. mm */
const RIM_MM = GAP_MM;

/**
 * The panels on a plan that, rim included, is no wider than `mostWidthMm` and as short as is found; a single panel that is wider
 * makes the plan wider. Texts are sized for paper unless `reading` is given. A draft without pieces takes no room.
 */
export function planPanels(input: PlanInput, mostWidthMm: number, reading?: Reading): Plan {
  const lined = linedPieces(input);
  if (lined.length === 0) return { panels: [], widthMm: 0, heightMm: 0 };
  const outlines = lined.map((each) => outlineWays(each, input.nap ? [] : [2]));
  const { placements, widthMm, heightMm } = onRoll(outlines, mostWidthMm - 2 * RIM_MM);
  return {
    panels: placePanels(lined, movedPlacements(placements, { x: RIM_MM, y: RIM_MM }), input, [], reading),
    widthMm: widthMm + 2 * RIM_MM,
    heightMm: heightMm + 2 * RIM_MM,
  };
}
