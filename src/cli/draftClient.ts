// One client drafted. A measurement that is missing or out of all span makes the input unusable, not the draft faulty.

import { issueSentence, type Read } from '../document';
import { type Draft, draftWhole, type IssueCode, type Style } from '../engine';
import type { FileClient } from './clientFile';

const UNUSABLE: ReadonlySet<IssueCode> = new Set([
  'measurementMissing',
  'measurementOutOfRange',
  'sidesOutOfRange',
]);

export function draftClient({ measurements, sides, unit }: FileClient, style: Style): Read<Draft> {
  const drafted = draftWhole(measurements, style, sides);
  const faults = drafted.issues
    .filter(({ code }) => UNUSABLE.has(code))
    .map((issue) => ({
      path: `${issue.code === 'sidesOutOfRange' ? 'sides' : 'measurements'}.${issue.at.field}`,
      message: issueSentence(issue, { unit, style }),
    }));
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: drafted };
}
