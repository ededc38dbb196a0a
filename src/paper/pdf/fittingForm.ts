// The fitting form behind a mock-up: what to write down while the client wears it.

import { FITTING_FORM, LEVEL_TITLES, seamLabel } from '../../document';
import type { PlanInput } from '../layout/planInput';
import { settable } from '../text/writable';
import { type Flow, type FlowPage, flowOver, type TextStyle } from './blocks/pageFlow';
import type { PdfCanvas } from './file/pdfCanvas';

const TITLE: TextStyle = { sizePt: 16, bold: true };
const BODY: TextStyle = { sizePt: 9, before: 0.8 };
const HEADING: TextStyle = { sizePt: 11, bold: true, before: 4 };
/** A row that a pencil fills in. */
const WRITTEN: TextStyle = { sizePt: 9, before: 3.4 };

/** Draws the form on upright pages from `newPage`, beginning with a new one. */
export function drawFittingForm(newPage: () => PdfCanvas, page: FlowPage, input: PlanInput): void {
  const { draft, client, savedDraft, date, mockupNumber } = input;
  const flow = flowOver(newPage, page, FITTING_FORM.title);
  flow.text(FITTING_FORM.title, TITLE);
  flow.text(
    settable(
      FITTING_FORM.of({ client: client.name, draft: savedDraft.name, number: mockupNumber ?? null, date }),
    ),
    BODY,
  );
  flow.text(FITTING_FORM.day, WRITTEN);
  const levels = draft.levels.map(({ name }) => LEVEL_TITLES[name]);
  flow.text(FITTING_FORM.seams, HEADING);
  flow.text(FITTING_FORM.how, BODY);
  table(flow, FITTING_FORM.seam, levels, seamsOf(input));
  if (draft.laced.length > 0) {
    flow.text(FITTING_FORM.gaps, HEADING);
    table(flow, FITTING_FORM.seam, levels, [FITTING_FORM.gap]);
  }
  flow.text(FITTING_FORM.seen, HEADING);
  for (const seen of FITTING_FORM.ticks) flow.text(FITTING_FORM.tick({ seen }), { ...BODY, before: 1.6 });
  flow.text(FITTING_FORM.notes, HEADING);
}

/** Every seam and dart by its name, once. */
function seamsOf({ draft }: PlanInput): string[] {
  const { seams, closedDarts } = draft.proof;
  const altered = [...seams, ...closedDarts].filter(
    ({ seam }) => seam.kind !== 'shoulder' && seam.kind !== 'joined',
  );
  return [...new Set(altered.map(({ seam }) => seamLabel(seam)))];
}

function table(flow: Flow, head: string, columns: readonly string[], rows: readonly string[]): void {
  const first = 0.24;
  const widths = [first, ...columns.map(() => (1 - first) / columns.length)];
  flow.row([head, ...columns], widths, { ...BODY, bold: true });
  for (const row of rows) {
    flow.row([row, ...columns.map(() => FITTING_FORM.blank)], widths, WRITTEN);
    flow.rule();
  }
}
