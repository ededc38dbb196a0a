import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layNumbers, listParts, MEASUREMENT_WORDS, plainLength } from '../../../src/document';
import { MEASUREMENTS, type MeasurementName } from '../../../src/engine';

const NAMES = MEASUREMENTS.map(({ name }) => name);
const lay = (text: string, fields: readonly MeasurementName[] = NAMES, unit: 'in' | 'cm' = 'in') =>
  layNumbers(listParts(text) ?? [], fields, unit);

describe('a pasted text', () => {
  it.each(['34 1/2', '34,5', '2\' 10"', ' 34½ \n', '', '\n\n', '37 in'])(
    '“%s” is one text and no list',
    (text) => {
      expect(listParts(text)).toBeNull();
    },
  );

  it.each([
    ['35 1/2\n37', ['35 1/2', '37']],
    ['35,5\t37\r\n40', ['35,5', '37', '40']],
    ['90,2; 94; ; 75', ['90,2', '94', '', '75']],
    ['35.5, 37, 31 3/4', ['35.5', '37', '31 3/4']],
    ['\ufeff35\n\n40\n\n', ['35', '', '40']],
  ])('“%s” is a list', (text, parts) => {
    expect(listParts(text)).toEqual(parts);
  });

  it('too long to be a list is none', () => {
    expect(listParts('37\n'.repeat(2000))).toBeNull();
  });
});

describe('a list of numbers', () => {
  it('fills the fields in order, an empty part leaving its field alone', () => {
    const { filled, unread, tooMany } = lay('35 1/2\n\n31¾ in\n75 cm');
    expect(filled.map(({ name }) => name)).toEqual(['overBust', 'underBust', 'waist']);
    expect(filled.map(({ mm }) => mm)).toEqual([35.5 * 25.4, 31.75 * 25.4, 750]);
    expect([unread, tooMany]).toEqual([[], 0]);
  });

  it('names what is no length and leaves its field alone', () => {
    const { filled, unread } = lay('35\nabout 30\n-3\n29');
    expect(filled.map(({ name }) => name)).toEqual(['overBust', 'waist']);
    expect(unread).toEqual(['about 30', '-3']);
  });

  it('goes by the names of measurements where they stand, whatever their case and hyphens', () => {
    const { filled } = lay('Waist: 29 1/2\nBUST 37\nneck to waist, front = 16\nUnder bust girth 31.75', [
      'hip',
    ]);
    expect(Object.fromEntries(filled.map(({ name, mm }) => [name, mm / 25.4]))).toEqual({
      waist: 29.5,
      bust: 37,
      neckToWaist: 16,
      underBust: 31.75,
    });
  });

  it('counts the numbers for which there is no field', () => {
    expect(lay('1\n2\n3', ['waist']).tooMany).toBe(2);
  });

  it('holds the later of two numbers for one field', () => {
    expect(lay('waist 29\nwaist 30').filled).toEqual([{ name: 'waist', mm: 762 }]);
  });

  it('brings back any numbers as they were written, in any order of names', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(NAMES, { minLength: 2 }),
        fc.array(fc.integer({ min: 1, max: 1600 }), { minLength: 40, maxLength: 40 }),
        fc.constantFrom('\n', '\t', ';', '\r\n'),
        fc.boolean(),
        (names, sixteenths, between, named) => {
          const lengths = names.map((_, i) => ((sixteenths[i] ?? 1) * 25.4) / 16);
          const text = names
            .map(
              (name, i) =>
                `${named ? `${MEASUREMENT_WORDS[name].label} ` : ''}${plainLength(lengths[i] ?? 0, 'in')}`,
            )
            .join(between);
          const { filled, unread, tooMany } = lay(text, named ? [] : names);
          expect(filled.map(({ name }) => name)).toEqual(names);
          for (const [i, { mm }] of filled.entries()) expect(mm).toBeCloseTo(lengths[i] ?? 0, 6);
          expect([unread, tooMany]).toEqual([[], 0]);
        },
      ),
    );
  });

  it('takes any text without a fault', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const { filled } = lay(text);
        for (const { mm } of filled) expect(Number.isFinite(mm) && mm >= 0).toBe(true);
      }),
    );
  });
});
