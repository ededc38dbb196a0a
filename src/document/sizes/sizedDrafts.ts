// A style drafted for each body of a table.

import { type Draft, draftWhole, type Issue, type Style } from '../../engine';
import type { NamedBody } from './readSizes';

export interface SizedDraft extends NamedBody {
  readonly draft: Draft;
  /** Nothing forbids cutting it. */
  readonly canBeCut: boolean;
}

/** The draft of one size, proved on its own. */
export function draftSize({ name, measurements }: NamedBody, style: Style): SizedDraft {
  const draft = draftWhole(measurements, style, null, []);
  return { name, measurements, draft, canBeCut: draft.pieces.length > 0 && errorsOf(draft).length === 0 };
}

/** What forbids cutting a draft. */
export const errorsOf = ({ issues }: Draft): readonly Issue[] =>
  issues.filter(({ severity }) => severity === 'error');
