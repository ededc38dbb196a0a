// The plan of a cloth on pages: to scale, with where each piece begins.

import { LAY_PLAN, type LengthUnit } from '../../document';
import type { Point } from '../../engine';
import type { Glyphs } from '../glyphs/glyphs';
import type { WithFace } from '../glyphs/pageFace';
import { type Flow, flowOver, type TextStyle } from '../pdf/blocks/pageFlow';
import type { PdfCanvas } from '../pdf/file/pdfCanvas';
import { pdfFile, TITLE_MM } from '../pdf/file/pdfFile';
import { shortened, textWidth } from '../text/textWidth';
import { settable } from '../text/writable';
import { laidWidth } from './cloth';
import { labelAt } from './labelAt';
import { clothSentence, isShrunk, layColumns, layRow, lengthSentence } from './layTexts';
import type { LayPlan } from './plan';

/** What is written over a plan. */
export interface LayHead {
  readonly client: string;
  readonly draft: string;
  readonly date: string;
  readonly unit: LengthUnit;
}

const TITLE: TextStyle = { sizePt: 16, bold: true };
const LINE: TextStyle = { sizePt: 10, before: 0.6 };
const ROW: TextStyle = { sizePt: 9, before: 0.8 };
const SHARES = [0.07, 0.33, 0.17, 0.17, 0.26];

/** A4 upright, or letter for inches. mm */
const PAGES = {
  in: { widthMm: 215.9, heightMm: 279.4, marginMm: 12 },
  metric: { widthMm: 210, heightMm: 297, marginMm: 12 },
} as const;

/** The drawing takes at most this part of a page. */
const MOST_PART = 0.55;

/** The bytes of a PDF file. The same plan gives the same bytes. */
export async function layPdf(
  plan: LayPlan,
  head: LayHead,
  faces: WithFace & { readonly glyphs?: Glyphs | null },
): Promise<Uint8Array> {
  const names = [head.client, head.draft].map((name) => settable(name)).filter((name) => name !== '');
  const seed = JSON.stringify([head, plan.cloth, plan.placed.map(({ outline }) => outline)]);
  const title = [LAY_PLAN.title, ...names].join(', ');
  const pdf = await pdfFile(shortened(title, 10, false, TITLE_MM), seed, faces);
  const page = head.unit === 'in' ? PAGES.in : PAGES.metric;
  const flow = flowOver(() => pdf.page(page.widthMm, page.heightMm), page, title);
  flow.text(LAY_PLAN.title, TITLE);
  flow.text(shortened([...names, head.date].join(' · '), LINE.sizePt, false, flow.widthMm), LINE);
  flow.text(clothSentence(plan, head.unit), LINE);
  flow.text(lengthSentence(plan, head.unit), { ...LINE, bold: true });
  if (isShrunk(plan.cloth)) flow.text(LAY_PLAN.shrunk, LINE);
  flow.space(3);
  drawPlan(flow, plan, page.heightMm * MOST_PART);
  flow.text(LAY_PLAN.measured[plan.cloth.folded ? 'folded' : 'open'], ROW);
  flow.space(1);
  flow.row(layColumns(plan), SHARES, { ...ROW, bold: true });
  for (const [i] of plan.placed.entries()) flow.row(layRow(plan, i, head.unit), SHARES, ROW);
  return pdf.bytes();
}

/** Draws the cloth and the outlines with their numbers, as wide as the page, or smaller where that would be too high. */
function drawPlan(flow: Flow, plan: LayPlan, mostMm: number): void {
  const [length, width] = [Math.max(1, plan.lengthMm), laidWidth(plan.cloth)];
  const scale = Math.min(flow.widthMm / length, mostMm / width);
  const edges = plan.cloth.folded ? LAY_PLAN.edges.fold : LAY_PLAN.edges.selvedge;
  flow.need(width * scale + 8);
  flow.text(edges, { ...ROW, grey: 0.3 });
  flow.draw((canvas, corner) => {
    const onPage = ({ x, y }: Point): Point => ({ x: corner.x + x * scale, y: corner.y + y * scale });
    const box = [
      { x: 0, y: 0 },
      { x: length, y: 0 },
      { x: length, y: width },
      { x: 0, y: width },
    ];
    canvas.line('rule', [...box, box[0] as Point].map(onPage));
    for (const [i, { outline }] of plan.placed.entries()) {
      canvas.line('mapSheet', [...outline, outline[0] as Point].map(onPage));
      drawNumber(canvas, String(i + 1), outline, onPage, scale);
    }
  });
  flow.space(width * scale + 4);
}

function drawNumber(
  canvas: PdfCanvas,
  number: string,
  outline: readonly Point[],
  onPage: (point: Point) => Point,
  scale: number,
): void {
  const { at, roomMm } = labelAt(outline);
  const sizePt = Math.min(9, Math.max(4, (9 * roomMm * scale) / textWidth(number, 9, true)));
  const { x, y } = onPage(at);
  const start = { x: x - textWidth(number, sizePt, true) / 2, y: y + sizePt * 0.12 };
  canvas.text({ text: number, start, turnRad: 0, sizePt, bold: true });
}
