// A list of numbers as it is pasted into the form of the measurements: one after the other in the order of the form, or each with
// the name of its measurement.

import type { MeasurementName } from '../../engine';
import type { LengthUnit } from '../units/lengthUnit';
import { parseLength } from '../units/parseLength';
import { measurementNamed } from './measurementNamed';

export interface LaidNumbers {
  /** What each measurement becomes, mm, in the order of the list. */
  readonly filled: readonly { readonly name: MeasurementName; readonly mm: number }[];
  /** Parts of the list that are no length; their fields are left as they are. */
  readonly unread: readonly string[];
  /** Numbers for which no field was left. */
  readonly tooMany: number;
}

/**
 * The parts of a pasted text: its lines, the cells of a table, or what stands between semicolons; in one line, what stands between
 * commas. Null where it has one part only, or is too long for a list.
 */
export function listParts(text: string): readonly string[] | null {
  if (text.length > LONGEST) return null;
  const plain = text
    .replace(/^\ufeff/u, '')
    .replace(/\r\n?/gu, '\n')
    .replace(/\n+$/u, '');
  // In one line a comma and a blank part numbers; a comma alone is a decimal comma.
  const parts = plain.split(/[\n\t;]/u.test(plain) ? /[\n\t;]/u : /, (?=\d)/u).map((part) => part.trim());
  return parts.filter((part) => part !== '').length > 1 ? parts : null;
}

/** No list of measurements is this long; the bound keeps a pasted page from being taken to pieces. */
const LONGEST = 4000;

/**
 * Lays the parts of a list on fields, from the field into which it is pasted. An empty part leaves its field as it is; a part with
 * a name ("Waist 29 1/2", "hip: 40") goes to the field of that name, wherever it is, and is not counted when the others are laid.
 * Of two numbers for one field the later holds.
 *
 * @param fields the field into which the list is pasted, and those after it, in the order of the form
 */
export function layNumbers(
  parts: readonly string[],
  fields: readonly MeasurementName[],
  unit: LengthUnit,
): LaidNumbers {
  const filled = new Map<MeasurementName, number>();
  const unread: string[] = [];
  let [place, tooMany] = [0, 0];
  for (const part of parts) {
    const named = nameIn(part);
    const field = named?.name ?? fields[place];
    if (!named) place += 1;
    const text = named?.rest ?? part;
    if (text === '') continue;
    const parsed = parseLength(text, unit);
    if (!parsed.ok) unread.push(part);
    else if (field === undefined) tooMany += 1;
    else {
      filled.delete(field);
      filled.set(field, parsed.mm);
    }
  }
  return { filled: [...filled].map(([name, mm]) => ({ name, mm })), unread, tooMany };
}

/** The measurement a part begins with, and what stands behind its name. */
function nameIn(part: string): { readonly name: MeasurementName; readonly rest: string } | null {
  const [, words = '', rest = ''] =
    /^(\p{L}[\p{L} ,\-\u2010-\u2015]*?)[\s:=]+([\d½⅓⅔¼¾⅛⅜⅝⅞.].*)?$/u.exec(part) ?? [];
  const name = measurementNamed(words);
  return name === null ? null : { name, rest: rest.trim() };
}
