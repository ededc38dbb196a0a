// From a draft to sheets of paper: panels laid out, written on, and cut into sheets. No page is made yet, so the screen can
// show how the sheets will lie.

import type { Point } from '../engine';
import { type Arrangement, arrange, GAP_MM } from './arrange';
import { type Box, moved } from './ink';
import { boxOfText, cornersOf } from './panel/textBlock';
import { type LinedPiece, linedPieces, type PlacedPanel, type PlanInput, placePanels } from './placePanels';
import type { Correction } from './sheets/correction';
import { type Grid, gridFor, type SheetPlace, stepAcross, stepDown } from './sheets/grid';
import { inkedSheets } from './sheets/inkedSheets';
import { type Joint, jointsOf } from './sheets/joints';
import type { PaperChoice } from './sheets/papers';
import { type UprightPage, uprightPage } from './sheets/uprightPage';

/** Everything a pattern printed on sheets is made from. */
export interface PatternInput extends PlanInput {
  /** One that `checkPaper` has passed. */
  readonly paper: PaperChoice;
  /** For the printer in hand; none is needed where it keeps the scale. */
  readonly correction?: Correction;
  /** Names of sheets that are laid out as ever and not printed. */
  readonly leftOut?: readonly string[];
}

export interface Layout {
  /** The paper held upright, as its printer measures it. */
  readonly page: UprightPage;
  readonly grid: Grid;
  readonly panels: readonly PlacedPanel[];
  /** The sheets that have ink, by rows. */
  readonly sheets: readonly SheetPlace[];
  readonly joints: readonly Joint[];
}

/** Room between the outermost cut lines and the edge of the plan, where texts beside an edge may stand. mm */
const RIM_MM = GAP_MM / 2;

/** More columns than this are a roll's business. */
const MOST_COLUMNS = 60;

/** Lays the draft out on as few sheets of the paper as rows of upright panels take. A draft without pieces takes none. */
export function layOut(input: PatternInput): Layout {
  const lined = linedPieces(input);
  const page = uprightPage(input.paper, input.correction);
  const { grid, offsets } = fewestSheets(lined, page, input.paper.orientation);
  const panels = placePanels(lined, offsets, input, bandsOf(grid));
  const lines = panels.flatMap((panel) => panel.lines.map((line) => line.points));
  const boxes = panels.flatMap((panel) => panel.texts.map((text) => closed(cornersOf(boxOfText(text)))));
  const sheets = inkedSheets(grid, [...lines, ...boxes]);
  return { page, grid, panels, sheets, joints: jointsOf(grid, sheets, [...lines, ...boxes]) };
}

interface Plan {
  readonly grid: Grid;
  readonly offsets: readonly Point[];
}

/** Tries rows as wide as 1, 2, 3… sheets, both ways up; of those with as few sheets, the one with the fewest joints to tape. */
function fewestSheets(
  lined: readonly LinedPiece[],
  page: UprightPage,
  orientation: PaperChoice['orientation'],
): Plan {
  const outlines = lined.map(({ piece }) => ({ id: piece.id, ring: piece.cutLine }));
  const ways = orientation === 'fewest' ? (['portrait', 'landscape'] as const) : [orientation];
  let best: Plan = { grid: gridFor(page, ways[0] ?? 'portrait', 0, 0), offsets: [] };
  if (lined.length === 0) return best;
  const telling = tellingLines(lined);
  let least = Infinity;
  let found: { arrangement: Arrangement; way: Grid['orientation'] } | null = null;
  for (const way of ways) {
    const one = gridFor(page, way, 1, 1);
    for (const byHeight of [false, true])
      for (let columns = 1; columns <= MOST_COLUMNS; columns += 1) {
        const room = columns * stepAcross(one) + one.overlapMm - 2 * RIM_MM;
        const arrangement = arrange(outlines, room, byHeight);
        const plan = placed(arrangement, page, way, MIDDLE);
        const cost = costOf(plan, telling);
        if (cost < least) [best, least, found] = [plan, cost, { arrangement, way }];
        if (arrangement.rows === 1) break;
      }
  }
  // Within the room that the sheets leave, panels are moved so that fewer of them lie across a joint.
  for (const down of SHIFTS)
    for (const across of SHIFTS) {
      if (!found) continue;
      const plan = placed(found.arrangement, page, found.way, { x: across, y: down });
      const cost = costOf(plan, telling);
      if (cost < least) [best, least] = [plan, cost];
    }
  return best;
}

const MIDDLE: Point = { x: 0.5, y: 0.5 };
const SHIFTS = [0.5, 0.35, 0.65, 0.2, 0.8, 0, 1];

/** Sew lines and marks are where the cut line is, or inside it where the grain line is. */
const tellingLines = (lined: readonly LinedPiece[]): (readonly Point[])[][] =>
  lined.map(({ lines }) =>
    lines
      .filter(({ stroke }) => stroke === 'cut' || stroke === 'fold' || stroke === 'grain')
      .map(({ points }) => points),
  );

/** Sheets first, then how many panels each sheet has a part of. */
function costOf({ grid, offsets }: Plan, telling: readonly (readonly (readonly Point[])[])[]): number {
  const sheets = new Set<number>();
  let parts = 0;
  for (const [i, lines] of telling.entries()) {
    const on = inkedSheets(grid, lines, offsets[i] as Point);
    parts += on.length;
    for (const { row, column } of on) sheets.add(row * grid.columns + column);
  }
  return sheets.size * 10_000 + parts;
}

/** The arrangement on the sheets it takes; `share` says which part of the room left over lies to its left and above it. */
function placed(arrangement: Arrangement, page: UprightPage, way: Grid['orientation'], share: Point): Plan {
  const { widthMm, heightMm, offsets } = arrangement;
  const grid = gridFor(page, way, widthMm + 2 * RIM_MM, heightMm + 2 * RIM_MM);
  const across = grid.columns * stepAcross(grid) + grid.overlapMm - 2 * RIM_MM;
  const down = grid.rows * stepDown(grid) + grid.overlapMm - 2 * RIM_MM;
  const by = { x: RIM_MM + (across - widthMm) * share.x, y: RIM_MM + (down - heightMm) * share.y };
  return { grid, offsets: moved(offsets, by) };
}

/** Where sheets lie over each other; texts that keep clear of these are whole on one sheet. */
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

const closed = (points: readonly Point[]): Point[] => (points[0] ? [...points, points[0]] : []);
