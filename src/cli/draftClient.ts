// Drafts one client. A measurement that is missing or out of span makes the input unusable; it is no issue of the draft.

import { alterationsOf, type Fitting, issueSentence, type Read } from '../document';
import { type Draft, draftWhole, type IssueCode, type Style } from '../engine';
import type { FileClient } from './input/clientFile';

/** Issues that make the input unusable. */
const UNUSABLE: ReadonlySet<IssueCode> = new Set([
  'measurementMissing',
  'measurementOutOfRange',
  'sidesOutOfRange',
]);

/**
 * Drafts a client with the alterations of fittings. A measurement that is missing or outside its span, or sides outside theirs, are
 * faults of the input, each with its path in the client file; everything else is an issue of the draft.
 */
export function draftClient(
  { measurements, sides, unit }: FileClient,
  style: Style,
  fittings: readonly Fitting[] = [],
): Read<Draft> {
  const drafted = draftWhole(measurements, style, sides, alterationsOf(fittings));
  const faults = drafted.issues
    .filter(({ code }) => UNUSABLE.has(code))
    .map((issue) => ({
      path: `${issue.code === 'sidesOutOfRange' ? 'sides' : 'measurements'}.${issue.at.field}`,
      message: issueSentence(issue, { unit, style }),
    }));
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: drafted };
}
