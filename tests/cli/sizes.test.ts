import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PiecesFile } from '../../src/cli/output/piecesFile';
import { sizeRange } from '../support/bodies/sizeRange';
import { runDraft } from './runDraft';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'staywright-sizes-'));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

const table = (name: string, text: string): string => {
  const path = join(place, name);
  writeFileSync(path, text);
  return path;
};

describe('a range of sizes without a screen', () => {
  it('makes the pieces of each size, the nested print in its forms and the table, and no file of a client', async () => {
    const out = join(place, 'range');
    const ran = await runDraft(['--sizes', table('range.csv', sizeRange(4)), '--out', out]);
    expect(ran).toMatchObject({ code: 0, err: '' });
    const names = ['34', '36', '38', '40'].map((name) => join(out, 'sizes', `${name}.json`));
    expect(ran.out.split('\n')).toEqual([
      ...names,
      ...['nested.pdf', 'nested.svg', 'nested.dxf', 'sizes.csv'].map((name) => join(out, name)),
      '',
    ]);
    expect(readdirSync(out).sort()).toEqual(['nested.dxf', 'nested.pdf', 'nested.svg', 'sizes', 'sizes.csv']);
    const [small, large] = [names[0], names[3]].map(
      (path): PiecesFile => JSON.parse(readFileSync(path ?? '', 'utf8')),
    );
    const bust = (file: PiecesFile | undefined) =>
      file?.levels.find(({ name }) => name === 'bust')?.bodyGirth;
    expect([bust(small), bust(large)]).toEqual([800, 920]);
    expect(readFileSync(join(out, 'sizes.csv'), 'utf8')).toMatch(
      /^what,piece or seam,level,unit,34,36,38,40\r\n/,
    );
  });

  it('says a bad cell and a size that must not be cut, and drafts the others', async () => {
    const [head, units, first, second, ...rest] = sizeRange(4).split('\r\n');
    const slip = second?.replace('84;', 'wide;');
    const short = rest[0]?.replace(/;70(,\d)?;/, ';;');
    const path = table('bad.csv', [head, units, first, slip, short, ...rest.slice(1)].join('\r\n'));
    const out = join(place, 'bad');
    const ran = await runDraft(['--sizes', path, '--out', out, '--paper', 'roll']);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('warn row 4: Row 4, Bust: “wide” is no length.');
    expect(ran.err).toMatch(/block 38 waist: .*waist/i);
    expect(readdirSync(join(out, 'sizes')).sort()).toEqual(['34.json', '40.json']);
    expect(existsSync(join(out, 'nested.pdf'))).toBe(true);
  });

  it.each([
    ['no measurement', 'Size,Shoe\nS,38', 'They are called “Size” and “Shoe”'],
    ['nothing in it', '\n', 'no row below'],
    ['no row', 'Size,Bust', 'no row below'],
    ['no size that is whole', 'Size,Bust (cm)\nS,84', 'S waist: '],
    [
      'a bad cell and no size that is whole',
      'Size,Bust (cm)\nS,84\nM,wide',
      'row 3: Row 3, Bust (cm): “wide” is',
    ],
  ])('ends with 2 on a table with %s', async (_, text, said) => {
    const ran = await runDraft(['--sizes', table('none.csv', text), '--out', join(place, 'none')]);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(said);
    expect(existsSync(join(place, 'none'))).toBe(false);
  });

  it('names the columns that it does not understand, and drafts without them', async () => {
    const text = sizeRange(2).replaceAll('\r\n', ';8\r\n').replace(';8', ';Shoe');
    const ran = await runDraft(['--sizes', table('shoe.csv', text), '--out', join(place, 'shoe')]);
    expect(ran).toMatchObject({ code: 0 });
    expect(ran.err).toBe('note columns: Passed over, as they are called like no measurement: Shoe.\n');
  });

  it('drafts a client beside them where one is named', async () => {
    const client = {
      name: 'Isla Quince',
      measurements: {
        ...{ bust: 940, underBust: 806, waist: 749, hip: 1016, neckToBust: 273, neckToUnderBust: 343 },
        ...{ neckToWaist: 406, neckToHip: 610, bustPointWidth: 184 },
      },
    };
    const out = join(place, 'both');
    const words = ['--client', table('client.json', JSON.stringify(client))];
    const ran = await runDraft([...words, '--sizes', table('two.csv', sizeRange(2)), '--out', out]);
    expect(ran.code).toBe(0);
    for (const name of ['pieces.json', 'pattern.pdf', 'nested.pdf', 'sizes/36.json'])
      expect(existsSync(join(out, name))).toBe(true);
  });
});
