// Reads one length of a client or style file, and the unit its lengths are in.

import { FILES } from '../messages/book/files';
import { lengthFaultSentence } from '../messages/remarks/lengthFaults';
import { MM_PER } from '../units/lengthUnit';
import { parseLength } from '../units/parseLength';
import { type Fault, type Read, refuse } from './fault';
import { kindOf } from './json';

/** The unit a file's lengths are in. */
export type FileUnit = 'mm' | 'in';

/** The file's unit; mm where it names none. */
export function readUnit(value: unknown): Read<FileUnit> {
  if (value === undefined || value === null) return { ok: true, value: 'mm' };
  if (value === 'mm' || value === 'in') return { ok: true, value };
  return refuse('unit', FILES.unitUnknown);
}

/** A length in mm from a number in the file's unit or, in inches, a text such as "34 1/2". */
export function readLength(value: unknown, unit: FileUnit, path: string, faults: Fault[]): number | null {
  if (typeof value === 'number' && Number.isFinite(value)) return value * MM_PER[unit];
  if (typeof value === 'string' && unit === 'in') {
    const parsed = parseLength(value, 'in', { signed: true });
    if (parsed.ok) return parsed.mm;
    faults.push({ path, message: lengthFaultSentence(parsed, 'in') });
  } else {
    const { notInches, notMm, textNotMm } = FILES.field;
    const message = unit === 'in' ? notInches : typeof value === 'string' ? textNotMm : notMm;
    faults.push({ path, message: message({ kind: kindOf(value) }) });
  }
  return null;
}
