import { describe, expect, it } from 'vitest';
import { readClient } from '../../src/cli/input/clientFile';
import { linesOf } from '../../src/cli/input/lines';
import { readOptions } from '../../src/cli/input/options';
import { styleNamed } from '../../src/cli/input/styleNamed';
import { type Read, readStyle } from '../../src/document';
import { DEFAULT_STYLE, MEASUREMENTS } from '../../src/engine';

const faultsOf = <T>(read: Read<T>): Record<string, string> =>
  read.ok ? {} : Object.fromEntries(read.faults.map(({ path, message }) => [path, message]));
const partOf = <T>(read: Read<T>): T => {
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
};

describe('the words behind the command', () => {
  it('are all optional', () => {
    expect(readOptions([])).toEqual({
      ok: true,
      value: {
        task: 'files',
        client: null,
        style: 'default',
        fittings: null,
        sizes: null,
        lay: null,
        paper: 'a4',
        out: 'out',
        nap: false,
        worn: false,
      },
    });
  });

  it('take a value behind them or behind an equals sign', () => {
    const options = partOf(
      readOptions(['--client', 'a.json', '--style=b.json', '--paper', 'letter', '--out=c=d']),
    );
    expect(options).toEqual({
      task: 'files',
      client: 'a.json',
      style: 'b.json',
      fittings: null,
      sizes: null,
      lay: null,
      paper: 'letter',
      out: 'c=d',
      nap: false,
      worn: false,
    });
    expect(partOf(readOptions(['--stdin', '--style', 'default'])).task).toBe('stream');
    expect(partOf(readOptions(['--nap', '--out', 'd']))).toMatchObject({ nap: true, out: 'd' });
    expect(partOf(readOptions(['--foo', '-h'])).task).toBe('help');
  });

  it.each([
    [['--foo'], '--foo', 'not understood'],
    [['--constructor'], '--constructor', 'not understood'],
    [['-x'], '-x', 'not understood'],
    [['client.json'], 'client.json', 'not understood'],
    [['--stdin=yes'], '--stdin=yes', 'not understood'],
    [['--client'], '--client', 'missing'],
    [['--client', '--out', 'd'], '--client', 'missing'],
    [['--out='], '--out', 'missing'],
    [['--out', 'a', '--out', 'b'], '--out', 'twice'],
    [['--stdin', '--stdin'], '--stdin', 'twice'],
    [['--stdin', '--client', 'a.json'], '--client', 'does not go with --stdin'],
    [['--stdin', '--paper', 'a4'], '--paper', 'does not go with --stdin'],
    [['--stdin', '--out', 'd'], '--out', 'does not go with --stdin'],
    [['--stdin', '--nap'], '--nap', 'does not go with --stdin'],
    [['--nap=yes'], '--nap=yes', 'not understood'],
    [['--stdin', '--sizes', 's.csv'], '--sizes', 'does not go with --stdin'],
    [['--sizes', 's.csv', '--worn'], '--worn', 'goes with --client'],
  ])('%j: %s is a fault', (words, path, message) => {
    const faults = faultsOf(readOptions(words));
    expect(Object.keys(faults)).toEqual([path]);
    expect(faults[path]).toContain(message);
  });
});

describe('a client', () => {
  it('is in mm unless it says inches', () => {
    const mm = partOf(readClient({ name: 'Ada', measurements: { bust: 940 } }));
    expect(mm).toMatchObject({ name: 'Ada', unit: 'mm', measurements: { bust: 940, waist: null } });
    expect(Object.keys(mm.measurements)).toEqual(MEASUREMENTS.map(({ name }) => name));
    const given = {
      bust: 37,
      waist: '29 1/2',
      hip: '40½',
      neckToBust: '10,75',
      neckWidth: null,
      highHip: '100 cm',
    };
    const inInches = partOf(readClient({ name: 'Ada', unit: 'in', measurements: given })).measurements;
    expect(inInches.bust).toBeCloseTo(939.8, 9);
    expect(inInches.waist).toBeCloseTo(749.3, 9);
    expect(inInches.hip).toBeCloseTo(1028.7, 9);
    expect(inInches.neckToBust).toBeCloseTo(273.05, 9);
    expect(inInches.highHip).toBe(1000);
    expect(inInches.neckWidth).toBeNull();
  });

  it('may name measurements that were estimated, as in a backup', () => {
    const given = { name: 'Ada', measurements: { bust: 940, underarmToWaist: 190 } };
    expect(partOf(readClient(given)).estimated).toEqual([]);
    expect(partOf(readClient({ ...given, estimated: null })).estimated).toEqual([]);
    expect(partOf(readClient({ ...given, estimated: ['underarmToWaist'] })).estimated).toEqual([
      'underarmToWaist',
    ]);
    const faults = faultsOf(readClient({ ...given, estimated: ['bust', 'waist', 'girth', 7] }));
    expect(Object.keys(faults)).toEqual(['estimated.1', 'estimated.2', 'estimated.3']);
    expect(faults['estimated.1']).toBe('There is no waist among the measurements.');
    expect(faults['estimated.2']).toContain('There is no measurement of this name');
    expect(faultsOf(readClient({ ...given, estimated: 'bust' })).estimated).toContain('a list of names');
  });

  it.each([
    [null, { '': 'must be an object, not null' }],
    [[], { '': 'not a list' }],
    ['Ada', { '': 'not a string' }],
    [{}, { name: 'needs a name', measurements: 'missing' }],
    [{ name: ' ', measurements: {} }, { name: 'needs a name' }],
    [
      { name: 7, measurements: [] },
      { name: 'needs a name', measurements: 'not a list' },
    ],
    [{ name: 'A', unit: 'cm', measurements: {} }, { unit: '"mm" or "in"' }],
    [{ name: 'A', unit: 3, measurements: {} }, { unit: '"mm" or "in"' }],
    [{ name: 'A', measurements: { bsut: 940 } }, { 'measurements.bsut': 'no measurement of this name' }],
    [
      JSON.parse('{"name":"A","measurements":{"__proto__":1}}'),
      { 'measurements.__proto__': 'no measurement' },
    ],
    [
      { name: 'A', measurements: { bust: '940' } },
      { 'measurements.bust': 'fractions as text need "unit": "in"' },
    ],
    [{ name: 'A', measurements: { bust: true } }, { 'measurements.bust': 'not a boolean' }],
    [
      { name: 'A', unit: 'in', measurements: { bust: {}, waist: '1/0' } },
      { 'measurements.bust': 'not an object', 'measurements.waist': 'cannot have 0' },
    ],
    [JSON.parse('{"name":"A","measurements":{"bust":1e999}}'), { 'measurements.bust': 'a number of mm' }],
  ])('%j is refused at each of its faults', (data, expected) => {
    const faults = faultsOf(readClient(data));
    expect(Object.keys(faults).sort()).toEqual(Object.keys(expected).sort());
    for (const [path, part] of Object.entries(expected)) expect(faults[path]).toContain(part);
  });
});

describe('a style', () => {
  it('comes by name', () => {
    expect(partOf(styleNamed('default')).style).toBe(DEFAULT_STYLE);
    expect(faultsOf(styleNamed('constructor'))['--style']).toMatch(
      /no style “constructor”; there are: default/,
    );
  });

  it('is the default where a file says nothing', () => {
    expect(partOf(readStyle({}, 'mine'))).toEqual({ title: 'mine', style: DEFAULT_STYLE });
  });

  it('is laid over the default, in the unit of the file', () => {
    const data = {
      name: 'Ferry',
      unit: 'in',
      ease: { waist: -3, hip: '1 1/2' },
      hemBelow: 5,
      frontShare: { bust: 0.55 },
      closure: { front: 'busk' },
      balance: { cap: 2, sideShare: 0.3 },
      allowances: { seam: '5/8' },
      wedges: [
        { id: 'a', block: 'front', station: 0, weight: 2, stationAt: { waist: -0.1 } },
        { id: 'b', block: 'back', station: 0.5, intake: { waist: '1 1/4' } },
      ],
    };
    const { title, style } = partOf(readStyle(data, 'file'));
    expect(title).toBe('Ferry');
    expect(style.ease.waist).toBeCloseTo(-76.2, 9);
    expect(style.ease.hip).toBeCloseTo(38.1, 9);
    expect(style.ease.bust).toBe(DEFAULT_STYLE.ease.bust);
    expect(style.hemBelow).toBeCloseTo(127, 9);
    expect(style.frontShare).toEqual({ bust: 0.55 });
    expect(style.closure).toEqual({
      front: 'busk',
      back: 'lacing',
      lacingGap: DEFAULT_STYLE.closure.lacingGap,
    });
    expect(style.balance).toEqual({ cap: 50.8, sideShare: 0.3 });
    expect(style.allowances.seam).toBeCloseTo(15.875, 9);
    expect(style.wedges).toEqual([
      {
        id: 'a',
        kind: 'through',
        block: 'front',
        station: 0,
        weight: 2,
        sizing: 'balanced',
        stationAt: { waist: -0.1 },
        intake: {},
      },
      {
        id: 'b',
        kind: 'through',
        block: 'back',
        station: 0.5,
        weight: 1,
        sizing: 'manual',
        stationAt: {},
        intake: { waist: 31.75 },
      },
    ]);
  });

  it.each([
    [[], { '': 'not a list' }],
    [{ unit: 'ell' }, { unit: '"mm" or "in"' }],
    [{ hem: 3 }, { hem: 'no field of this name' }],
    [{ ease: { waste: 3 } }, { 'ease.waste': 'no field of this name' }],
    [{ ease: 3 }, { ease: 'not a number' }],
    [{ hemBelow: '4 1/2' }, { hemBelow: 'need "unit": "in"' }],
    [{ hemBelow: null }, { hemBelow: 'not null' }],
    [{ frontShare: { bust: '1/2' } }, { 'frontShare.bust': 'must be a number' }],
    [{ closure: { front: 'buttons' } }, { 'closure.front': 'one of seam, fold, busk, lacing, hooks, zip' }],
    [{ wedges: {} }, { wedges: 'must be a list' }],
    [{ wedges: [7] }, { 'wedges.0': 'not a number' }],
    [
      { wedges: [{}] },
      { 'wedges.0.id': 'an id', 'wedges.0.block': 'needs this', 'wedges.0.station': 'needs this' },
    ],
    [
      {
        wedges: [
          { id: 'a', block: 'front', station: 0 },
          { id: 'a', block: 'back', station: 0, intakes: {}, sizing: 'eye' },
        ],
      },
      {
        'wedges.1.id': 'Another wedge',
        'wedges.1.intakes': 'no field',
        'wedges.1.sizing': 'one of balanced',
      },
    ],
    [{ hemBelow: 5000 }, { hemBelow: 'must be from −400 mm to 800 mm' }],
    [
      { wedges: [{ id: 'a', block: 'front', station: 2 }] },
      { 'wedges.a.station': 'The station of the side-front wedge' },
    ],
    [
      { wedges: Array.from({ length: 7 }, (_, i) => ({ id: `w${i}`, block: 'back', station: i / 7 })) },
      { wedges: 'The back has 7 wedges' },
    ],
  ])('%j is refused at each of its faults', (data, expected) => {
    const faults = faultsOf(readStyle(data, 'file'));
    expect(Object.keys(faults).sort()).toEqual(Object.keys(expected).sort());
    for (const [path, part] of Object.entries(expected)) expect(faults[path]).toContain(part);
  });
});

describe('lines', () => {
  async function* chunksOf(...chunks: string[]): AsyncGenerator<string> {
    yield* chunks;
  }
  const lines = async (chunks: string[], longest?: number): Promise<(string | null)[]> => {
    const found: (string | null)[] = [];
    for await (const line of linesOf(chunksOf(...chunks), longest)) found.push(line);
    return found;
  };

  it.each([
    [[], []],
    [[''], []],
    [['a\nb\n'], ['a', 'b']],
    [['a\nb'], ['a', 'b']],
    [['a\r\n\r\nb\r\n'], ['a', '', 'b']],
    [
      ['a\r', '\nb'],
      ['a', 'b'],
    ],
    [
      ['a', 'b', 'c\nd'],
      ['abc', 'd'],
    ],
    [['\n\n'], ['', '']],
  ])('of %j are %j', async (chunks, expected) => {
    expect(await lines(chunks)).toEqual(expected);
  });

  it('that are too long are let go, and the next one is whole again', async () => {
    expect(await lines(['12345\n123456\n1', '234', '56789\n12\n1234567'], 5)).toEqual([
      '12345',
      null,
      null,
      '12',
      null,
    ]);
  });
});
