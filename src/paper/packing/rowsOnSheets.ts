// Outlines in rows side by side, box by box: the layout that others have to better.

import { gridFor, stepAcross } from '../sheets/grid';
import type { PaperChoice } from '../sheets/papers';
import type { UprightPage } from '../sheets/uprightPage';
import { arrange } from './arrange';
import type { OutlineTurns } from './placements';
import { costOfPlan, onOwnGrid, RIM_MM, type SheetPlan } from './sheetPlan';

/** More columns than this are a roll's business. */
const MOST_COLUMNS = 60;

/** Tries rows as wide as 1, 2, 3… sheets; of those with as few sheets, the one with the fewest joints to tape. */
export function rowsOnSheets(
  outlines: readonly OutlineTurns[],
  page: UprightPage,
  orientations: readonly Exclude<PaperChoice['orientation'], 'fewest'>[],
): SheetPlan {
  const rings = outlines.map(([{ ring }]) => ring);
  let best: SheetPlan = { grid: gridFor(page, orientations[0] ?? 'portrait', 0, 0), placements: [] };
  let least = Infinity;
  if (outlines.length === 0) return best;
  for (const orientation of orientations) {
    const one = gridFor(page, orientation, 1, 1);
    for (const byHeight of [false, true])
      for (let columns = 1; columns <= MOST_COLUMNS; columns += 1) {
        const room = columns * stepAcross(one) + one.overlapMm - 2 * RIM_MM;
        const arrangement = arrange(rings, room, byHeight);
        const plan = onOwnGrid(arrangement, page, orientation);
        const cost = costOfPlan(plan, outlines);
        if (cost < least) [best, least] = [plan, cost];
        if (arrangement.rows === 1) break;
      }
  }
  return best;
}
