// Pages with the making list, at the end of the pattern.

import { MAKING_LIST } from '../../document';
import type { MakingSection } from '../making/makingSections';
import { MAKING_SOURCES, WORKSHOP_CARE } from '../making/makingSections';
import { amountOf, type MakingNames } from '../making/makingText';
import { type FlowPage, flowOver, type TextStyle } from './blocks/pageFlow';
import type { PdfCanvas } from './file/pdfCanvas';

const TITLE: TextStyle = { sizePt: 16, bold: true };
const NAMES: TextStyle = { sizePt: 10, before: 0.6 };
const HEADING: TextStyle = { sizePt: 11, bold: true, before: 4.5 };
const BODY: TextStyle = { sizePt: 8.5, before: 0.7 };
const REMARK: TextStyle = { sizePt: 7, grey: 0.3, before: 1 };
const COLUMNS = [0.36, 0.14, 0.5];

/** Draws the list on upright pages from `newPage`, beginning with a new one; no pages where there are no sections. */
export function drawMakingPages(
  newPage: () => PdfCanvas,
  page: FlowPage,
  sections: readonly MakingSection[],
  names: MakingNames,
): void {
  if (sections.length === 0) return;
  const title = [names.client, names.draft].filter((name) => name.trim() !== '').join(', ');
  const flow = flowOver(newPage, page, MAKING_LIST.title);
  flow.text(MAKING_LIST.title, TITLE);
  flow.text(title, NAMES);
  if (names.remark !== null) flow.text(names.remark, { ...NAMES, bold: true });
  flow.space(1.5);
  flow.rule();
  for (const { heading, lines, care, remark } of sections) {
    const rows = lines.map((line) => [line.item, amountOf(line, names.unit), line.note]);
    // A heading stays with its first line.
    flow.need(flow.heightOf(heading, HEADING) + flow.heightOfRow(rows[0] ?? [], COLUMNS, BODY));
    flow.text(heading, HEADING);
    for (const row of rows) flow.row(row, COLUMNS, BODY);
    if (care !== '') flow.text(care, { ...BODY, before: 1 });
    flow.need(flow.heightOf(remark, REMARK));
    flow.text(remark, REMARK);
  }
  flow.need(flow.heightOf(MAKING_SOURCES, HEADING));
  flow.text(MAKING_SOURCES, { ...REMARK, before: 3 });
  flow.need(flow.heightOf(WORKSHOP_CARE, HEADING));
  flow.space(3);
  flow.text(WORKSHOP_CARE, { ...BODY, bold: true });
}
