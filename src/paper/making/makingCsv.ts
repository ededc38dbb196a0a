// Writes the making list as a CSV file (RFC 4180) in which every record has the same number of fields.

import { MAKING_LIST, MM_PER, type Unit } from '../../document';
import { MAKING_SOURCES, type MakingSection, WORKSHOP_CARE } from './makingSections';
import type { MakingNames } from './makingText';

const TEXTS = MAKING_LIST.csv;

/**
 * A header and a record for each line of the list, separated by CR LF. Lengths are decimal numbers in the unit of the header. A
 * text that a spreadsheet could take for a formula gets an apostrophe before it, so that it is never computed.
 */
export function makingCsv(
  sections: readonly MakingSection[],
  { client, draft, unit, remark: estimated }: MakingNames,
): string {
  const record = (list: string, item: string, count: string, length: string, note: string): string =>
    [client, draft, list, item, count, length, note].map(field).join(',');
  const head = TEXTS.columns({ unit }).map(field).join(',');
  const records = sections.flatMap(({ heading, lines, care, remark }) => [
    ...lines.map(({ item, count, lengthMm, note }) =>
      record(heading, item, count === null ? '' : String(count), decimal(lengthMm, unit), note),
    ),
    ...(care === '' ? [] : [record(heading, TEXTS.care, '', '', care)]),
    record(heading, TEXTS.goesBy, '', '', remark),
  ]);
  const first = estimated === null ? [] : [record(TEXTS.measurements, TEXTS.estimated, '', '', estimated)];
  return [
    head,
    ...first,
    ...records,
    record(TEXTS.goesBy, TEXTS.sources, '', '', MAKING_SOURCES),
    record(TEXTS.care, TEXTS.tools, '', '', WORKSHOP_CARE),
  ]
    .map((row) => `${row}\r\n`)
    .join('');
}

const decimal = (mm: number | null, unit: Unit): string =>
  mm === null ? '' : String(Number((mm / MM_PER[unit]).toFixed(unit === 'in' ? 4 : 1)));

/** Signs that start a formula in a spreadsheet, also in full-width form or after blanks. */
const FORMULA = /^[\s\p{Cf}]*[=+\-@\uff1d\uff0b\uff0d\uff20\u2212|]|^[\t\r\n]/u;

function field(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
