// Lays outlines in rows on sheets: the layout that nesting is compared with.

import { gridFor, stepAcross } from '../sheets/grid';
import type { PaperChoice } from '../sheets/papers';
import type { UprightPage } from '../sheets/uprightPage';
import { arrangeBoxes, boxesOf } from './arrange';
import type { OutlineWays } from './placements';
import { costOfPlan, likeliest, onOwnGrid, RIM_MM, type SheetPlan } from './sheetPlan';

/** Most columns of sheets that are tried. */
const MOST_COLUMNS = 60;

/** Tries rows as wide as 1, 2, 3… sheets and gives the layout with the fewest sheets; of equal ones that with the fewest joins. */
export function rowsOnSheets(
  outlines: readonly OutlineWays[],
  page: UprightPage,
  orientations: readonly Exclude<PaperChoice['orientation'], 'fewest'>[],
): SheetPlan {
  const boxes = boxesOf(outlines.map(([{ ring }]) => ring));
  let best: SheetPlan = { grid: gridFor(page, orientations[0] ?? 'portrait', 0, 0), placements: [] };
  let least = Infinity;
  if (outlines.length === 0) return best;
  const plans: SheetPlan[] = [];
  for (const orientation of orientations) {
    const one = gridFor(page, orientation, 1, 1);
    for (const byHeight of [false, true])
      for (let columns = 1; columns <= MOST_COLUMNS; columns += 1) {
        const room = columns * stepAcross(one) + one.overlapMm - 2 * RIM_MM;
        const arrangement = arrangeBoxes(boxes, room, byHeight);
        const plan = onOwnGrid(arrangement, page, orientation);
        plans.push(plan);
        if (arrangement.rows === 1) break;
      }
  }
  for (const plan of likeliest(plans, outlines)) {
    const cost = costOfPlan(plan, outlines);
    if (cost < least) [best, least] = [plan, cost];
  }
  return best;
}
