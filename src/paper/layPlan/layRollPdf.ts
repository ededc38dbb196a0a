// A plan of a cloth at full size on a plotter's roll or large sheets: strips side by side where the cloth is wider than the paper.

import { FIRST_PAGE, LAY_PLAN, PATTERN } from '../../document';
import type { Glyphs } from '../glyphs/glyphs';
import type { WithFace } from '../glyphs/pageFace';
import { type Layout, onSheets } from '../layout/layOut';
import type { OnePageChoice } from '../layout/onePage';
import { drawMap } from '../pdf/assemblyMap';
import { drawSquare } from '../pdf/blocks/calibration';
import { drawParagraphs } from '../pdf/blocks/drawParagraphs';
import { drawHead } from '../pdf/blocks/pageHead';
import type { PdfCanvas } from '../pdf/file/pdfCanvas';
import { pdfFile, TITLE_MM } from '../pdf/file/pdfFile';
import { sheetDrawer } from '../pdf/sheetPage';
import { checkPaper, MOST_SIDE_MM } from '../sheets/checkPaper';
import { type Correction, correctionText, NO_CORRECTION } from '../sheets/correction';
import { gridFor, STRIP_MM } from '../sheets/grid';
import { HEAD_MM, INCH_SQUARE_MM, METRIC_SQUARE_MM, SQUARES_GAP_MM } from '../sheets/pageMeasures';
import { uprightPage } from '../sheets/uprightPage';
import { shortened } from '../text/textWidth';
import { settable } from '../text/writable';
import { planOfCloth } from './layPanels';
import type { LayHead } from './layPdf';
import { clothSentence, isShrunk, lengthSentence } from './layTexts';
import type { LayPlan } from './plan';

/** Two strips overlap by so much. mm */
const OVERLAP_MM = 10;
/** The first page; as wide as a roll is at least. mm */
const FIRST = { widthMm: 230, heightMm: 300 } as const;

/** The strips of a plan on a roll, or the sheets; null where the paper cannot be printed on or a strip would be over 5080 mm. */
export function layStrips(
  plan: LayPlan,
  { widthMm, heightMm, marginMm }: OnePageChoice,
  correction: Correction = NO_CORRECTION,
): Layout | null {
  const { panels, ...size } = planOfCloth(plan);
  const long = heightMm ?? (size.heightMm + 2 * marginMm + STRIP_MM + OVERLAP_MM) * correction.down;
  const paper = {
    name: '',
    widthMm,
    heightMm: long,
    marginMm,
    overlapMm: OVERLAP_MM,
    orientation: 'portrait',
  } as const;
  const isPrintable =
    widthMm >= FIRST.widthMm &&
    checkPaper({ ...paper, heightMm: Math.max(long, FIRST.heightMm) }, correction).ok;
  if (!isPrintable || long > MOST_SIDE_MM) return null;
  const { widthMm: across, heightMm: down } = {
    widthMm: widthMm / correction.across,
    heightMm: long / correction.down,
  };
  // A roll may be shorter than it is wide, so that its short side is not always across.
  const page = { ...uprightPage(paper, correction), widthMm: across, heightMm: down };
  return onSheets(page, gridFor(page, 'portrait', size.widthMm, size.heightMm), panels);
}

/** The bytes of a PDF: a first page with squares and map, and a page for each strip; null where {@link layStrips} gives none. */
export async function layRollPdf(
  plan: LayPlan,
  head: LayHead,
  choice: OnePageChoice,
  faces: WithFace & { readonly glyphs?: Glyphs | null },
  correction?: Correction,
): Promise<Uint8Array | null> {
  const layout = layStrips(plan, choice, correction);
  if (!layout) return null;
  const scale = correction ?? NO_CORRECTION;
  const names = [LAY_PLAN.title, head.client, head.draft].map((name) => settable(name));
  const seed = JSON.stringify([
    head,
    choice,
    correction,
    plan.cloth,
    plan.placed.map(({ outline }) => outline),
  ]);
  const title = shortened(names.filter((name) => name !== '').join(', '), 10, false, TITLE_MM);
  const pdf = await pdfFile(title, seed, faces);
  const pageOf = (widthMm: number, heightMm: number): PdfCanvas =>
    pdf.page(widthMm * scale.across, heightMm * scale.down, { x: scale.across, y: scale.down });
  drawFirst(pageOf(FIRST.widthMm, FIRST.heightMm), plan, head, layout, correction);
  const drawSheet = sheetDrawer(layout);
  for (const [i, position] of layout.sheets.entries())
    drawSheet(pageOf(layout.grid.pageWidthMm, layout.grid.pageHeightMm), position, {
      what: [...names.filter((name) => name !== ''), head.date].join(' · '),
      how: LAY_PLAN.strips({ number: i + 1, count: layout.sheets.length }),
      howBold: false,
      scale: head.unit === 'in' ? 'in' : 'cm',
    });
  return pdf.bytes();
}

function drawFirst(
  canvas: PdfCanvas,
  plan: LayPlan,
  { client, draft, date, unit }: LayHead,
  layout: Layout,
  correction: Correction | undefined,
): void {
  const margin = layout.page.marginMm;
  const [left, right, bottom] = [margin, FIRST.widthMm - margin, FIRST.heightMm - margin];
  drawHead(canvas, { client, draft, facts: [LAY_PLAN.title, date] }, { left, right, top: margin });
  const top = margin + HEAD_MM + SQUARES_GAP_MM;
  drawSquare(canvas, { x: left, y: top }, METRIC_SQUARE_MM, PATTERN.squares.metric);
  const second = left + METRIC_SQUARE_MM + SQUARES_GAP_MM;
  drawSquare(canvas, { x: second, y: top }, INCH_SQUARE_MM, PATTERN.squares.inch);
  const lines = [
    FIRST_PAGE.print.actualSize,
    FIRST_PAGE.print.measure,
    clothSentence(plan, unit),
    lengthSentence(plan, unit),
    LAY_PLAN.paper({ count: layout.sheets.length }),
    ...(isShrunk(plan.cloth) ? [LAY_PLAN.shrunk] : []),
    ...(correction ? [FIRST_PAGE.corrected({ correction: correctionText(correction) })] : []),
  ];
  const from = top + INCH_SQUARE_MM + SQUARES_GAP_MM;
  const end = drawParagraphs(
    canvas,
    lines.map((text) => ({ kind: 'text', text })),
    left,
    from,
    right - left,
    bottom,
  );
  drawMap(canvas, layout, { left, top: end + SQUARES_GAP_MM, right, bottom });
}
