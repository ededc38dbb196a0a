// The pattern for a projector: light lines on a dark page, over a grid for setting the scale.

import { PATTERN, type Unit } from '../../document';
import { inches } from '../../engine';
import type { Glyphs } from '../glyphs/glyphs';
import type { WithFace } from '../glyphs/pageFace';
import { movedPanel, type Reading } from '../layout/placePanels';
import type { PlanInput } from '../layout/planInput';
import { type Plan, planPanels } from '../layout/planPanels';
import { STROKE_STYLES } from '../panel/strokeStyles';
import type { PlacedText } from '../panel/strokes';
import { boxOfText, cornersOf } from '../panel/textBlock';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { estimatedRemark } from '../remarks/estimates';
import { MOST_SIDE_MM } from '../sheets/checkPaper';
import { shortened } from '../text/textWidth';
import { settable } from '../text/writable';
import type { PdfCanvas } from './file/pdfCanvas';
import { pdfFile, TITLE_MM } from './file/pdfFile';
import { drawPanels } from './onePagePdf';
import { projectorStyle } from './projectorStyle';

export interface ProjectorChoice {
  /** Greatest width of the picture, mm. */
  readonly widthMm: number;
  /** Width of the cut line, mm; other lines are in proportion. */
  readonly lineMm: number;
}

export const LEAST_LINE_MM = 0.3;
export const MOST_LINE_MM = 6;
export const DEFAULT_PROJECTOR: ProjectorChoice = { widthMm: 914.4, lineMm: 1.5 };

/** Height at the top for the names and the size of the grid, mm. */
const HEAD_MM = 24;
const FRAME_MM = 10;
const REMARK_PT = 14;

/** Side of a square of the grid, mm: a round length of the unit. */
export const gridSideMm = (unit: 'in' | 'cm'): number => (unit === 'in' ? inches(2) : 50);

/** Factor on the sizes of texts, which are read from beside the cutting table. */
const TEXT_SCALE = 1.6;

/** The panels inside the frame of the picture. */
export const planProjected = (input: PlanInput, { widthMm, lineMm }: ProjectorChoice): Plan =>
  planPanels(input, planWidth(widthMm), projectedReading(lineMm));

/** Width of the plan in a picture of this width, mm. */
export const planWidth = (widthMm: number): number => widthMm - 2 * FRAME_MM;

/** How texts are read in a picture whose cut line is `lineMm` wide. */
export const projectedReading = (lineMm: number): Reading => ({
  textScale: TEXT_SCALE,
  heavierMm: Math.max(0, (lineMm - STROKE_STYLES.cut.widthMm) / 2),
});

export const isProjectorChoice = ({ widthMm, lineMm }: ProjectorChoice): boolean =>
  lineMm >= LEAST_LINE_MM && lineMm <= MOST_LINE_MM && widthMm >= 300 && widthMm <= MOST_SIDE_MM;

/**
 * The bytes of a PDF of one dark page, as large as the panels need and a whole number of squares of its grid. Null where a side
 * would be over 5080 mm. Same input, same bytes.
 *
 * @throws RangeError on a choice that {@link isProjectorChoice} refuses
 */
export async function projectorPdf(
  input: PlanInput & WithFace,
  choice: ProjectorChoice,
): Promise<Uint8Array | null> {
  if (!isProjectorChoice(choice)) throw new RangeError('projector choice not checked');
  const { client, savedDraft, date } = input;
  const plan = planProjected(input, choice);
  const names = [client.name, savedDraft.name, date]
    .map((name) => settable(name))
    .filter((name) => name !== '');
  const outlines = plan.panels.map(({ piece, offset }) => [offset, piece.cutLine]);
  const hint = hasErrors(input) ? [DO_NOT_CUT] : [PATTERN.grid[client.unit]];
  const estimated = estimatedRemark(client);
  return projectedPdf(
    plan,
    choice,
    {
      title: names.slice(0, 2).join(', '),
      head: [...hint, ...names].join(' · '),
      remark: estimated === null ? null : settable(estimated),
      unit: client.unit,
      seed: JSON.stringify([names, choice, client.unit, estimated, outlines]),
    },
    input,
  );
}

/** What stands above a projected plan. */
interface ProjectedTexts {
  readonly title: string;
  readonly head: string;
  /** A second line; null where there is none. */
  readonly remark: string | null;
  readonly unit: Unit;
  /** The content as text: files with different seeds get different ids. */
  readonly seed: string;
}

/** The bytes of a PDF of any plan on one dark page; null where a side would be over 5080 mm. The choice is checked. */
export async function projectedPdf(
  plan: Plan,
  choice: ProjectorChoice,
  { title, head: headText, remark, unit, seed }: ProjectedTexts,
  input: WithFace & { readonly glyphs?: Glyphs | null },
): Promise<Uint8Array | null> {
  const side = gridSideMm(unit);
  const [columns, rows] = [plan.widthMm + 2 * FRAME_MM, plan.heightMm + HEAD_MM + 2 * FRAME_MM].map((mm) =>
    Math.max(4, Math.ceil(mm / side)),
  ) as [number, number];
  const [width, height] = [columns * side, rows * side];
  if (Math.max(width, height) > MOST_SIDE_MM) return null;
  const pdf = await pdfFile(shortened(title, 10, false, TITLE_MM), seed, input);
  const canvas = pdf.page(width, height, undefined, projectorStyle(choice.lineMm));
  canvas.blank(0, 0, width, height);
  drawGrid(canvas, columns, rows, side);
  const headLine = (content: string, y: number, sizePt: number): PlacedText => ({
    text: shortened(content, sizePt, true, width - 2 * FRAME_MM),
    start: { x: FRAME_MM, y: FRAME_MM + y },
    turnRad: 0,
    sizePt,
    bold: true,
  });
  const head = [headLine(headText, 10, 22), ...(remark === null ? [] : [headLine(remark, 19, REMARK_PT)])];
  const panels = plan.panels.map((panel) => movedPanel(panel, { x: FRAME_MM, y: FRAME_MM + HEAD_MM }));
  // The grid is covered under texts.
  for (const text of [...head, ...panels.flatMap(({ texts }) => texts)])
    canvas.cover(cornersOf(boxOfText(text)));
  for (const text of head) canvas.text(text);
  drawPanels(canvas, panels);
  return pdf.bytes();
}

function drawGrid(canvas: PdfCanvas, columns: number, rows: number, side: number): void {
  const [width, height] = [columns * side, rows * side];
  for (let column = 0; column <= columns; column += 1)
    canvas.line('grid', [
      { x: column * side, y: 0 },
      { x: column * side, y: height },
    ]);
  for (let row = 0; row <= rows; row += 1)
    canvas.line('grid', [
      { x: 0, y: row * side },
      { x: width, y: row * side },
    ]);
}
