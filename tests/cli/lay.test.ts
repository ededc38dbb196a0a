import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { layFile } from '../../src/paper';
import { runDraft } from './runDraft';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'staywright-'));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

type LayFile = ReturnType<typeof layFile>;

async function laid(name: string, ...words: string[]): Promise<LayFile> {
  const out = join(place, name);
  const ran = await runDraft(['--out', out, '--paper', 'roll', '--seconds', '0', ...words]);
  expect(ran).toMatchObject({ code: 0, err: '' });
  for (const file of ['lay.json', 'lay.svg', 'lay.pdf']) expect(ran.out).toContain(join(out, file));
  return JSON.parse(readFileSync(join(out, 'lay.json'), 'utf8'));
}

describe('--lay', () => {
  it('lays the pieces on cloth, open or folded, and draws the plan', async () => {
    const open = await laid('open', '--lay', '1120');
    expect(Object.keys(open)).toEqual(['unit', 'width', 'length', 'density', 'layers', 'placed']);
    expect(open).toMatchObject({ unit: 'mm', width: 1120, layers: 1 });
    const folded = await laid('folded', '--lay', '1120', '--fold', '--gap', '5', '--nap');
    expect(folded).toMatchObject({ width: 560, layers: 2 });
    expect(open.placed).toHaveLength(2 * folded.placed.length);
    expect(open.placed[1]).toMatchObject({ piece: open.placed[0]?.piece, copy: 2, mirrored: true });
    const svg = readFileSync(join(place, 'open', 'lay.svg'), 'utf8');
    expect(svg).toContain(`width="${Math.round(open.length * 1000) / 1000}mm" height="1120mm"`);
    expect(svg.match(/<g id="lay-/g)).toHaveLength(open.placed.length);
    expect(
      readFileSync(join(place, 'open', 'lay.pdf'))
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
    const ends = open.placed.flatMap(({ outline }) => outline.map(([x = 0]) => x));
    expect(Math.max(...ends)).toBeCloseTo(open.length, 5);
  });

  it('names a piece that is wider than the cloth, and writes nothing', async () => {
    const out = join(place, 'narrow');
    const ran = await runDraft(['--lay', '120', '--out', out]);
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(
      /^--lay: Front \d needs \S.* across and the cloth has [^,]*: take a wider cloth\.\n/,
    );
    expect(existsSync(out)).toBe(false);
  });

  it('takes the files of an earlier plan away', async () => {
    await laid('again', '--lay', '1120');
    await runDraft(['--paper', 'roll', '--out', join(place, 'again')]);
    expect(existsSync(join(place, 'again', 'lay.json'))).toBe(false);
  });

  it.each([
    [['--fold'], '--fold: This goes with --lay alone.'],
    [['--seed', '2'], '--seed: This goes with --lay alone.'],
    [['--lay', 'wide'], '--lay: This must be a number from 100 to 4000.'],
    [['--lay', '50'], '--lay: This must be a number from 100 to 4000.'],
    [['--lay', '1120', '--gap', '-1'], '--gap: This must be a number from 0 to 50.'],
    [['--lay', '1120', '--seed', '1.5'], '--seed: This must be a whole number from 0 to 2147483647.'],
    [['--lay'], '--lay: Its value is missing.'],
    [['--lay', '1120', '--stdin'], '--lay: This does not go with --stdin, which makes no files.'],
  ])('refuses %j in one line', async (words, line) => {
    expect(await runDraft(words)).toEqual({ code: 2, out: '', err: `${line}\n` });
  });
});
