// The fitting form behind a mock-up: what to write down while the client wears it.

import { BOUND_TITLES, FITTING_FORM, LEVEL_TITLES, seamLabel } from '../../document';
import { type Draft, hasArmhole, levelsReached } from '../../engine';
import type { PlanInput } from '../layout/planInput';
import { settable } from '../text/writable';
import { type Flow, type FlowPage, flowOver, type TextStyle } from './blocks/pageFlow';
import type { PdfCanvas } from './file/pdfCanvas';
import { drawForFitting, type NumberedSeam } from './fittingDrawing';

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
  const levels = [
    ...(hasArmhole(draft.pieces) ? [] : [BOUND_TITLES.top]),
    ...levelsReached(draft).map(({ name }) => LEVEL_TITLES[name]),
    BOUND_TITLES.hem,
  ];
  const seams = seamsOf(draft);
  flow.text(FITTING_FORM.drawing, { ...BODY, before: 3 });
  flow.draw((canvas, corner) => flow.space(drawForFitting(canvas, corner, flow.widthMm, draft, seams)));
  flow.text(FITTING_FORM.seams, HEADING);
  flow.text(FITTING_FORM.how, BODY);
  table(
    flow,
    FITTING_FORM.seam,
    levels,
    seams.map(({ label }, i) => FITTING_FORM.numbered({ number: i + 1, seam: label })),
  );
  if (draft.laced.length > 0) {
    flow.text(FITTING_FORM.gaps, HEADING);
    table(flow, FITTING_FORM.level, levels, [FITTING_FORM.gap]);
  }
  flow.text(FITTING_FORM.seen, HEADING);
  const ticks = FITTING_FORM.ticks.map((seen) => FITTING_FORM.tick({ seen }));
  const half = Math.ceil(ticks.length / 2);
  for (const [i, tick] of ticks.slice(0, half).entries())
    flow.row([tick, ticks[half + i] ?? FITTING_FORM.blank], [0.5, 0.5], { ...BODY, before: 1.6 });
  flow.text(FITTING_FORM.notes, HEADING);
}

/** Every seam and dart, once: those of both halves where they are drafted apart have one row. */
function seamsOf(draft: Draft): NumberedSeam[] {
  const halves = draft.halves ? [draft.halves.left, draft.halves.right] : [draft];
  const seen = new Set<string>();
  return halves.flatMap(seamsOfHalf).filter(({ label }) => !seen.has(label) && seen.add(label));
}

function seamsOfHalf({ proof }: Pick<Draft, 'proof'>): NumberedSeam[] {
  const joining = proof.seams.flatMap(({ seam, a, b }): NumberedSeam[] =>
    seam.kind === 'shoulder' || seam.kind === 'joined'
      ? []
      : [
          {
            label: seamLabel(seam),
            pieces: [...new Set([a.piece.id, b.piece.id])],
            wedge: seam.kind === 'dart' ? seam.wedge : null,
          },
        ],
  );
  const closed = proof.closedDarts.map(
    ({ seam }): NumberedSeam => ({ label: seamLabel(seam), pieces: [seam.piece.id], wedge: seam.wedge }),
  );
  return [...joining, ...closed];
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
