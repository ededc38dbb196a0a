// The drafting sheet as a PDF file.

import { DRAFTING_SHEET } from '../../document';
import type { Point } from '../../engine';
import type { WithFace } from '../glyphs/pageFace';
import type { PlanInput } from '../layout/planInput';
import { type Flow, flowOver, type TextStyle } from '../pdf/blocks/pageFlow';
import type { PdfCanvas } from '../pdf/file/pdfCanvas';
import { pdfFile, TITLE_MM } from '../pdf/file/pdfFile';
import type { PaperChoice } from '../sheets/papers';
import { MM_PER_POINT, shortened, textWidth } from '../text/textWidth';
import { settable } from '../text/writable';
import { columnShares } from './columnShares';
import { draftingSheet } from './draftingSheet';
import type {
  DraftingFigure,
  DraftingSheet,
  DraftingStep,
  FigureLineKind,
  StepTable,
} from './elements/draftingStep';
import { labelsApart } from './labelsApart';

const NAME: TextStyle = { sizePt: 18, bold: true };
const FACTS: TextStyle = { sizePt: 10, before: 0.6 };
const REMARK: TextStyle = { sizePt: 8, grey: 0.25, before: 1.2 };
const WARNING: TextStyle = { sizePt: 11, bold: true, before: 1.6 };
const FIGURE_MM = 62;
const FIGURE_MOST_MM = 60;
const GUTTER_MM = 6;
const HEADING: TextStyle = { sizePt: 11, bold: true };
const BODY: TextStyle = { sizePt: 8.5, before: 0.9 };
const COLUMNS: TextStyle = { sizePt: 7, bold: true, grey: 0.25, before: 1.6 };
const CELLS: TextStyle = { sizePt: 8.5, before: 0.35 };
const LABEL_PT = 6.5;
/** Least distance between labels below each other, and their width. mm */
const LABEL_LINE_MM = LABEL_PT * MM_PER_POINT * 1.25;
const LABEL_REACH_MM = LABEL_PT * MM_PER_POINT * 3;
/** Greatest width of the line at the foot, at 7 pt. mm */
const FOOT_MM = 140;

/**
 * The bytes of a PDF with the sheet on upright pages of the paper. A step is on one page where it fits. Same input, same bytes.
 */
export async function draftingSheetPdf(input: PlanInput & WithFace, paper: PaperChoice): Promise<Uint8Array> {
  const content = draftingSheet(input);
  const [widthMm, heightMm] = [
    Math.min(paper.widthMm, paper.heightMm),
    Math.max(paper.widthMm, paper.heightMm),
  ];
  const what = [content.client, content.draft].map((name) => settable(name)).filter((name) => name !== '');
  const title = shortened([DRAFTING_SHEET.title, ...what].join(', '), 10, false, TITLE_MM);
  const pdf = await pdfFile(title, JSON.stringify([content, widthMm, heightMm]), input);
  const newPage = (): PdfCanvas => pdf.page(widthMm, heightMm);
  const page = { widthMm, heightMm, marginMm: Math.max(paper.marginMm, 10) };
  drawDraftingSheet(
    flowOver(newPage, page, shortened([DRAFTING_SHEET.title, ...what].join(' · '), 7, false, FOOT_MM)),
    content,
  );
  return pdf.bytes();
}

function drawDraftingSheet(
  flow: Flow,
  { client, draft, date, warning, remarks, steps }: DraftingSheet,
): void {
  flow.text(client, NAME);
  flow.text([DRAFTING_SHEET.title, draft, date].filter((part) => part !== '').join(' · '), FACTS);
  if (warning !== null) flow.text(warning, WARNING);
  for (const remark of remarks) flow.text(remark, REMARK);
  for (const [i, step] of steps.entries()) drawStep(flow, step, `${i + 1}. ${step.heading}`);
  if (steps.length === 0) flow.text(DRAFTING_SHEET.nothing, BODY);
}

function drawStep(flow: Flow, { sentences, tables, figure }: DraftingStep, heading: string): void {
  const right = figure ? FIGURE_MM + GUTTER_MM : 0;
  const scale = figure ? Math.min(FIGURE_MM / figure.widthMm, FIGURE_MOST_MM / figure.heightMm) : 0;
  const figureMm = figure ? figure.heightMm * scale : 0;
  const [head, body, columns, cells] = [HEADING, BODY, COLUMNS, CELLS].map((textStyle) => ({
    ...textStyle,
    right,
  })) as [TextStyle, TextStyle, TextStyle, TextStyle];
  const textMm = sentences.reduce(
    (sum, sentence) => sum + flow.heightOf(sentence, body),
    flow.heightOf(heading, head),
  );
  const sharesOf = (table: StepTable): number[] =>
    columnShares(table, flow.widthMm - right, { headPt: COLUMNS.sizePt, cellPt: CELLS.sizePt });
  const table = tables.reduce((sum, each) => {
    const { columns: names, rows } = each;
    const shares = sharesOf(each);
    return rows.reduce(
      (height, row) => height + flow.heightOfRow(row, shares, cells),
      sum + flow.heightOfRow(names, shares, columns),
    );
  }, 0);
  flow.space(4);
  flow.need(Math.max(figureMm, textMm + table));
  flow.rule();
  flow.space(2.5);
  const [top, page] = [flow.y, flow.page];
  if (figure)
    flow.draw((canvas, corner) =>
      drawFigure(canvas, figure, scale, { x: corner.x + flow.widthMm - figure.widthMm * scale, y: corner.y }),
    );
  flow.text(heading, head);
  for (const sentence of sentences) flow.text(sentence, body);
  for (const each of tables) {
    const { columns: names, rows } = each;
    const shares = sharesOf(each);
    flow.row(names, shares, columns);
    for (const row of rows) flow.row(row, shares, cells);
  }
  if (flow.page === page && flow.y < top + figureMm) flow.space(top + figureMm - flow.y);
}

const LINE_KINDS: Readonly<Record<FigureLineKind, 'mapBlank' | 'mapPanel' | 'cut'>> = {
  guide: 'mapBlank',
  done: 'mapPanel',
  drawn: 'cut',
};

function drawFigure(
  canvas: PdfCanvas,
  { widthMm, lines, spots, labels }: DraftingFigure,
  scale: number,
  corner: Point,
): void {
  const onPage = ({ x, y }: Point): Point => ({ x: corner.x + x * scale, y: corner.y + y * scale });
  for (const kind of ['guide', 'done', 'drawn'] as const)
    for (const line of lines) if (line.kind === kind) canvas.line(LINE_KINDS[kind], line.points.map(onPage));
  for (const spot of spots) {
    const { x, y } = onPage(spot);
    const ring = Array.from({ length: 13 }, (_, i): Point => {
      const turn = (i * Math.PI) / 6;
      return { x: x + 0.7 * Math.cos(turn), y: y + 0.7 * Math.sin(turn) };
    });
    canvas.line('mark', ring);
  }
  const reachMm = LABEL_REACH_MM / scale;
  for (const { text, at, anchor } of labelsApart(labels, LABEL_LINE_MM / scale, reachMm)) {
    const start = onPage(at);
    const width = textWidth(settable(text), LABEL_PT, false);
    const back = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2;
    const most = corner.x + widthMm * scale - width;
    const left = Math.min(most, Math.max(corner.x, start.x - back));
    canvas.blank(
      left - 0.2,
      start.y - LABEL_PT * MM_PER_POINT * 0.8,
      width + 0.4,
      LABEL_PT * MM_PER_POINT * 0.9,
    );
    canvas.text({ text, start: { x: left, y: start.y }, turnRad: 0, sizePt: LABEL_PT, bold: false });
  }
}
