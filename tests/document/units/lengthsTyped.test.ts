// Whatever is typed for a length is read as what it says or refused: held against another reader, which takes a text to pieces,
// looks the order of the pieces up in a list, and reckons in whole numbers.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LengthUnit, parseLength } from '../../../src/document';

/** A number as above ÷ below; `digits` is set where it was written in plain digits alone. */
interface Piece {
  readonly kind: string;
  readonly above?: bigint;
  readonly below?: bigint;
  readonly digits?: string;
}

const GLYPHS =
  '½1/2 ⅓1/3 ⅔2/3 ¼1/4 ¾3/4 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8 ⅒1/10 ⅕1/5 ⅖2/5 ⅗3/5 ⅘4/5 ⅙1/6 ⅚5/6 ⅐1/7 ⅑1/9'.split(' ');
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';
/** Millimetres in each unit, times ten. */
const UNITS: Readonly<Record<string, bigint>> = {
  ...Object.fromEntries(['"', '″', "''", 'in', 'in.', 'ins', 'inch', 'inches'].map((word) => [word, 254n])),
  ...{ mm: 10n, 'mm.': 10n, cm: 100n, 'cm.': 100n, cms: 100n, m: 10_000n, 'm.': 10_000n },
};
const FEET = new Set(["'", '′', 'ft', 'ft.', 'foot', 'feet']);

/** The pieces of a text; null where a character belongs to none. */
function piecesOf(text: string): Piece[] | null {
  const pieces: Piece[] = [];
  const taken = (from: string, all: string): string => {
    let to = 0;
    while (to < from.length && all.includes(from.charAt(to))) to += 1;
    return from.slice(0, to);
  };
  let rest = text;
  while (rest !== '') {
    const glyph = GLYPHS.find((each) => rest.startsWith(each.charAt(0)));
    const plain = taken(rest, '0123456789');
    const [raised, lowered] = [taken(rest, RAISED), taken(rest, LOWERED)];
    const word = taken(rest, 'abcdefghijklmnopqrstuvwxyz');
    const sign = rest.charAt(0);
    let length = 1;
    if (glyph) {
      const [above = '', below = ''] = glyph.slice(1).split('/');
      pieces.push({ kind: 'f', above: BigInt(above), below: BigInt(below) });
    } else if (raised !== '' || lowered !== '') {
      const [run, script, kind] = raised === '' ? [lowered, LOWERED, 'l'] : [raised, RAISED, 'r'];
      const digits = [...run].map((each) => script.indexOf(each)).join('');
      pieces.push({ kind, above: BigInt(digits), below: 1n, digits });
      length = run.length;
    } else if (
      plain !== '' ||
      ((sign === '.' || sign === ',') && taken(rest.slice(1), '0123456789') !== '')
    ) {
      const point = rest.charAt(plain.length);
      const behind =
        point === '.' || point === ',' ? taken(rest.slice(plain.length + 1), '0123456789') : null;
      const above = BigInt(plain + (behind ?? ''));
      if (behind === null) pieces.push({ kind: 'n', above, below: 1n, digits: plain });
      else pieces.push({ kind: 'd', above, below: 10n ** BigInt(behind.length) });
      length = plain.length + (behind === null ? 0 : 1 + behind.length);
    } else if (word !== '') {
      const ended = rest.charAt(word.length) === '.' ? `${word}.` : word;
      if (word === 'and') pieces.push({ kind: '&' });
      else if (FEET.has(word)) pieces.push({ kind: 'F' });
      else if (UNITS[word] !== undefined) pieces.push({ kind: 'U', below: UNITS[word] });
      else return null;
      length = UNITS[ended] !== undefined || FEET.has(ended) ? ended.length : word.length;
    } else if (rest.startsWith("''")) {
      pieces.push({ kind: 'U', below: 254n });
      length = rest.charAt(2) === '.' ? 3 : 2;
    } else if (FEET.has(sign)) pieces.push({ kind: 'F' });
    else if (UNITS[sign] !== undefined) {
      pieces.push({ kind: 'U', below: 254n });
      length = rest.charAt(1) === '.' ? 2 : 1;
    } else if ('/⁄'.includes(sign)) pieces.push({ kind: '/' });
    else if ('-−+&'.includes(sign)) pieces.push({ kind: sign === '−' ? '-' : sign });
    else if (sign !== ' ') return null;
    rest = rest.slice(length);
  }
  return pieces;
}

/** Orders of pieces that make one amount: a whole number and a fraction, a fraction alone, a number alone. */
const AMOUNTS = ['n-f', 'n&f', 'nf', 'r-f', 'r&f', 'rf', 'f', 'd', 'n', 'r'];
const ON_TAPE = [2n, 3n, 4n, 8n, 10n, 16n, 32n, 64n];

/** The amount of some pieces; null where they are none, or where a blank left out leaves two meanings. */
function amountOf(pieces: readonly Piece[]): readonly [above: bigint, below: bigint] | null {
  const joined: Piece[] = [];
  for (let i = 0; i < pieces.length; i += 1) {
    const [above, slash, below] = [pieces[i], pieces[i + 1], pieces[i + 2]];
    if (above && slash?.kind === '/' && below) {
      if (!['n', 'r'].includes(above.kind) || !['n', 'l', 'r'].includes(below.kind)) return null;
      joined.push({ ...above, kind: 'f', below: below.above ?? 0n });
      i += 2;
    } else if (above) joined.push(above);
  }
  const order = joined.map(({ kind }) => kind).join('');
  if (!AMOUNTS.includes(order)) return null;
  const [first, last] = [joined[0], joined.at(-1)];
  if (!first || !last) return null;
  const [above, below] = [last.above ?? 0n, last.below ?? 0n];
  if (last.kind !== 'f') return [above, below];
  if (!ON_TAPE.includes(below)) return null;
  if (joined.length > 1) return above < below ? [(first.above ?? 0n) * below + above, below] : null;
  // A blank may have been left out before each digit of the number above the line, but before a nought.
  const digits = last.digits ?? '';
  const splits = Array.from({ length: Math.max(0, digits.length - 1) }, (_, i) => digits.slice(i + 1));
  const isUnsure = splits.some((part) => part.charAt(0) !== '0' && BigInt(part) < below && above >= below);
  return isUnsure ? null : [above, below];
}

/** The length in mm that a text says; null where it says none, or more than one. */
function said(text: string, unit: LengthUnit): number | null {
  const pieces = piecesOf(text.toLowerCase().trim());
  if (!pieces) return null;
  let sign = 1;
  if (pieces[0]?.kind === '-' || pieces[0]?.kind === '+') sign = pieces.shift()?.kind === '-' ? -1 : 1;
  if (pieces.at(-1)?.kind === '+') pieces.pop();
  const foot = pieces.findIndex(({ kind }) => kind === 'F');
  const named = pieces.at(-1)?.kind === 'U' ? pieces.pop()?.below : undefined;
  const amount = amountOf(pieces.slice(foot + 1));
  if (foot < 0) {
    const tenths = named ?? { in: 254n, cm: 100n, mm: 10n }[unit];
    return amount && (sign * Number(amount[0] * tenths)) / Number(amount[1] * 10n);
  }
  const feet = amountOf(pieces.slice(0, foot));
  const isAlone = foot === pieces.length - 1;
  if (!feet || (named !== undefined && (named !== 254n || isAlone)) || (!amount && !isAlone)) return null;
  const [above, below] = amount ?? [0n, 1n];
  if (above >= 12n * below || (amount && feet[1] !== 1n)) return null;
  return (sign * Number((12n * feet[0] * below + above * feet[1]) * 254n)) / Number(feet[1] * below * 10n);
}

const CHARACTERS = [...'0123456789012345678 .,/-−+&½⅝⅔⅐¹³₆₈⁄\'"″incmft', ' and ', ' in', ' ft ', "''"];

/** Lengths as they are written with care. */
const WRITTEN = fc
  .record({
    sign: fc.constantFrom('', '', '', '-', '+'),
    whole: fc.integer({ min: 0, max: 130 }),
    joint: fc.constantFrom(' ', ' ', '-', ' and ', ' & '),
    part: fc.constantFrom('1/2', '3/4', '1/4', '5/8', '7/8', '11/16', '3/16', '9/32', '33/64', '2/3', '3/10'),
    behind: fc.constantFrom('', '', '"', ' in', 'in.', '+'),
  })
  .map(({ sign, whole, joint, part, behind }) => `${sign}${whole}${joint}${part}${behind}`);

/** The same with slips of the finger: a key missed, struck twice or struck beside, and two in the wrong order. */
const SLIPPED = fc
  .tuple(
    WRITTEN,
    fc.array(
      fc.record({
        at: fc.nat(16),
        kind: fc.constantFrom('missed', 'twice', 'beside', 'swapped', 'more'),
        other: fc.constantFrom(...CHARACTERS),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  )
  .map(([text, slips]) => {
    let typed = [...text];
    for (const { at, kind, other } of slips) {
      const i = at % Math.max(1, typed.length);
      const here = typed[i] ?? '';
      const put = {
        missed: [],
        twice: [here, here],
        beside: [other],
        swapped: [typed[i + 1] ?? '', here],
        more: [here, other],
      };
      typed = [
        ...typed.slice(0, i),
        ...put[kind as keyof typeof put],
        ...typed.slice(i + (kind === 'swapped' ? 2 : 1)),
      ];
    }
    return typed.join('');
  });

const UNIT = fc.constantFrom<LengthUnit>('in', 'cm', 'mm');

/** Reads with the program; a length is the one that the other reader finds, or both find none. */
function expectSaid(text: string, unit: LengthUnit): void {
  const parsed = parseLength(text, unit, { signed: true });
  if (!parsed.ok) return;
  const mm = said(text, unit);
  expect(mm, `“${text}” in ${unit} was read as ${parsed.mm} mm`).not.toBeNull();
  expect(Math.abs(parsed.mm - (mm ?? 0)), text).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(mm ?? 0)));
}

describe('what is typed for a length', () => {
  it('is read as what it says where it is written with care', () => {
    fc.assert(
      fc.property(WRITTEN, UNIT, (text, unit) => {
        const parsed = parseLength(text, unit, { signed: true });
        expect(parsed.ok ? parsed.mm : parsed.fault, text).toBeCloseTo(said(text, unit) ?? Number.NaN, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('is read as what it says or refused after slips of the finger', () => {
    fc.assert(fc.property(SLIPPED, UNIT, expectSaid), { numRuns: 3000 });
  });

  it('is read as what it says or refused whatever is struck', () => {
    const struck = fc.array(fc.constantFrom(...CHARACTERS), { maxLength: 10 }).map((all) => all.join(''));
    fc.assert(fc.property(struck, UNIT, expectSaid), { numRuns: 5000 });
  });
});
