// The whole pattern on one page as a PDF file, for plotters and copy shops.

import { estimatedRemark } from '../estimates';
import { DO_NOT_CUT, hasFaults } from '../faults';
import type { Faced } from '../letters/pageFace';
import {
  layOutOnePage,
  type OnePage,
  type OnePageChoice,
  SQUARES_GAP_MM,
  WORDS_BESIDE_FROM_MM,
} from '../onePage';
import type { PlacedPanel, PlanInput } from '../placePanels';
import { type Correction, NO_CORRECTION } from '../sheets/correction';
import { shortened } from '../text/textWidth';
import { settable } from '../text/writable';
import { drawSquare, INCH_SQUARE_MM, METRIC_SQUARE_MM } from './calibration';
import { firstPageWords, onePageWords } from './firstPageWords';
import { pdfFile, TITLE_MM } from './pdfFile';
import type { Pen } from './pen';
import { drawHead, writeDown } from './writeDown';

/**
 * The bytes of a PDF of one page, 1 unit = 1/72 in: head, both calibration squares and all panels. Same input, same bytes.
 *
 * @throws RangeError on a page that {@link layOutOnePage} refuses; ask it first
 */
export async function onePagePdf(
  input: PlanInput & Faced,
  choice: OnePageChoice,
  correction?: Correction,
): Promise<Uint8Array> {
  const laid = layOutOnePage(input, choice, correction);
  if (!laid.ok) throw new RangeError(`page not checked: ${laid.fault.code}`);
  const { page } = laid;
  const { across, down } = correction ?? NO_CORRECTION;
  const scale = page.turned ? { x: down, y: across } : { x: across, y: down };
  const names = [input.client.name, input.savedDraft.name].map((name) => settable(name));
  const outlines = page.panels.map(({ piece, offset }) => [offset, piece.cutLine]);
  const pdf = await pdfFile(
    shortened(names.join(', '), 10, false, TITLE_MM),
    JSON.stringify([names, estimatedRemark(input.client), input.date, choice, correction, outlines]),
    input,
  );
  const pen = pdf.page(page.widthMm * scale.x, page.heightMm * scale.y, scale);
  drawTop(pen, input, page, correction);
  drawPanels(pen, page.panels);
  return pdf.bytes();
}

function drawTop(pen: Pen, input: PlanInput, page: OnePage, correction: Correction | undefined): void {
  const { marginMm: left, widthMm, headMm } = page;
  const right = widthMm - left;
  const { client, savedDraft, date } = input;
  const facts = [date, ...(hasFaults(input) ? [DO_NOT_CUT] : [])];
  drawHead(pen, { client: client.name, draft: savedDraft.name, facts }, { left, right, top: left });
  for (const [i, { left: x, top: y, sideMm }] of page.squares.entries())
    drawSquare(pen, { x, y }, sideMm, i === 0 ? '100 mm' : '4 in');
  const top = page.squares[0]?.top ?? left;
  const words = firstPageWords(input, onePageWords(input, correction));
  const afterSquares = left + METRIC_SQUARE_MM + INCH_SQUARE_MM + 2 * SQUARES_GAP_MM;
  const beside = widthMm >= WORDS_BESIDE_FROM_MM;
  const from = beside ? { x: afterSquares, y: top } : { x: left, y: top + INCH_SQUARE_MM + SQUARES_GAP_MM };
  writeDown(pen, words, from.x, from.y, Math.min(right - from.x, MOST_LINE_MM), headMm - SQUARES_GAP_MM);
}

/** Longer lines are hard to read. */
const MOST_LINE_MM = 140;

/** Panels where the page has them. */
export function drawPanels(pen: Pen, panels: readonly PlacedPanel[]): void {
  for (const { lines, texts } of panels) {
    for (const { stroke, points } of lines) pen.line(stroke, points);
    for (const text of texts) pen.text(text);
  }
}
