// Reading a part of a length in per cent, as a reduction is often given: 7 %, -6.5%, 6,5 %.

import { plainSpelling } from './spelling';

const PERCENT = /^([+-]? ?)(\d{1,4}(?:[.,]\d{0,6})?|[.,]\d{1,6}) ?%$/;

/**
 * That part of `wholeMm`, mm, with the sign that stands in front; null where the text is not in per cent. Never −0.
 */
export function parsePercent(text: string, wholeMm: number): number | null {
  const [, sign = '', digits = ''] = PERCENT.exec(plainSpelling(text)) ?? [];
  if (digits === '') return null;
  const mm = (Number(digits.replace(',', '.')) * wholeMm) / 100;
  return sign.startsWith('-') && mm !== 0 ? -mm : mm;
}
