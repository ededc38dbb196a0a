// Nests outlines on sheets, so that they need fewer sheets than another layout.

import { signedArea } from '../../engine';
import { type Grid, gridFor, stepAcross, stepDown } from '../sheets/grid';
import type { PaperChoice } from '../sheets/papers';
import type { UprightPage } from '../sheets/uprightPage';
import { GAP_MM } from './arrange';
import { nest } from './nest';
import { type Order, ordersOf } from './orders';
import { type OutlineWays, placementsOf, profilesOf } from './placements';
import type { Profile } from './profile';
import { type FillDirection, SHEET_COST, sheetArea } from './sheetArea';
import { costOfPlan, RIM_MM, type SheetPlan, sheetsOfCost, trimmed } from './sheetPlan';

type Orientation = Exclude<PaperChoice['orientation'], 'fewest'>;

/** The layout with the fewest sheets that is found below `most`; null where none is found. Same input, same layout. */
export function nestOnSheets(
  outlines: readonly OutlineWays[],
  page: UprightPage,
  orientations: readonly Orientation[],
  most: number,
): SheetPlan | null {
  if (outlines.length > MOST_NESTED) return null;
  const profiles = profilesOf(outlines);
  const tries = triesFor(profiles);
  const grids = gridsFor(outlines, profiles, page, orientations, most);
  const affordable = Math.max(1, Math.floor(WORK / outlines.length ** 2 / Math.max(1, grids.length)));
  let best: SheetPlan | null = null;
  let fewest = most;
  for (const { order, fill } of tries.slice(0, affordable))
    for (const grid of grids) {
      const inOrder = order.map((i) => profiles[i] as Profile[]);
      const spots = nest(inOrder, sheetArea(grid, RIM_MM, fill), fewest * SHEET_COST);
      if (!spots) continue;
      const plan = trimmed({ grid, placements: placementsOf(spots, order, outlines) }, outlines);
      const sheets = sheetsOfCost(costOfPlan(plan, outlines));
      if (sheets < fewest) [best, fewest] = [plan, sheets];
    }
  return best;
}

/** With more outlines than this the search takes too long. */
export const MOST_NESTED = 20;

/** Bound on outlines² × grids × tries: few outlines are tried in more orders than many. */
const WORK = 800;

interface Try {
  readonly order: Order;
  readonly fill: FillDirection;
}

/** Orders to try. Those that saved most sheets on ready-made styles and random bodies come first. */
function triesFor(profiles: readonly (readonly Profile[])[]): Try[] {
  const { drafted, widest, tallest } = ordersOf(profiles);
  return [
    { order: widest, fill: 'down' },
    { order: drafted, fill: 'down' },
    { order: widest, fill: 'across' },
    { order: tallest, fill: 'down' },
    { order: drafted, fill: 'across' },
    { order: tallest, fill: 'across' },
  ];
}

/** Grids of up to `most` sheets that the outlines may fit on, the smallest first. */
function gridsFor(
  outlines: readonly OutlineWays[],
  profiles: readonly (readonly Profile[])[],
  page: UprightPage,
  orientations: readonly Orientation[],
  most: number,
): Grid[] {
  const area = outlines.reduce((sum, [{ ring }]) => sum + Math.abs(signedArea(ring)), 0);
  const [width, height] = (['widthMm', 'heightMm'] as const).map((of) =>
    Math.max(0, ...profiles.map(([profile]) => profile?.[of] ?? 0)),
  ) as [number, number];
  return orientations
    .flatMap((orientation) => {
      const one = gridFor(page, orientation, 1, 1);
      const [across, down] = [stepAcross(one), stepDown(one)];
      const areaMm2 = across * down;
      let least = Math.max(1, Math.ceil(area / areaMm2));
      while (area > fullest(least) * least * areaMm2) least += 1;
      const found: Grid[] = [];
      if (least >= most) return found;
      for (let columns = 1; columns <= most; columns += 1)
        for (let rows = 1; columns * rows <= most; rows += 1) {
          const fits =
            width - GAP_MM + 2 * RIM_MM <= columns * across + one.overlapMm + 1e-9 &&
            height - GAP_MM + 2 * RIM_MM <= rows * down + one.overlapMm + 1e-9;
          if (fits && columns * rows >= least) found.push({ ...one, columns, rows });
        }
      return found;
    })
    .sort((a, b) => a.columns * a.rows - b.columns * b.rows);
}

/** Upper bound on the share of the sheets' area that panels fill. The most seen was 0.85 of two sheets and 0.73 of six. */
const fullest = (sheets: number): number => 0.76 + 0.24 / sheets;
