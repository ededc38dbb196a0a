import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatLength,
  type LengthUnit,
  lengthFaultSentence,
  parseLength,
  plainLength,
} from '../../../src/document';

const inchesToMm = (inches: number): number => 25.4 * inches;

/** mm that a text reads as; the fault's code where it is none. */
const read = (text: string, unit: LengthUnit = 'in', signed = false): number | string => {
  const parsed = parseLength(text, unit, { signed });
  return parsed.ok ? parsed.mm : parsed.fault;
};

describe('parseLength', () => {
  it.each([
    '34 1/2',
    '34½',
    '34 ½',
    '34.5',
    '34,5',
    '34-1/2"',
    '34-½',
    '34 and 1/2',
    '34 1/2 in',
    '34 1/2in.',
    '34 1/2″',
    '34 1/2”',
    "34 1/2''",
    '34 1/2 inches',
    '34 1 / 2',
    '34 1⁄2',
    '34 1∕2',
    '34¹⁄₂',
    '34¹/₂',
    '３４ １／２',
    '34\u00a01/2',
    '34\u202f½',
    '\t34 1/2  ',
    '\u200e34 1/2\ufeff',
    '34\u200b1/2',
    '34\u2060½',
    '\u202d34 1/2\u202c',
    '34⅟2',
    '34 ¹/2',
    '34 1/2+',
    '34½ +',
    '34 1/2" +',
    '34.5 in+',
    '69/2',
    '+34 1/2',
    '2\' 10 1/2"',
    '2ft 10 1/2 in',
    '2′ 10½″',
    '2’10½”',
    '2 feet 10.5',
    '2.875 ft',
  ])('reads %j as 34½ in', (text) => {
    // 34.5 × 25.4, the international inch
    expect(read(text)).toBeCloseTo(876.3, 9);
  });

  it.each([
    ['34 5 / 8', 'in', 34.625 * 25.4],
    ['34⅝', 'in', 34.625 * 25.4],
    ['1/2', 'in', 12.7],
    ['½', 'in', 12.7],
    ['⅓', 'in', 25.4 / 3],
    ['34 ¹¹⁄₁₆', 'in', 34.6875 * 25.4],
    ['34 0/4', 'in', 34 * 25.4],
    ['34⅔', 'in', (34 + 2 / 3) * 25.4],
    ['34 5/64', 'in', (34 + 5 / 64) * 25.4],
    ['34 03/08', 'in', 34.375 * 25.4],
    ['34⅒', 'in', 34.1 * 25.4],
    ['34↉', 'in', 34 * 25.4],
    ['34⅟8', 'in', 34.125 * 25.4],
    ['35 3/8+', 'in', 35.375 * 25.4],
    ['11/16', 'in', (11 / 16) * 25.4],
    ['69/2', 'in', 34.5 * 25.4],
    ['12/2', 'in', 6 * 25.4],
    ['.5', 'in', 12.7],
    [',5', 'in', 12.7],
    ['34.', 'in', 34 * 25.4],
    ["2'", 'in', 609.6],
    ["2'.5", 'in', 24.5 * 25.4],
    ['2 ft. 5', 'in', 29 * 25.4],
    ['2ft. .5 in', 'in', 24.5 * 25.4],
    ['2\' 10"', 'cm', 863.6],
    ['86 cm', 'in', 860],
    ['86,4cm', 'in', 864],
    ['86.4', 'cm', 864],
    ['86 1/2', 'cm', 865],
    ['864 mm', 'in', 864],
    ['864', 'mm', 864],
    ['0.864 m', 'in', 864],
    ['34 in', 'cm', 863.6],
    ['34 IN', 'mm', 863.6],
    ['0', 'in', 0],
  ] as const)('reads %j in a field of %s as %d mm', (text, unit, mm) => {
    expect(read(text, unit)).toBeCloseTo(mm, 9);
  });

  it.each([
    ['-2', -50.8],
    ['−2', -50.8],
    ['– 2 1/2"', -63.5],
    ['-½', -12.7],
    ['-2-1/2', -63.5],
    ['+1/2', 12.7],
    ['-3 cm', -30],
  ] as const)('reads %j as %d mm where a sign makes sense', (text, mm) => {
    expect(read(text, 'in', true)).toBeCloseTo(mm, 9);
  });

  it('reads minus nothing as nothing', () => {
    expect(read('-0', 'in', true)).toBe(0);
    expect(Object.is(read('-0.0', 'in', false), 0)).toBe(true);
  });

  it.each([
    ['', 'empty'],
    [' \u00a0\t', 'empty'],
    ['\u200b', 'empty'],
    ['1e5', 'letters'],
    ['0x1F', 'letters'],
    ['NaN', 'letters'],
    ['Infinity', 'letters'],
    ['34 elephants', 'letters'],
    ['34 px', 'letters'],
    ['34 5', 'numbersApart'],
    ['34.5 1/2', 'numbersApart'],
    ['34 - 1/2', 'numbersApart'],
    ['34 -1/2', 'numbersApart'],
    ['34 in 2 cm', 'numbersApart'],
    ['2.5 ft 3 in', 'numbersApart'],
    ['2ft.5', 'numbersApart'],
    ['2ft.5 in', 'numbersApart'],
    ["2'..5", 'numbersApart'],
    ['34 1/0', 'zeroDenominator'],
    ['0/0', 'zeroDenominator'],
    ['34 3/2', 'fractionNotProper'],
    ['34 2/2', 'fractionNotProper'],
    ['2\' 12"', 'inchesOverFoot'],
    ['-2', 'negative'],
    ['−½', 'negative'],
    ['34₂', 'notANumber'],
    ['34₁⁄₂', 'notANumber'],
    ['34①', 'notANumber'],
    ['34\u2167', 'notANumber'],
    ['34²', 'numbersApart'],
    ['3\u200b4', 'numbersApart'],
    ['3\u00ad4', 'numbersApart'],
    ['34½8', 'numbersApart'],
    ['³4', 'numbersApart'],
    ['3¹/1₀0', 'numbersApart'],
    ['34 1/₁6', 'numbersApart'],
    ['34 1/¹6', 'numbersApart'],
    ['+', 'notANumber'],
    ['34 + 2', 'notANumber'],
    ['34++', 'notANumber'],
    ['-', 'notANumber'],
    ['/', 'notANumber'],
    ['3/', 'notANumber'],
    ['/3', 'notANumber'],
    ['1/2/3', 'notANumber'],
    ['1..2', 'notANumber'],
    ['34..5', 'notANumber'],
    ['--2', 'notANumber'],
    ['in', 'notANumber'],
    ['34 in cm', 'notANumber'],
    ['∞', 'notANumber'],
    ['9'.repeat(400), 'notANumber'],
  ] as const)('refuses %j as %s', (text, fault) => {
    expect(read(text)).toBe(fault);
    expect(lengthFaultSentence({ fault }, 'cm')).toMatch(/^[A-Z].*\.$/);
  });

  it.each([
    ['31/2', '3 1/2', '15 1/2'],
    ['345/8', '34 5/8', '43 1/8'],
    ['3411/16', '341 1/16', '213 3/16'],
    ['24/16', '2 4/16', '1 8/16'],
    ['2\' 21/2"', '2 1/2', '10 1/2'],
    ['31/2 cm', '3 1/2', '15 1/2'],
    ['³¹⁄₂', '3 1/2', '15 1/2'],
  ])('asks whether %j is %s or %s', (text, apart, divided) => {
    const parsed = parseLength(text, 'in');
    expect(parsed).toEqual({ ok: false, fault: 'twoReadings', readings: [apart, divided] });
    expect(parsed.ok ? '' : lengthFaultSentence(parsed, 'in')).toBe(
      `This may mean ${apart} or ${divided}. Write the one you mean.`,
    );
  });

  it.each([
    ['38 3/434', '434'],
    ['38 3/43', '43'],
    ['38 3/7', '7'],
    ['34⅐', '7'],
    ['34⅑', '9'],
    ['34 ⅗', '5'],
    ['3/9', '9'],
    ['34 7/1', '1'],
    ['341/28', '28'],
    ["2' 1/6", '6'],
  ])('refuses %j: no tape has parts of 1/%s', (text, parts) => {
    for (const unit of ['in', 'cm'] as const) {
      const parsed = parseLength(text, unit);
      expect(parsed).toEqual({ ok: false, fault: 'notOnTape', parts });
      const example = unit === 'in' ? '34 1/2 or 34.5' : '87.6';
      expect(parsed.ok ? '' : lengthFaultSentence(parsed, unit)).toBe(
        `No tape is divided into parts of 1/${parts}. Write a fraction that a tape has, or a decimal number, like ${example}.`,
      );
    }
  });

  it('gives a finite number or a fault for any text', () => {
    const marks = fc.constantFrom(...'0123456789 .,/-−+½⅝¹₆⁄\'"″incmft'.split(''));
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: marks, maxLength: 14 })), (text) => {
        const parsed = parseLength(text, 'in', { signed: true });
        expect(parsed.ok ? Number.isFinite(parsed.mm) : parsed.fault !== undefined).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('formatLength', () => {
  it.each([
    [876.3, '34½'],
    [863.6, '34'],
    [863.7, '34'],
    [12.7, '½'],
    [6.35, '¼'],
    [19.05, '¾'],
    [(5 / 8) * 25.4, '⅝'],
    [(11 / 16) * 25.4, '¹¹⁄₁₆'],
    [(34 + 3 / 16) * 25.4, '34³⁄₁₆'],
    [25.39, '1'],
    [0, '0'],
    [-0.2, '0'],
    [-50.8, '−2'],
    [-63.5, '−2½'],
    [Number.NaN, '–'],
    [Number.POSITIVE_INFINITY, '–'],
  ])('writes %d mm as %s in', (mm, text) => {
    expect(formatLength(mm, 'in')).toBe(text);
  });

  it('rounds to the part asked for', () => {
    expect(formatLength((11 / 16) * 25.4, 'in', { parts: 8 })).toBe('¾');
    expect(formatLength((11 / 32) * 25.4, 'in', { parts: 32 })).toBe('¹¹⁄₃₂');
  });

  it.each([
    [864, '86.4'],
    [860, '86'],
    [863.6, '86.4'],
    [-0.4, '0'],
    [-25, '−2.5'],
  ])('writes %d mm as %s cm', (mm, text) => {
    expect(formatLength(mm, 'cm')).toBe(text);
  });

  it('writes sign and unit when asked', () => {
    expect(formatLength(12.7, 'in', { signed: true, withUnit: true })).toBe('+½ in');
    expect(formatLength(0, 'in', { signed: true })).toBe('0');
    expect(formatLength(-15, 'cm', { signed: true, withUnit: true })).toBe('−1.5 cm');
    expect(formatLength(20.4, 'mm', { withUnit: true })).toBe('20 mm');
  });
});

describe('a length half way between two lines of the tape', () => {
  it.each([
    [698.5, 'cm', '69.9'],
    [698.5 - 1e-10, 'cm', '69.9'],
    [inchesToMm(1 / 32) - 1e-10, 'in', '¹⁄₁₆'],
    [inchesToMm(1 / 32) + 1e-10, 'in', '¹⁄₁₆'],
  ] as const)('%f mm is written in %s as %s, whatever the machine rounds', (mm, unit, text) => {
    expect(formatLength(mm, unit)).toBe(text);
  });
});

describe('plainLength', () => {
  it.each([
    [876.3, 'in', '34 1/2'],
    [-63.5, 'in', '-2 1/2'],
    [(11 / 16) * 25.4, 'in', '11/16'],
    [864, 'in', '34.016'],
    [0, 'in', '0'],
    [864, 'cm', '86.4'],
    [863.6, 'cm', '86.36'],
    [-0.0001, 'cm', '0'],
    [Number.NaN, 'cm', ''],
  ] as const)('writes %d mm for a field of %s as %j', (mm, unit, text) => {
    expect(plainLength(mm, unit)).toBe(text);
  });
});

const UNITS = fc.constantFrom<LengthUnit>('in', 'cm', 'mm');

describe('there and back', () => {
  it('reads what it wrote for people, to half the part it was rounded to', () => {
    const mm = fc.double({ min: -3000, max: 3000, noNaN: true });
    const parts = fc.constantFrom<8 | 16 | 32>(8, 16, 32);
    fc.assert(
      fc.property(mm, UNITS, parts, fc.boolean(), (length, unit, part, withUnit) => {
        const text = formatLength(length, unit, { parts: part, signed: true, withUnit });
        const half = unit === 'in' ? 25.4 / part / 2 : 0.5;
        expect(Math.abs((read(text, unit, true) as number) - length)).toBeLessThanOrEqual(half + 1e-9);
      }),
    );
  });

  it('reads the same sixteenth it wrote into a field', () => {
    fc.assert(
      fc.property(fc.integer({ min: -2000, max: 2000 }), (sixteenths) => {
        const mm = (sixteenths / 16) * 25.4;
        expect(read(plainLength(mm, 'in'), 'in', true)).toBeCloseTo(mm, 9);
        expect(read(formatLength(mm, 'in'), 'in', true)).toBeCloseTo(mm, 9);
      }),
    );
  });

  it('reads any length it wrote into a field to within 0.02 mm', () => {
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 3000, noNaN: true }), UNITS, (mm, unit) => {
        expect(Math.abs((read(plainLength(mm, unit), unit, true) as number) - mm)).toBeLessThan(0.02);
      }),
    );
  });
});

it('reads a length of 60 letters and none that is longer', () => {
  const zeros = '0'.repeat(58);
  expect(parseLength(`${zeros}34`, 'cm')).toEqual({ ok: true, mm: 340 });
  expect(parseLength(`${zeros}034`, 'cm')).toEqual({ ok: false, fault: 'notANumber' });
});

it('takes no blank to be left out before a nought: 10/3 is ten thirds', () => {
  expect(parseLength('10/3', 'mm')).toEqual({ ok: true, mm: 10 / 3 });
});
