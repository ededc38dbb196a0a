// From a draft to sheets of paper: panels laid out, written on, and cut into sheets. No page is made yet, so the screen can
// show how the sheets will lie.

import type { Client, Sheet } from '../document';
import type { Draft, Piece, Point } from '../engine';
import { type Arrangement, arrange, GAP_MM } from './arrange';
import { type Box, type InkLine, type InkText, moved } from './ink';
import { panelLines } from './panel/panelLines';
import { panelTexts } from './panel/panelTexts';
import { boxOfText, cornersOf } from './panel/textBlock';
import { type Grid, gridFor, type SheetPlace, stepAcross, stepDown } from './sheets/grid';
import { inkedSheets } from './sheets/inkedSheets';
import { type Joint, jointsOf } from './sheets/joints';
import type { PaperChoice } from './sheets/papers';

/** Everything a printed pattern is made from. */
export interface PatternInput {
  readonly draft: Draft;
  readonly client: Pick<Client, 'name' | 'unit'>;
  readonly sheet: Pick<Sheet, 'name' | 'style' | 'acknowledgedReduction'>;
  /** The day as it is to be printed. */
  readonly date: string;
  /** One that `checkPaper` has passed. */
  readonly paper: PaperChoice;
}

/** A piece on the plan; lines and texts are where they are printed. */
export interface PlacedPanel {
  readonly piece: Piece;
  /** What was added to the piece's own coordinates. */
  readonly offset: Point;
  readonly lines: readonly InkLine[];
  readonly texts: readonly InkText[];
}

export interface Layout {
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
export function layOut({ draft, client, sheet, paper }: PatternInput): Layout {
  const lined = draft.pieces.map((piece) => ({ piece, lines: panelLines(piece) }));
  const { grid, offsets } = fewestSheets(lined, paper);
  const bands = bandsOf(grid);
  const names = { client: client.name, draft: sheet.name, unit: client.unit };
  const panels = lined.map(({ piece, lines }, i): PlacedPanel => {
    const offset = offsets[i] as Point;
    const ownBands = bands.map((band) => shifted(band, { x: -offset.x, y: -offset.y }));
    const { texts, leaders } = panelTexts(piece, lines, names, ownBands);
    return {
      piece,
      offset,
      lines: [...lines, ...leaders].map((line) => ({ ...line, points: moved(line.points, offset) })),
      texts: texts.map((text) => ({ ...text, start: moved([text.start], offset)[0] as Point })),
    };
  });
  const lines = panels.flatMap((panel) => panel.lines.map((line) => line.points));
  const boxes = panels.flatMap((panel) => panel.texts.map((text) => closed(cornersOf(boxOfText(text)))));
  const sheets = inkedSheets(grid, [...lines, ...boxes]);
  return { grid, panels, sheets, joints: jointsOf(grid, sheets, [...lines, ...boxes]) };
}

interface Plan {
  readonly grid: Grid;
  readonly offsets: readonly Point[];
}

function fewestSheets(
  lined: readonly { piece: Piece; lines: readonly InkLine[] }[],
  paper: PaperChoice,
): Plan {
  const outlines = lined.map(({ piece }) => ({ id: piece.id, ring: piece.cutLine }));
  const ways = paper.orientation === 'fewest' ? (['portrait', 'landscape'] as const) : [paper.orientation];
  let best: Plan = { grid: gridFor(paper, ways[0] ?? 'portrait', 0, 0), offsets: [] };
  let fewest = Infinity;
  if (lined.length === 0) return best;
  for (const way of ways) {
    const one = gridFor(paper, way, 1, 1);
    for (const byHeight of [false, true])
      for (let columns = 1; columns <= MOST_COLUMNS; columns += 1) {
        const room = columns * stepAcross(one) + one.overlapMm - 2 * RIM_MM;
        const arrangement = arrange(outlines, room, byHeight);
        const plan = centred(arrangement, paper, way);
        const lines = lined.flatMap((each, i) =>
          each.lines.map((line) => moved(line.points, plan.offsets[i] as Point)),
        );
        const count = inkedSheets(plan.grid, lines).length;
        if (count < fewest) [best, fewest] = [plan, count];
        if (arrangement.rows === 1) break;
      }
  }
  return best;
}

/** The arrangement in the middle of the sheets it takes. */
function centred(arrangement: Arrangement, paper: PaperChoice, way: Grid['orientation']): Plan {
  const { widthMm, heightMm, offsets } = arrangement;
  const grid = gridFor(paper, way, widthMm + 2 * RIM_MM, heightMm + 2 * RIM_MM);
  const across = grid.columns * stepAcross(grid) + grid.overlapMm;
  const down = grid.rows * stepDown(grid) + grid.overlapMm;
  return { grid, offsets: moved(offsets, { x: (across - widthMm) / 2, y: (down - heightMm) / 2 }) };
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

const shifted = (box: Box, by: Point): Box => ({
  left: box.left + by.x,
  right: box.right + by.x,
  top: box.top + by.y,
  bottom: box.bottom + by.y,
});

const closed = (points: readonly Point[]): Point[] => (points[0] ? [...points, points[0]] : []);
