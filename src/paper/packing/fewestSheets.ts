// The layout of a pattern that takes the fewest sheets of those tried.

import type { PaperChoice } from '../sheets/papers';
import type { UprightPage } from '../sheets/uprightPage';
import { nestOnSheets } from './nestOnSheets';
import type { OutlineTurns } from './placements';
import { rowsOnSheets } from './rowsOnSheets';
import { bestLayout, costOfPlan, type SheetPlan, sheetsOfCost } from './sheetPlan';

/**
 * Panels in rows, unless fewer sheets do for panels laid into each other's hollows; turned only where that saves another
 * sheet. Cut lines never come nearer to each other than `GAP_MM` of arrange.
 */
export function fewestSheets(
  outlines: readonly OutlineTurns[],
  page: UprightPage,
  orientation: PaperChoice['orientation'],
): SheetPlan {
  const orientations = orientation === 'fewest' ? (['portrait', 'landscape'] as const) : [orientation];
  let best = rowsOnSheets(outlines, page, orientations);
  if (outlines.length === 0) return best;
  const sheets = (): number => sheetsOfCost(costOfPlan(best, outlines));
  const upright = outlines.map(([up]): OutlineTurns => [up]);
  best = nestOnSheets(upright, page, orientations, sheets()) ?? best;
  if (outlines.some(([, down]) => down)) best = nestOnSheets(outlines, page, orientations, sheets()) ?? best;
  return bestLayout(best, outlines);
}
