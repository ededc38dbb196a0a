import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MEASUREMENT_WORDS, passedOver, plainLength, readPeople, withUse } from '../../../src/document';
import { MEASUREMENTS } from '../../../src/engine';

const NAMES = MEASUREMENTS.map(({ name }) => name);

describe('a table of people', () => {
  it.each([
    ['Name,Bust,Waist\nAda,37,29 1/2', 'in'],
    ['\ufeffName;Bust girth;Waist girth\r\nAda;93,98;74,93\r\n', 'cm'],
    ['client\tbust (mm)\tWAIST [cm]\n\nAda\t939.8\t74.93\n', 'in'],
    ['Size|Bust|Waist\n|cm|mm\nAda|93,98|749,3', 'in'],
    ['Name,Bust,Waist\nunit,(cm),in.\nAda,93.98,29 1/2', 'mm'],
    ['waist in;bust;Client\n"29½";"93,98 cm";"Ada"', 'in'],
  ] as const)('%j is read', (text, unit) => {
    const read = readPeople(text, unit);
    expect(read.faults).toEqual([]);
    expect(read.people).toHaveLength(1);
    const [ada] = read.people ?? [];
    expect(ada?.name).toBe('Ada');
    expect(ada?.measured.bust).toBeCloseTo(939.8, 6);
    expect(ada?.measured.waist).toBeCloseTo(749.3, 6);
  });

  it('says a bad cell by row and column, and takes the others', () => {
    const read = readPeople('Name,Bust,Waist,Shoe\nAda,37,thin,8\n\nMaud,38,30,', 'in');
    expect(read.faults).toEqual([{ row: 2, column: 'Waist', text: 'thin' }]);
    expect(passedOver(read.columns)).toEqual(['Shoe']);
    expect(read.people.map(({ name, measured }) => [name, Object.keys(measured)])).toEqual([
      ['Ada', ['bust']],
      ['Maud', ['bust', 'waist']],
    ]);
  });

  it.each(['', 'Name,Shoe\nAda,8', 'nothing'])('%j has nobody', (text) => {
    expect(readPeople(text, 'in').people).toEqual([]);
  });

  it('tells its columns with their first cells, in their order, but for those in which nothing stands', () => {
    const { columns } = readPeople(
      'Who;Chest;Waist;;;Waist\n;cm;cm;;;cm\nAda;93;75;;x;76\n;;;;;\nMaud;;80;;;81',
      'mm',
    );
    expect(
      columns.map(({ key, number, use, isUnderstood, firstCells }) => [
        key,
        number,
        use,
        isUnderstood,
        firstCells,
      ]),
    ).toEqual([
      ['Who', 1, 'name', false, ['Ada', 'Maud']],
      ['Chest', 2, null, false, ['93']],
      ['Waist', 3, 'waist', true, ['75', '80']],
      [' (2)', 5, null, false, ['x']],
      ['Waist (2)', 6, null, true, ['76', '81']],
    ]);
    expect(passedOver(columns)).toEqual(['Chest', 'Column 5', 'Waist (2)']);
  });

  it('is read as one says of its columns, in their units', () => {
    const text = 'Chest;Who;Shoe;Middle (cm);Bust\n93,98;Ada;8;74,93;1';
    const chosen = [
      ['Chest', 'bust'],
      ['Who', 'name'],
      ['Shoe', 'leftOut'],
      ['Middle (cm)', 'waist'],
    ] as const;
    const read = readPeople(text, 'cm', new Map(chosen));
    const [ada] = read.people;
    expect(ada?.name).toBe('Ada');
    expect(ada?.measured.bust).toBeCloseTo(939.8, 6);
    expect(ada?.measured.waist).toBeCloseTo(749.3, 6);
    expect(passedOver(read.columns)).toEqual(['Bust']);
    expect(readPeople(text, 'cm').people.map(({ name, measured }) => [name, measured])).toEqual([
      ['93,98', { bust: 10 }],
    ]);
  });

  it('has one column for a thing: what is chosen later takes it, and null takes a choice back', () => {
    let chosen = withUse(withUse(new Map(), 'A', 'bust'), 'B', 'bust');
    expect([...chosen]).toEqual([['B', 'bust']]);
    chosen = withUse(withUse(chosen, 'A', 'leftOut'), 'C', 'leftOut');
    expect(chosen.size).toBe(3);
    expect([...withUse(chosen, 'B', null).keys()]).toEqual(['A', 'C']);
  });

  it('comes back as it was written, whatever the names, separator and quotes', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }), {
          minLength: 1,
          maxLength: 5,
        }),
        fc.shuffledSubarray(NAMES, { minLength: 1 }),
        fc.constantFrom(',', ';', '\t'),
        fc.constantFrom('in', 'cm'),
        fc.integer({ min: 1, max: 1600 }),
        (names, columns, separator, unit, size) => {
          const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
          const lengths = columns.map((_, i) => ((size + i) * 25.4) / 16);
          const lines = [
            ['Name', ...columns.map((name) => MEASUREMENT_WORDS[name].label)],
            ...names.map((name) => [name, ...lengths.map((mm) => plainLength(mm, unit))]),
          ].map((cells) => cells.map(quoted).join(separator));
          const read = readPeople(lines.join('\r\n'), unit);
          expect(read.faults).toEqual([]);
          expect(read.people.map(({ name }) => name)).toEqual(
            names.map((name) => name.replace(/\r\n?/gu, '\n').trim()),
          );
          for (const { measured } of read.people ?? [])
            for (const [i, column] of columns.entries())
              expect(Math.abs((measured[column] ?? 0) - (lengths[i] ?? 0))).toBeLessThan(0.02);
        },
      ),
    );
  });

  it('takes any text without a fault of its own', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (text) => {
        expect(readPeople(text, 'in').faults).toBeInstanceOf(Array);
        const read = readPeople(`Name,Bust\n${text}`, 'in');
        for (const { measured } of read.people ?? [])
          for (const mm of Object.values(measured)) expect(Number.isFinite(mm)).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});
