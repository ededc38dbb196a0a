// Chooses the layout with the fewest sheets of those that are tried.

import type { PaperChoice } from '../sheets/papers';
import type { UprightPage } from '../sheets/uprightPage';
import { nestOnSheets } from './nestOnSheets';
import type { OutlineTurns } from './placements';
import { rowsOnSheets } from './rowsOnSheets';
import { bestLayout, costOfPlan, type SheetPlan, sheetsOfCost } from './sheetPlan';

/**
 * Panels in rows, or nested where that takes fewer sheets; turned only where that saves another sheet. Cut lines are at least
 * `GAP_MM` of arrange.ts apart.
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
