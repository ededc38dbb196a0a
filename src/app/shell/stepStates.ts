// How the four steps stand, reckoned from what is kept.

import {
  type Book,
  isRead,
  openClient,
  openDraftOf,
  STEP_STATES,
  wantsReading,
  wedgesOf,
} from '../../document';
import { type Draft, MEASUREMENTS } from '../../engine';
import { edgeContinuity, girthProof, seamWalk } from '../fit/proofs';
import { draftOfSide } from '../store/drafts';
import { isOfNeeded } from '../store/laterIssues';
import type { StepName } from './steps';

export interface StepState {
  readonly text: string;
  /** `done`: nothing is in the way; `mend`: something in this step is; `wait`: something in a step before it is. */
  readonly kind: 'done' | 'mend' | 'wait';
}

export type StepStates = Readonly<Record<StepName, StepState>>;

export function stepStates(book: Book): StepStates {
  const client = openClient(book);
  const savedDraft = openDraftOf(client);
  const { style } = savedDraft;
  const draft = draftOfSide(client, savedDraft, null);
  const { measurements, estimated } = client;
  // What every draft needs, and what this style needs beside it: without that it is drafted, but not to be cut.
  const missing = new Set([
    ...MEASUREMENTS.filter(({ name, needed }) => needed && measurements[name] === null).map(
      ({ name }) => name,
    ),
    ...draft.issues.filter(isOfNeeded).map(({ at }) => at.field),
  ]).size;
  const taken = MEASUREMENTS.filter(
    ({ name }) => measurements[name] !== null && !estimated.includes(name),
  ).length;
  const errors = draft.issues.filter(
    ({ severity, code }) => severity === 'error' && code !== 'measurementMissing',
  );
  const atTape = errors.filter(({ at }) => MEASUREMENTS.some(({ name }) => name === at.field)).length;
  const inDraft = errors.length - atTape;
  const drafted = draft.pieces.length > 0;
  const unread = draft.issues.some((each) => wantsReading(each) && !isRead(each, savedDraft));
  const wedges = new Set([...wedgesOf(style, 'left'), ...wedgesOf(style, 'right')].map(({ id }) => id)).size;
  return {
    measure:
      missing > 0
        ? mend(STEP_STATES.missing({ count: missing }))
        : atTape > 0
          ? mend(STEP_STATES.toMend({ count: atTape }))
          : done(STEP_STATES.taken({ count: taken })),
    draft:
      missing > 0 && !drafted
        ? NOT_YET
        : inDraft > 0
          ? mend(STEP_STATES.toMend({ count: inDraft }))
          : done(STEP_STATES.wedges({ count: wedges })),
    fit: drafted ? fitState(draft, client, style) : NOT_YET,
    cut:
      !drafted || missing + errors.length > 0
        ? NOT_YET
        : unread
          ? mend(STEP_STATES.cautions)
          : done(STEP_STATES.ready),
  };
}

function fitState(
  draft: Draft,
  { unit }: ReturnType<typeof openClient>,
  style: ReturnType<typeof openDraftOf>['style'],
): StepState {
  const proofs = [
    seamWalk(draft, unit, style),
    edgeContinuity(draft, style),
    girthProof(draft, unit, style.closure),
  ];
  const off = proofs.flatMap(({ rows }) => rows).filter((row) => row.off).length;
  return off > 0 ? mend(STEP_STATES.toLookAt({ count: off })) : done(STEP_STATES.holds);
}

const done = (text: string): StepState => ({ text, kind: 'done' });
const mend = (text: string): StepState => ({ text, kind: 'mend' });
const NOT_YET: StepState = { text: STEP_STATES.notYet, kind: 'wait' };
