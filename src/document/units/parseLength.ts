// Reading a length as makers write it: 34 1/2, 34½, 34.5, 34,5, 34-1/2", 2' 10", 86 cm.

import { inches } from '../../engine';
import { type LengthUnit, MM_PER } from './lengthUnit';
import { plainSpelling } from './spelling';

/**
 * Why a text is no length; the sentences are in messages/remarks/lengthFaults.ts.
 * `fractionNotProper`: a fraction of 1 or more after a whole number ("34 3/2"). `inchesOverFoot`: 12 in or more after
 * feet. `numbersApart`: more numbers than make one length ("34 5", "34 - 1/2"). `notOnTape`: a fraction that no tape has a line for, as
 * it comes about by a slip of the finger ("38 3/434", "38 3/7"). `twoReadings`: a fraction that may be a whole number and a fraction
 * written without a blank ("31/2").
 */
type LengthFault =
  | 'empty'
  | 'letters'
  | 'numbersApart'
  | 'notANumber'
  | 'zeroDenominator'
  | 'fractionNotProper'
  | 'inchesOverFoot'
  | 'negative'
  | 'notOnTape'
  | 'twoReadings';

type PlainFault = Exclude<LengthFault, 'twoReadings' | 'notOnTape'>;

/** `readings`: both lengths that a text may mean, each as it can be typed. `parts`: into how many an inch would be divided. */
export type LengthRefusal =
  | { readonly fault: PlainFault }
  | { readonly fault: 'notOnTape'; readonly parts: string }
  | { readonly fault: 'twoReadings'; readonly readings: readonly [apart: string, divided: string] };

export type ParsedLength =
  | { readonly ok: true; readonly mm: number }
  | ({ readonly ok: false } & LengthRefusal);

/**
 * The length in mm of a text in `unit`, unless the text names a unit of its own (in, ", ft, ', cm, mm, m).
 * A comma is a decimal comma. A sign is read in front; minus only where `signed` says that less than nothing makes
 * sense. A plus behind ("35 3/8+", a little over the line) leaves the length as it is. A fraction is one that a tape has. `mm` is always finite and never −0.
 */
export function parseLength(text: string, unit: LengthUnit, { signed = false } = {}): ParsedLength {
  // No length is this long; the bound keeps a pasted page from being taken to pieces.
  if (text.length > LONGEST) return fault('notANumber');
  const plain = plainSpelling(text).replace(/(?<=[\d."'a-z]) ?\+$/, '');
  if (plain === '') return fault('empty');
  const sign = /^[+-] ?/.exec(plain)?.[0] ?? '';
  const rest = plain.slice(sign.length);
  const found = inFeet(rest) ?? inOneUnit(rest, unit);
  if (found === null) return fault(faultOf(rest));
  if (!found.ok) return found;
  if (!sign.startsWith('-') || found.mm === 0) return found;
  return signed ? { ok: true, mm: -found.mm } : fault('negative');
}

const LONGEST = 60;

const fault = (code: PlainFault): ParsedLength => ({ ok: false, fault: code });

const DECIMAL = String.raw`\d+(?:[.,]\d*)?|[.,]\d+`;
const FRACTION = String.raw`(\d+) ?/ ?(\d+)`;
const AMOUNT = String.raw`(?:(?:(\d+)(?:- ?| and | & | ))?${FRACTION}|(${DECIMAL}))`;
const INCH = String.raw`(?: ?(?:"|in|ins|inch|inches)\.?)`;

const ONE_UNIT = new RegExp(String.raw`^${AMOUNT}(?: ?("|in|ins|inch|inches|cm|cms|mm|m)\.?)?$`);
/** A point right before a digit might end the word or begin the number of inches: "2ft.5" is not read, "2'.5" is 2 ft and half an inch. */
const FEET = new RegExp(
  String.raw`^(${DECIMAL}) ?(?:'|(?:ft|foot|feet)(?![.,][.,\d])\.?)(?: ?${AMOUNT}${INCH}?)?$`,
);

const NAMED: Readonly<Record<string, number>> = { cm: 10, cms: 10, mm: 1, m: 1000 };

function inOneUnit(text: string, unit: LengthUnit): ParsedLength | null {
  const match = ONE_UNIT.exec(text);
  if (!match) return null;
  const [, whole, numerator, denominator, decimal, named] = match;
  const amount = amountOf(whole, numerator, denominator, decimal);
  if (typeof amount !== 'number') return { ok: false, ...amount };
  return { ok: true, mm: amount * (named === undefined ? MM_PER[unit] : (NAMED[named] ?? MM_PER.in)) };
}

function inFeet(text: string): ParsedLength | null {
  const match = FEET.exec(text);
  if (!match) return null;
  const [, feet = '0', whole, numerator, denominator, decimal] = match;
  const none = numerator === undefined && decimal === undefined;
  if (!none && /[.,]/.test(feet)) return fault('numbersApart');
  const amount = none ? 0 : amountOf(whole, numerator, denominator, decimal);
  if (typeof amount !== 'number') return { ok: false, ...amount };
  if (amount >= 12) return fault('inchesOverFoot');
  return { ok: true, mm: inches(12 * decimalOf(feet) + amount) };
}

/** Into how many parts tapes and rulers divide an inch or a centimetre: halved again and again, in tenths, and in thirds. */
const PARTS_OF_TAPES: ReadonlySet<number> = new Set([2, 3, 4, 8, 10, 16, 32, 64]);

function amountOf(
  whole: string | undefined,
  numerator: string | undefined,
  denominator: string | undefined,
  decimal: string | undefined,
): number | LengthRefusal {
  if (numerator === undefined || denominator === undefined) return decimalOf(decimal ?? '0');
  const part = Number(numerator) / Number(denominator);
  if (Number(denominator) === 0) return { fault: 'zeroDenominator' };
  if (!PARTS_OF_TAPES.has(Number(denominator))) return { fault: 'notOnTape', parts: denominator };
  if (whole !== undefined) return part < 1 ? Number(whole) + part : { fault: 'fractionNotProper' };
  const apart = takenApart(numerator, Number(denominator));
  if (apart === null) return part;
  return { fault: 'twoReadings', readings: [apart, mixed(Number(numerator), Number(denominator))] };
}

/** "31" over 2 as "3 1/2"; null where no digits in front leave a fraction of less than 1 behind. */
function takenApart(numerator: string, denominator: number): string | null {
  for (let i = numerator.length - 1; i > 0; i -= 1) {
    const [whole, part] = [numerator.slice(0, i), numerator.slice(i)];
    if (!part.startsWith('0') && Number(part) < denominator && Number(numerator) >= denominator)
      return `${whole} ${part}/${denominator}`;
  }
  return null;
}

const mixed = (numerator: number, denominator: number): string => {
  const [whole, rest] = [Math.floor(numerator / denominator), numerator % denominator];
  return rest === 0 ? String(whole) : `${whole} ${rest}/${denominator}`;
};

const decimalOf = (text: string): number => Number(text.replace(',', '.'));

/** The nearest thing to say about a text that fits no spelling. */
function faultOf(text: string): PlainFault {
  const known = new Set(['in', 'ins', 'inch', 'inches', 'ft', 'foot', 'feet', 'cm', 'cms', 'mm', 'm', 'and']);
  if ((text.match(/\p{L}+/gu) ?? []).some((word) => !known.has(word))) return 'letters';
  return /[\d.,]['" a-z&-]+[\d.,]/.test(text) ? 'numbersApart' : 'notANumber';
}
