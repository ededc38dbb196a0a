// The page with the record of a print, behind the pattern.

import { RECORD } from '../../document';
import type { PlanInput } from '../layout/planInput';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { recordOf } from '../remarks/record';
import { shortened } from '../text/textWidth';
import { settable } from '../text/writable';
import { type FlowPage, flowOver, type TextStyle } from './blocks/pageFlow';
import type { PdfCanvas } from './file/pdfCanvas';

const TITLE: TextStyle = { sizePt: 16, bold: true };
const NAMES: TextStyle = { sizePt: 10, before: 0.6 };
const HEADING: TextStyle = { sizePt: 11, bold: true, before: 4.5 };
const BODY: TextStyle = { sizePt: 8.5, before: 0.7 };
const PAIR = [0.36, 0.64];
const GIRTHS = [0.24, 0.15, 0.13, 0.24, 0.24];
const GIRTHS_ALTERED = [0.2, 0.13, 0.12, 0.22, 0.13, 0.2];

/** Draws the record on upright pages from `newPage`, beginning with a new one; no page of a draft without pieces. */
export function drawRecordPage(newPage: () => PdfCanvas, page: FlowPage, input: PlanInput): void {
  if (input.draft.pieces.length === 0) return;
  const { parts, girths } = recordOf(input);
  const flow = flowOver(newPage, page, RECORD.title);
  flow.text(RECORD.title, TITLE);
  const names = [input.client.name, input.savedDraft.name].filter((name) => name.trim() !== '').join(', ');
  flow.text(shortened(settable(names), NAMES.sizePt, false, flow.widthMm), NAMES);
  if (hasErrors(input)) flow.text(DO_NOT_CUT, { ...NAMES, bold: true });
  flow.text(RECORD.why, NAMES);
  flow.space(1.5);
  flow.rule();
  for (const { heading, rows } of parts) {
    flow.need(flow.heightOf(heading, HEADING) + flow.heightOfRow(rows[0] ?? [], PAIR, BODY));
    flow.text(heading, HEADING);
    for (const row of rows) flow.row(row, PAIR, BODY);
  }
  if (girths.rows.length === 0) return;
  const widths = girths.columns.length > GIRTHS.length ? GIRTHS_ALTERED : GIRTHS;
  flow.need(flow.heightOf(girths.heading, HEADING) + 2 * flow.heightOfRow(girths.columns, widths, BODY));
  flow.text(girths.heading, HEADING);
  flow.row(girths.columns, widths, { ...BODY, bold: true });
  for (const row of girths.rows) flow.row(row, widths, BODY);
}
