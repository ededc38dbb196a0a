// The whole pattern on one page as a PDF file, for plotters and copy shops.

import { alterationsOf, PATTERN } from '../../document';
import type { WithFace } from '../glyphs/pageFace';
import { layOutOnePage, type OnePage, type OnePageChoice, TEXT_BESIDE_FROM_MM } from '../layout/onePage';
import type { PlacedPanel } from '../layout/placePanels';
import type { PlanInput } from '../layout/planInput';
import { makingList } from '../making/makingList';
import { makingSections } from '../making/makingSections';
import { makingNames } from '../making/makingText';
import type { PlacedText } from '../panel/strokes';
import { boxOfText, cornersOf } from '../panel/textBlock';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { estimatedRemark } from '../remarks/estimates';
import { type Correction, NO_CORRECTION } from '../sheets/correction';
import { INCH_SQUARE_MM, METRIC_SQUARE_MM, SQUARES_GAP_MM } from '../sheets/pageMeasures';
import { shortened } from '../text/textWidth';
import { settable } from '../text/writable';
import { drawSquare } from './blocks/calibration';
import { drawParagraphs, type Paragraph } from './blocks/drawParagraphs';
import type { FlowPage } from './blocks/pageFlow';
import { drawHead } from './blocks/pageHead';
import { movedCanvas } from './file/movedCanvas';
import type { PdfCanvas } from './file/pdfCanvas';
import { pdfFile, TITLE_MM } from './file/pdfFile';
import { firstPageParagraphs, onePageParagraphs, recordParagraphs } from './firstPageParagraphs';
import { drawFittingForm } from './fittingForm';
import { drawMakingPages } from './makingPages';
import { drawRecordPage } from './recordPage';

/**
 * The bytes of a PDF of one page, 1 unit = 1/72 in: head, both calibration squares and all panels. On a sheet, as opposed to a roll, the
 * making list stands below the panels where the input has making settings; where it has no room there it follows on pages of its
 * own. Where fittings altered the draft, its record follows on pages of its own, because a list of alterations has no room beside the
 * squares; behind a mock-up comes the fitting form. Those pages are A4. Same input, same bytes.
 *
 * @throws RangeError on a page that {@link layOutOnePage} refuses
 */
export async function onePagePdf(
  input: PlanInput & WithFace,
  choice: OnePageChoice,
  correction?: Correction,
): Promise<Uint8Array> {
  const layout = layOutOnePage(input, choice, correction);
  if (!layout.ok) throw new RangeError(`page not checked: ${layout.fault.code}`);
  const { page } = layout;
  const { across, down } = correction ?? NO_CORRECTION;
  const scale = page.turned ? { x: down, y: across } : { x: across, y: down };
  const names = [input.client.name, input.savedDraft.name].map((name) => settable(name));
  const outlines = page.panels.map(({ piece, offset }) => [offset, piece.cutLine]);
  const pdf = await pdfFile(
    shortened(names.join(', '), 10, false, TITLE_MM),
    JSON.stringify([
      names,
      estimatedRemark(input.client),
      input.date,
      choice,
      correction,
      input.making,
      input.across,
      input.mockup,
      input.mockupNumber,
      input.savedDraft.fittings,
      input.tapeDay,
      input.program,
      outlines,
    ]),
    input,
  );
  const canvas = pdf.page(page.widthMm * scale.x, page.heightMm * scale.y, scale);
  drawTop(canvas, input, page, correction);
  drawPanels(canvas, page.panels);
  if (input.making && !input.mockup && choice.heightMm !== null)
    drawMakingPages(
      columnsBelow(canvas, page, () => pdf.page(LIST_PAGE.widthMm, LIST_PAGE.heightMm)),
      COLUMN,
      makingSections(
        makingList(input.draft, input.savedDraft.style, input.making),
        input.making,
        input.client.unit,
      ),
      makingNames(input),
    );
  const formPage = (): PdfCanvas => pdf.page(FORM_PAGE.widthMm, FORM_PAGE.heightMm);
  if (isAltered(input) || recordColumnOf(page) === null) drawRecordPage(formPage, FORM_PAGE, input);
  // A form is filled in with a pencil, so that it has a page of its own, on a roll too.
  if (input.mockup && input.draft.pieces.length > 0) drawFittingForm(formPage, FORM_PAGE, input);
  return pdf.bytes();
}

/** Whether a fitting has an alteration that is switched on. */
const isAltered = ({ savedDraft }: PlanInput): boolean => alterationsOf(savedDraft.fittings ?? []).length > 0;

/** A column of the making list, and the page, A4, that the list goes on to where no column is left. mm */
const COLUMN: FlowPage = { widthMm: 190, heightMm: 290, marginMm: 6 };
const LIST_PAGE = { widthMm: 210, heightMm: 297 } as const;
const FORM_PAGE: FlowPage = { ...LIST_PAGE, marginMm: 10 };

/** The room below the panels of a sheet as columns, and then further pages; no column where the room is too low for one. */
function columnsBelow(canvas: PdfCanvas, page: OnePage, nextPage: () => PdfCanvas): () => PdfCanvas {
  const lowest = Math.max(
    ...page.panels.flatMap(({ piece, offset }) => piece.cutLine.map(({ y }) => y + offset.y)),
  );
  const top = lowest + 2 * SQUARES_GAP_MM;
  const columns =
    top + COLUMN.heightMm + page.marginMm > page.heightMm
      ? 0
      : Math.floor((page.widthMm - 2 * page.marginMm) / COLUMN.widthMm);
  let used = 0;
  return () => {
    if (used >= columns) return nextPage();
    used += 1;
    return movedCanvas(canvas, { x: page.marginMm + (used - 1) * COLUMN.widthMm, y: top });
  };
}

function drawTop(
  canvas: PdfCanvas,
  input: PlanInput,
  page: OnePage,
  correction: Correction | undefined,
): void {
  const { marginMm: left, widthMm, headMm } = page;
  const right = widthMm - left;
  const { client, savedDraft, date } = input;
  const facts = [date, ...(hasErrors(input) ? [DO_NOT_CUT] : [])];
  drawHead(canvas, { client: client.name, draft: savedDraft.name, facts }, { left, right, top: left });
  for (const [i, { left: x, top: y, sideMm }] of page.squares.entries())
    drawSquare(canvas, { x, y }, sideMm, i === 0 ? PATTERN.squares.metric : PATTERN.squares.inch);
  const top = page.squares[0]?.top ?? left;
  const beside = widthMm >= TEXT_BESIDE_FROM_MM;
  const from = beside
    ? { x: besideSquares(page), y: top }
    : { x: left, y: top + INCH_SQUARE_MM + SQUARES_GAP_MM };
  const write = (paragraphs: readonly Paragraph[], x: number): number =>
    drawParagraphs(canvas, paragraphs, x, from.y, Math.min(right - x, MOST_LINE_MM), headMm - SQUARES_GAP_MM);
  write(firstPageParagraphs(input, onePageParagraphs(input, correction)), from.x);
  const recordFrom = recordColumnOf(page);
  if (recordFrom !== null && !isAltered(input)) write(recordParagraphs(input), recordFrom);
}

const besideSquares = ({ marginMm }: OnePage): number =>
  marginMm + METRIC_SQUARE_MM + INCH_SQUARE_MM + 2 * SQUARES_GAP_MM;

/** Where the column of the record begins, mm; null on a page without room for one, whose record lies behind it. */
function recordColumnOf(page: OnePage): number | null {
  const from = besideSquares(page) + MOST_LINE_MM + 2 * SQUARES_GAP_MM;
  return page.widthMm - page.marginMm - from >= LEAST_RECORD_MM ? from : null;
}

/** The least width of the record's column. mm */
const LEAST_RECORD_MM = 100;

/** Most width of a line of text; longer ones are hard to read. mm */
const MOST_LINE_MM = 140;

/** Draws the lines and texts of panels. */
export function drawPanels(canvas: PdfCanvas, panels: readonly PlacedPanel[]): void {
  for (const { lines, texts } of panels) {
    for (const { kind, points, dash } of lines) canvas.line(kind, points, 0, dash);
    for (const text of texts) drawPanelText(canvas, text);
  }
}

/** Writes a text of a panel; the line under a text that stands on one is covered. */
export function drawPanelText(canvas: PdfCanvas, text: PlacedText): void {
  if (text.onLine) canvas.cover(cornersOf(boxOfText(text)));
  canvas.text(text);
}
