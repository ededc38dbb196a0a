// One client drafted. A measurement that is missing or out of all span makes the input unusable, not the draft faulty.

import { issueSentence, type Read } from '../document';
import { type Draft, draft, type Style } from '../engine';
import type { FileClient } from './clientFile';

export function draftClient({ measurements, unit }: FileClient, style: Style): Read<Draft> {
  const drafted = draft(measurements, style);
  const faults = drafted.issues
    .filter(({ code }) => code === 'measurementMissing' || code === 'measurementOutOfRange')
    .map((issue) => ({
      path: `measurements.${issue.at.field}`,
      message: issueSentence(issue, { unit, style }),
    }));
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: drafted };
}
