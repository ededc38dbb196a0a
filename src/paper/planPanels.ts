// All panels on one plan that is not cut into sheets: for a roll, a projector, a picture and other programs.

import { arrange, GAP_MM } from './arrange';
import { moved } from './ink';
import { linedPieces, type PlacedPanel, type PlanInput, placePanels } from './placePanels';

export interface Plan {
  readonly panels: readonly PlacedPanel[];
  /** Room around the outermost cut lines included; texts beside an edge may stand there. mm */
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Room around the panels. mm */
const RIM_MM = GAP_MM;

/**
 * The panels in rows that with their rim are no wider than `mostWidthMm`, as short as rows of upright panels come; a panel
 * that is wider alone makes the plan wider. A draft without pieces takes no room.
 */
export function planPanels(input: PlanInput, mostWidthMm: number): Plan {
  const lined = linedPieces(input);
  if (lined.length === 0) return { panels: [], widthMm: 0, heightMm: 0 };
  const outlines = lined.map(({ piece }) => ({ id: piece.id, ring: piece.cutLine }));
  const [asDrafted, byHeight] = [false, true].map((high) =>
    arrange(outlines, mostWidthMm - 2 * RIM_MM, high),
  ) as [ReturnType<typeof arrange>, ReturnType<typeof arrange>];
  const { offsets, widthMm, heightMm } = byHeight.heightMm < asDrafted.heightMm ? byHeight : asDrafted;
  return {
    panels: placePanels(lined, moved(offsets, { x: RIM_MM, y: RIM_MM }), input, []),
    widthMm: widthMm + 2 * RIM_MM,
    heightMm: heightMm + 2 * RIM_MM,
  };
}
