// The pattern on sheets as a PDF file.

import { PATTERN } from '../../document';
import type { WithFace } from '../glyphs/pageFace';
import { type Layout, layOut, type PatternInput } from '../layout/layOut';
import { wholeOnPaper } from '../layout/onePage';
import { makingList } from '../making/makingList';
import { makingSections } from '../making/makingSections';
import { makingNames } from '../making/makingText';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { estimatedRemark } from '../remarks/estimates';
import { checkPaper } from '../sheets/checkPaper';
import { isCorrection, NO_CORRECTION } from '../sheets/correction';
import { sheetName } from '../sheets/grid';
import { shortened } from '../text/textWidth';
import { settable } from '../text/writable';
import type { PdfCanvas } from './file/pdfCanvas';
import { pdfFile, TITLE_MM } from './file/pdfFile';
import { drawFirstPage } from './firstPage';
import { drawFittingForm } from './fittingForm';
import { drawMakingPages } from './makingPages';
import { onePagePdf } from './onePagePdf';
import { drawRecordPage } from './recordPage';
import { sheetDrawer } from './sheetPage';

/** Called with the number of pages drawn and of all pages; drawing waits for it. */
export type PageWatch = (drawn: number, of: number) => void | Promise<void>;

/** A scale to lay a ruler on stands on the first sheet and on each of this number. */
const SCALE_EVERY = 10;
const hasScale = (number: number): boolean => number === 1 || number % SCALE_EVERY === 0;

/**
 * The bytes of a PDF: a first page with the assembly map and two calibration squares, a page for each used sheet that is not left
 * out, the record of the print, and the making list where the input has making settings and is no mock-up. Pages are as large as the paper, 1 unit = 1/72 in, and everything
 * on them is enlarged by the correction. On a large paper that holds the whole pattern all of it is one page. All pieces of the draft are drawn; where it has errors every page says not to cut it.
 * Same input, same bytes. `made` is what `layOut` gave for the same input, where it was called before.
 *
 * @throws RangeError on a paper that {@link checkPaper} refuses or a correction that {@link isCorrection} refuses. What `watch`
 * throws stops the drawing and is passed on.
 */
export async function patternPdf(
  input: PatternInput & WithFace,
  watch?: PageWatch,
  made: Layout | null = null,
): Promise<Uint8Array> {
  const { client, savedDraft, date, paper, correction = NO_CORRECTION, leftOut = [] } = input;
  if (!isCorrection(correction)) throw new RangeError('correction not checked');
  const checked = checkPaper(paper, correction);
  if (!checked.ok) throw new RangeError(`paper not checked: ${checked.fault.code}`);
  const whole = wholeOnPaper(input, paper, correction);
  if (whole) {
    await watch?.(1, 1);
    return onePagePdf(input, whole.choice, input.correction);
  }
  const layout = made ?? layOut(input);
  const what = [client.name, savedDraft.name, date].map((line) => settable(line));
  const title = shortened(what.slice(0, 2).join(', '), 10, false, TITLE_MM);
  const pdf = await pdfFile(title, seedOf(input, layout), input);
  const short = Math.min(paper.widthMm, paper.heightMm);
  const long = Math.max(paper.widthMm, paper.heightMm);
  const upright = (): PdfCanvas => pdf.page(short, long, { x: correction.across, y: correction.down });
  // A landscape sheet goes through the printer turned: its x runs along the paper's long side.
  const lying = (): PdfCanvas => pdf.page(long, short, { x: correction.down, y: correction.across });

  drawFirstPage(upright(), input, layout);
  const faulty = hasErrors(input);
  const drawSheet = sheetDrawer(layout);
  const printed = [...layout.sheets.entries()].filter(
    ([, position]) => !leftOut.includes(sheetName(position)),
  );
  for (const [drawn, [i, position]] of printed.entries()) {
    await watch?.(drawn + 1, printed.length + 1);
    const count = PATTERN.sheet.count({ number: i + 1, count: layout.sheets.length });
    drawSheet(layout.grid.orientation === 'portrait' ? upright() : lying(), position, {
      what: what.filter((line) => line !== '').join(' · '),
      how: faulty
        ? PATTERN.sheet.doNotCut({ warning: DO_NOT_CUT, count })
        : PATTERN.sheet.how({ paper: settable(paper.name), count }),
      howBold: faulty,
      scale: hasScale(drawn + 1) ? client.unit : null,
    });
  }
  drawRecordPage(upright, layout.page, input);
  if (input.mockup && input.draft.pieces.length > 0) drawFittingForm(upright, layout.page, input);
  if (input.making && !input.mockup)
    drawMakingPages(
      upright,
      layout.page,
      makingSections(makingList(input.draft, savedDraft.style, input.making), input.making, client.unit),
      makingNames(input),
    );
  await watch?.(printed.length + 1, printed.length + 1);
  return pdf.bytes();
}

function seedOf(input: PatternInput, { panels }: Layout): string {
  const {
    client,
    savedDraft,
    date,
    paper,
    making,
    correction,
    leftOut,
    across,
    mockup,
    mockupNumber,
    tapeDay,
    program,
  } = input;
  const altered = savedDraft.fittings;
  const estimated = estimatedRemark(client);
  const outlines = panels.map(({ piece, offset }) => [offset, piece.cutLine]);
  return JSON.stringify([
    client.name,
    savedDraft.name,
    estimated,
    date,
    paper,
    making,
    correction,
    leftOut,
    across,
    mockup,
    mockupNumber,
    altered,
    tapeDay,
    program,
    outlines,
  ]);
}
