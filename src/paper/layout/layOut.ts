// Lays a draft out on sheets of paper. No page is made, so that the screen can show the layout too.

import type { Point } from '../../engine';
import type { Box } from '../geometry/box';
import type { Turns } from '../geometry/turned';
import { fewestSheets } from '../packing/fewestSheets';
import { MOST_NESTED } from '../packing/nestOnSheets';
import { outlineWays } from '../packing/placements';
import { MOST_SEARCHED } from '../packing/searchOnSheets';
import { boxOfText, cornersOf } from '../panel/textBlock';
import type { Correction } from '../sheets/correction';
import { type Grid, type SheetPosition, stepAcross, stepDown } from '../sheets/grid';
import { type Joint, jointsOf } from '../sheets/joints';
import type { PaperChoice } from '../sheets/papers';
import { type UprightPage, uprightPage } from '../sheets/uprightPage';
import { usedSheets } from '../sheets/usedSheets';
import { linedPieces, type PlacedPanel, placePanels } from './placePanels';
import type { PlanInput } from './planInput';

/** The input of a pattern printed on sheets. */
export interface PatternInput extends PlanInput {
  /** A paper that `checkPaper` accepts. */
  readonly paper: PaperChoice;
  /** Correction for the printer; none where it keeps the scale. */
  readonly correction?: Correction;
  /** Names of sheets that are part of the layout but not printed. */
  readonly leftOut?: readonly string[];
  /** True where many patterns are made: the layout takes less time and may take a sheet more. */
  readonly isQuick?: boolean;
}

export interface Layout {
  /** The upright page, in the millimetres that its printer makes. */
  readonly page: UprightPage;
  readonly grid: Grid;
  readonly panels: readonly PlacedPanel[];
  /** The sheets that are used, by rows. */
  readonly sheets: readonly SheetPosition[];
  readonly joints: readonly Joint[];
}

/** Lays the draft out on the fewest sheets found. A draft without pieces takes none. */
export function layOut(input: PatternInput): Layout {
  const lined = linedPieces(input);
  const page = uprightPage(input.paper, input.correction);
  const outlines = lined.map((each) => outlineWays(each, waysOf(input, lined.length)));
  const { grid, placements } = fewestSheets(outlines, page, input.paper.orientation, input.isQuick);
  return onSheets(page, grid, placePanels(lined, placements, input, bandsOf(grid)));
}

/** How panels may be turned: not at all on cloth with a nap, and sideways only where the search goes that far. */
const waysOf = ({ nap, isQuick }: PatternInput, panels: number): readonly Turns[] =>
  nap || panels > MOST_NESTED ? [] : isQuick || panels > MOST_SEARCHED ? [2] : [2, 1, 3];

/** Panels on a grid of sheets: which sheets are used, and how they join. */
export function onSheets(page: UprightPage, grid: Grid, panels: readonly PlacedPanel[]): Layout {
  const lines = panels.flatMap((panel) => panel.lines.map((line) => line.points));
  const boxes = panels.flatMap((panel) => panel.texts.map((text) => closedRing(cornersOf(boxOfText(text)))));
  const sheets = usedSheets(grid, [...lines, ...boxes]);
  return { page, grid, panels, sheets, joints: jointsOf(grid, sheets, [...lines, ...boxes]) };
}

/** The overlaps of sheets. A text that keeps clear of them is whole on one sheet. */
function bandsOf(grid: Grid): Box[] {
  const [across, down] = [stepAcross(grid), stepDown(grid)];
  const [right, bottom] = [grid.columns * across + grid.overlapMm, grid.rows * down + grid.overlapMm];
  const bands: Box[] = [];
  for (let column = 1; column < grid.columns; column += 1)
    bands.push({ left: column * across, right: column * across + grid.overlapMm, top: 0, bottom });
  for (let row = 1; row < grid.rows; row += 1)
    bands.push({ left: 0, right, top: row * down, bottom: row * down + grid.overlapMm });
  return bands;
}

const closedRing = (points: readonly Point[]): Point[] => (points[0] ? [...points, points[0]] : []);
