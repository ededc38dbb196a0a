// Chooses the layout with the fewest sheets of those that are tried.

import type { PaperChoice } from '../sheets/papers';
import type { UprightPage } from '../sheets/uprightPage';
import { nestOnSheets } from './nestOnSheets';
import type { OutlineWays } from './placements';
import { rowsOnSheets } from './rowsOnSheets';
import { searchOnSheets } from './searchOnSheets';
import { bestLayout, costOfPlan, type SheetPlan, sheetsOfCost } from './sheetPlan';

/**
 * Panels in rows, or nested where that takes fewer sheets; turned only where that saves another sheet, upside down before
 * sideways. Cut lines are at least `GAP_MM` of arrange.ts apart. A quick layout leaves out the last and longest search.
 */
export function fewestSheets(
  outlines: readonly OutlineWays[],
  page: UprightPage,
  orientation: PaperChoice['orientation'],
  isQuick = false,
): SheetPlan {
  const orientations = orientation === 'fewest' ? (['portrait', 'landscape'] as const) : [orientation];
  let best = rowsOnSheets(outlines, page, orientations);
  if (outlines.length === 0) return best;
  const sheets = (): number => sheetsOfCost(costOfPlan(best, outlines));
  const upright = outlines.map(([up]): OutlineWays => [up]);
  best = nestOnSheets(upright, page, orientations, sheets()) ?? best;
  const heads = outlines.map(
    ([up, ...others]): OutlineWays => [up, ...others.filter(({ turns }) => turns === 2)],
  );
  if (heads.some(({ length }) => length > 1))
    best = nestOnSheets(heads, page, orientations, sheets()) ?? best;
  if (!isQuick) best = searchOnSheets(outlines, page, orientations, sheets()) ?? best;
  return bestLayout(best, outlines);
}
