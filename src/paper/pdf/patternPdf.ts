// The tiled pattern as a PDF file.

import { DO_NOT_CUT, hasFaults } from '../faults';
import { type Layout, layOut, type PatternInput } from '../layOut';
import { makingList } from '../making/makingList';
import { drawMakingPages } from '../making/makingPages';
import { makingSections } from '../making/makingSections';
import { checkPaper } from '../sheets/checkPaper';
import { shortened } from '../text/textWidth';
import { writable } from '../text/writable';
import { drawFirstPage } from './firstPage';
import { penFor } from './pen';
import { drawSheet } from './sheetPage';

/** A title longer than this helps nobody. mm at 10 pt */
const TITLE_MM = 200;

/**
 * The bytes of a PDF: a first page with the assembly map and two calibration squares, then a page for each sheet
 * that has ink, and the making list where its settings are given. Pages are as large as the paper, 1 unit = 1/72 in. Whatever pieces the draft has are drawn; where it has
 * blocking issues every page says not to cut it. Same input, same bytes.
 *
 * @throws RangeError on a paper that {@link checkPaper} refuses; ask it first
 */
export async function patternPdf(input: PatternInput): Promise<Uint8Array> {
  const { client, sheet, date, paper } = input;
  const checked = checkPaper(paper);
  if (!checked.ok) throw new RangeError(`paper not checked: ${checked.fault.code}`);
  const layout = layOut(input);
  const { jsPDF } = await import('jspdf');
  const upright = [Math.min(paper.widthMm, paper.heightMm), Math.max(paper.widthMm, paper.heightMm)];
  const pdf = new jsPDF({
    unit: 'mm',
    format: upright,
    orientation: 'portrait',
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: 4,
  });
  pdf.viewerPreferences({ PrintScaling: 'None' });
  pdf.setCreationDate(NO_CLOCK);
  pdf.setFileId(fileId(input, layout));
  const what = [client.name, sheet.name, date].map((words) => writable(words).text);
  pdf.setDocumentProperties({
    title: shortened(what.slice(0, 2).join(', '), 10, false, TITLE_MM),
    creator: 'Staywright',
  });

  drawFirstPage(penFor(pdf), input, layout);
  const faulty = hasFaults(input);
  for (const [i, place] of layout.sheets.entries()) {
    pdf.addPage(upright, layout.grid.orientation);
    const count = `sheet ${i + 1} of ${layout.sheets.length}`;
    drawSheet(penFor(pdf), layout, place, {
      what: what.filter((words) => words !== '').join(' · '),
      how: faulty ? `${DO_NOT_CUT} (${count})` : `${writable(paper.name).text} · print at 100 % · ${count}`,
      howBold: faulty,
    });
  }
  if (input.making)
    drawMakingPages(
      () => penFor(pdf.addPage(upright, 'portrait')),
      { widthMm: upright[0] as number, heightMm: upright[1] as number, marginMm: paper.marginMm },
      makingSections(makingList(input.draft, sheet.style, input.making), input.making, client.unit),
      { client: client.name, draft: sheet.name, unit: client.unit },
    );
  return new Uint8Array(pdf.output('arraybuffer'));
}

/** jspdf writes a day into the file in any case; the day that counts is printed on the pages. */
const NO_CLOCK = "D:20000101000000+00'00'";

/** 32 hex digits that differ where the files do: jspdf would draw lots. FNV-1a (draft-eastlake-fnv), four times over. */
function fileId({ client, sheet, date, paper, making }: PatternInput, { panels }: Layout): string {
  const outlines = panels.map(({ piece, offset }) => [offset, piece.cutLine]);
  const text = JSON.stringify([client.name, sheet.name, date, paper, making, outlines]);
  return [1, 2, 3, 4]
    .map((seed) => {
      let hash = 0x811c9dc5 ^ seed;
      for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
      return (hash >>> 0).toString(16).padStart(8, '0');
    })
    .join('');
}
