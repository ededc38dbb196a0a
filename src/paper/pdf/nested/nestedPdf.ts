// Sizes one over another as a PDF file: on sheets, or on one page.

import { FIRST_PAGE, PATTERN } from '../../../document';
import type { Box } from '../../geometry/box';
import type { WithFace } from '../../glyphs/pageFace';
import type { Layout } from '../../layout/layOut';
import {
  largePage,
  layOutPlan,
  type OnePage,
  type OnePageChoice,
  type OnePageLayout,
  TEXT_BESIDE_FROM_MM,
} from '../../layout/onePage';
import type { NestedInput } from '../../nested/nestedInput';
import { type DrawnNest, drawnNests, layOutNested, planNested } from '../../nested/nestedPanels';
import { checkPaper } from '../../sheets/checkPaper';
import { type Correction, isCorrection, NO_CORRECTION } from '../../sheets/correction';
import { sheetName } from '../../sheets/grid';
import { HEAD_MM, INCH_SQUARE_MM, METRIC_SQUARE_MM, SQUARES_GAP_MM } from '../../sheets/pageMeasures';
import type { PaperChoice } from '../../sheets/papers';
import { settable } from '../../text/writable';
import { drawMap, mapScale } from '../assemblyMap';
import { drawSquare } from '../blocks/calibration';
import { drawParagraphs } from '../blocks/drawParagraphs';
import { drawHead } from '../blocks/pageHead';
import type { PdfCanvas } from '../file/pdfCanvas';
import { pdfFile } from '../file/pdfFile';
import { drawPanels } from '../onePagePdf';
import type { PageWatch } from '../patternPdf';
import { sheetDrawer } from '../sheetPage';
import { nestedParagraphs, nestedTitle, rangeOf, seedOf } from './nestedParagraphs';
import { drawKey, keyHeight } from './sizesKey';

/** A scale to lay a ruler on stands on the first of so many sheets. */
const SCALE_EVERY = 10;
/** Between the squares and the text beside them, as on the first page of a single pattern. mm */
const GUTTER_MM = 7;
/** Height at the foot of the first page that the text leaves to the map. mm */
const LEAST_MAP_MM = 62;

/**
 * The bytes of a PDF of the sizes on sheets: a first page with the key of the sizes, both squares and the assembly map, and a page
 * for each sheet; on a large paper that holds all of it, one page. 1 unit = 1/72 in. Same input, same bytes.
 *
 * @throws RangeError on a paper that checkPaper refuses or a correction that isCorrection refuses; what `watch` throws stops the
 * drawing and is passed on
 */
export async function nestedPdf(
  input: NestedInput & WithFace,
  paper: PaperChoice,
  correction?: Correction,
  watch?: PageWatch,
): Promise<Uint8Array> {
  const { across, down } = correction ?? NO_CORRECTION;
  if (!isCorrection({ across, down })) throw new RangeError('correction not checked');
  const checked = checkPaper(paper, { across, down });
  if (!checked.ok) throw new RangeError(`paper not checked: ${checked.fault.code}`);
  const drawn = drawnNests(input);
  const large = largePage(paper);
  const whole = large && layOutNestedPage(drawn, large, correction);
  if (large && whole?.ok) {
    await watch?.(1, 1);
    return onePage(input, whole.page, large, correction);
  }
  const layout = layOutNested(drawn, paper, correction);
  const pdf = await pdfFile(nestedTitle(input), seedOf(input, [paper, correction]), input);
  const [short, long] = [
    Math.min(paper.widthMm, paper.heightMm),
    Math.max(paper.widthMm, paper.heightMm),
  ] as const;
  const upright = (): PdfCanvas => pdf.page(short, long, { x: across, y: down });
  const lying = (): PdfCanvas => pdf.page(long, short, { x: down, y: across });
  drawFirst(upright(), input, layout, paper, correction);
  const drawSheet = sheetDrawer(layout);
  const count = layout.sheets.length;
  for (const [i, position] of layout.sheets.entries()) {
    await watch?.(i + 1, count);
    drawSheet(layout.grid.orientation === 'portrait' ? upright() : lying(), position, {
      what: [input.savedDraft.name, rangeOf(input), input.date].map((line) => settable(line)).join(' · '),
      how: PATTERN.sheet.how({
        paper: settable(paper.name),
        count: PATTERN.sheet.count({ number: i + 1, count }),
      }),
      howBold: false,
      scale: i % SCALE_EVERY === 0 ? input.unit : null,
    });
  }
  return pdf.bytes();
}

/** How many sheets the sizes take on a paper, by their names in rows; one page where all of it fits on one. */
export function nestedSheets(input: NestedInput, paper: PaperChoice, correction?: Correction): string[] {
  const drawn = drawnNests(input);
  const large = largePage(paper);
  if (large && layOutNestedPage(drawn, large, correction).ok) return [sheetName({ row: 0, column: 0 })];
  return layOutNested(drawn, paper, correction).sheets.map(sheetName);
}

/** The sizes laid on one page, a roll or a sheet. */
const layOutNestedPage = (
  drawn: readonly DrawnNest[],
  choice: OnePageChoice,
  correction?: Correction,
): OnePageLayout => layOutPlan((mostWidthMm) => planNested(drawn, mostWidthMm), choice, correction);

/** The bytes of a PDF of one page, or why the page does not hold the sizes. */
export async function nestedPagePdf(
  input: NestedInput & WithFace,
  choice: OnePageChoice,
  correction?: Correction,
): Promise<{ readonly ok: true; readonly bytes: Uint8Array } | Extract<OnePageLayout, { ok: false }>> {
  const laid = layOutNestedPage(drawnNests(input), choice, correction);
  return laid.ok ? { ok: true, bytes: await onePage(input, laid.page, choice, correction) } : laid;
}

async function onePage(
  input: NestedInput & WithFace,
  page: OnePage,
  choice: OnePageChoice,
  correction: Correction | undefined,
): Promise<Uint8Array> {
  const { across, down } = correction ?? NO_CORRECTION;
  const scale = page.turned ? { x: down, y: across } : { x: across, y: down };
  const pdf = await pdfFile(nestedTitle(input), seedOf(input, [choice, correction]), input);
  const canvas = pdf.page(page.widthMm * scale.x, page.heightMm * scale.y, scale);
  const { marginMm: left, widthMm, headMm } = page;
  const right = widthMm - left;
  drawTop(canvas, input, left, right, []);
  for (const [i, { left: x, top: y, sideMm }] of page.squares.entries())
    drawSquare(canvas, { x, y }, sideMm, i === 0 ? PATTERN.squares.metric : PATTERN.squares.inch);
  const top = page.squares[0]?.top ?? left;
  const afterSquares = left + METRIC_SQUARE_MM + INCH_SQUARE_MM + 2 * SQUARES_GAP_MM;
  const beside = widthMm >= TEXT_BESIDE_FROM_MM;
  const from = beside ? { x: afterSquares, y: top } : { x: left, y: top + INCH_SQUARE_MM + SQUARES_GAP_MM };
  const columns = Math.max(1, Math.min(3, Math.floor((right - from.x) / KEY_MM)));
  const height = keyHeight(input, columns);
  drawKey(canvas, input, from, Math.min(KEY_MM, right - from.x), columns);
  drawParagraphs(
    canvas,
    nestedParagraphs(input, FIRST_PAGE.onePage({ unit: input.unit }), correction),
    from.x,
    from.y + height + 2,
    Math.min(right - from.x, MOST_TEXT_MM),
    headMm - SQUARES_GAP_MM,
  );
  drawPanels(canvas, page.panels);
  return pdf.bytes();
}

/** Width of a column of the key, and the most of a line of text. mm */
const KEY_MM = 100;
const MOST_TEXT_MM = 200;

function drawTop(
  canvas: PdfCanvas,
  input: NestedInput,
  left: number,
  right: number,
  facts: readonly string[],
): void {
  drawHead(
    canvas,
    { client: input.savedDraft.name, draft: rangeOf(input), facts: [input.date, ...facts] },
    { left, right, top: left },
  );
}

function drawFirst(
  canvas: PdfCanvas,
  input: NestedInput,
  layout: Layout,
  paper: PaperChoice,
  correction: Correction | undefined,
): void {
  const { widthMm, heightMm, marginMm: margin } = layout.page;
  const [right, bottom] = [widthMm - margin, heightMm - margin];
  drawTop(canvas, input, margin, right, [paper.name]);
  const top = margin + HEAD_MM + 5;
  drawSquare(canvas, { x: margin, y: top }, METRIC_SQUARE_MM, PATTERN.squares.metric);
  drawSquare(canvas, { x: margin, y: top + METRIC_SQUARE_MM + 5 }, INCH_SQUARE_MM, PATTERN.squares.inch);
  const squaresEnd = top + METRIC_SQUARE_MM + 5 + INCH_SQUARE_MM;
  const left = margin + INCH_SQUARE_MM + GUTTER_MM;
  drawKey(canvas, input, { x: left, y: top }, right - left, 1);
  const sheets = FIRST_PAGE.sheets({ paper: paper.name, count: layout.sheets.length, unit: input.unit });
  const end = drawParagraphs(
    canvas,
    nestedParagraphs(input, sheets, correction),
    left,
    top + keyHeight(input, 1) + 2,
    right - left,
    bottom - LEAST_MAP_MM,
  );
  const beside: Box = { left, top: end + 11, right, bottom };
  const below: Box = { left: margin, top: squaresEnd + 11, right, bottom };
  const box = mapScale(layout, below) > mapScale(layout, beside) ? below : beside;
  const start = { x: box.left, y: box.top - 3 };
  canvas.text({ text: FIRST_PAGE.map, start, turnRad: 0, sizePt: 10, bold: true });
  drawMap(canvas, layout, box);
}
