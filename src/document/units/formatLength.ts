// Writing a length for people: inches in the fractions of a tape, centimetres to the tape's line.

import { type LengthUnit, MM_PER } from './lengthUnit';
import { FRACTION_GLYPHS, LOWERED, RAISED } from './spelling';

export interface LengthFormat {
  /** Inches are rounded to one part in this many. Default 16. */
  readonly parts?: 8 | 16 | 32;
  /** Write + before what is more than nothing, as for ease. */
  readonly signed?: boolean;
  /** Write the unit behind. */
  readonly withUnit?: boolean;
}

/** A length in mm as text: 34½, ¹¹⁄₁₆, −2, 86.4. A length that is no number is written as a dash. */
export function formatLength(mm: number, unit: LengthUnit, format: LengthFormat = {}): string {
  if (!Number.isFinite(mm)) return '–';
  const { parts = 16, signed = false, withUnit = false } = format;
  // A length half way between two lines must not fall to either by the machine's rounding.
  const size = Math.abs(mm) + NOISE_MM;
  const text =
    unit === 'in'
      ? tapeInches(Math.round((size / MM_PER.in) * parts), parts, glyph, '')
      : trimmed(Math.round(size) / MM_PER[unit], 1);
  const sign = text === '0' ? '' : mm < 0 ? '−' : signed ? '+' : '';
  return `${sign}${text}${withUnit ? ` ${unit}` : ''}`;
}

/**
 * A length in mm as it is written: of a sixteenth of an inch, or of a millimetre. A sum of such lengths is the sum of what is read.
 */
export function writtenLength(mm: number, unit: LengthUnit): number {
  const division = unit === 'in' ? MM_PER.in / 16 : 1;
  return Math.sign(mm) * Math.round((Math.abs(mm) + NOISE_MM) / division) * division;
}

/** Far above rounding in the machine, far below what can be drawn. */
const NOISE_MM = 1e-6;

/**
 * A length in mm as plain ASCII for a field: parseLength reads it back. In inches a length on the tape's sixteenths
 * comes as a fraction ("34 1/2") and any other as decimals; what is read back is within 0.02 mm.
 */
export function plainLength(mm: number, unit: LengthUnit): string {
  if (!Number.isFinite(mm)) return '';
  const size = Math.abs(mm);
  const sixteenths = Math.round((size / MM_PER.in) * 16);
  const onTape = Math.abs((sixteenths * MM_PER.in) / 16 - size) < ON_TAPE_MM;
  const text =
    unit === 'in' && onTape
      ? tapeInches(sixteenths, 16, (numerator, denominator) => `${numerator}/${denominator}`, ' ')
      : trimmed(size / MM_PER[unit], 3);
  return mm < 0 && text !== '0' ? `-${text}` : text;
}

/** Nearer than this a length is the tape's line: far below what can be drawn, far above rounding in the machine. */
const ON_TAPE_MM = 0.001;

function tapeInches(
  count: number,
  parts: number,
  write: (numerator: number, denominator: number) => string,
  between: string,
): string {
  const whole = Math.floor(count / parts);
  let [numerator, denominator] = [count % parts, parts];
  if (numerator === 0) return String(whole);
  while (numerator % 2 === 0) [numerator, denominator] = [numerator / 2, denominator / 2];
  const fraction = write(numerator, denominator);
  return whole === 0 ? fraction : `${whole}${between}${fraction}`;
}

const GLYPH_OF = new Map(Object.entries(FRACTION_GLYPHS).map(([character, spelled]) => [spelled, character]));

const glyph = (numerator: number, denominator: number): string =>
  GLYPH_OF.get(`${numerator}/${denominator}`) ??
  `${inScript(numerator, RAISED)}⁄${inScript(denominator, LOWERED)}`;

const inScript = (value: number, digits: string): string =>
  [...String(value)].map((digit) => [...digits][Number(digit)]).join('');

const trimmed = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));
