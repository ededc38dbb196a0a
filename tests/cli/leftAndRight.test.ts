import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readClient } from '../../src/cli/input/clientFile';
import type { PiecesFile } from '../../src/cli/output/piecesFile';
import { DEMO_CLIENT, readStyle, writeStyle } from '../../src/document';
import { DEFAULT_STYLE, inches } from '../../src/engine';
import { runDraft } from './runDraft';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'staywright-'));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

const { name, measurements } = DEMO_CLIENT;
const faultsOf = (sides: unknown): string[] => {
  const read = readClient({ name, unit: 'in', measurements: { bust: 37 }, sides });
  return read.ok ? [] : read.faults.map(({ path }) => path);
};

describe('how a client differs left to right', () => {
  it('is read in the unit of the file, shares as parts', () => {
    const read = readClient({
      name,
      unit: 'in',
      measurements: { bust: 37 },
      sides: { leftShare: { waist: 0.52 }, rightLower: { hip: '3/8' } },
    });
    expect(read.ok && read.value.sides).toEqual({
      leftShare: { waist: 0.52 },
      rightLower: { hip: inches(0.375) },
    });
    expect(readClient({ name, unit: 'mm', measurements: {} })).toMatchObject({
      ok: true,
      value: { sides: null },
    });
  });

  it.each([
    [3, 'sides'],
    [{ left: {} }, 'sides.left'],
    [{ leftShare: { waste: 0.5 } }, 'sides.leftShare.waste'],
    [{ leftShare: { waist: 'half' } }, 'sides.leftShare.waist'],
    [{ rightLower: { overBust: 3 } }, 'sides.rightLower.overBust'],
    [{ rightLower: { waist: 'low' } }, 'sides.rightLower.waist'],
  ])('%j is a fault at its field', (sides, path) => {
    expect(faultsOf(sides)).toContain(path);
  });

  it('drafts both halves into the files, each piece once', { timeout: 120_000 }, async () => {
    const client = join(place, 'client.json');
    const sides = { leftShare: { bust: 0.51, waist: 0.52 }, rightLower: { waist: 6, hip: 8 } };
    writeFileSync(client, JSON.stringify({ name, unit: 'mm', measurements, sides }));
    const out = join(place, 'out');
    expect(await runDraft(['--client', client, '--paper', 'roll', '--out', out])).toMatchObject({
      code: 0,
      err: '',
    });
    const drafted = JSON.parse(readFileSync(join(out, 'pieces.json'), 'utf8')) as PiecesFile;
    expect(drafted.pieces.map(({ label }) => label)).toEqual(
      ['Left', 'Right'].flatMap((hand) =>
        ['front 1', 'front 2', 'front 3', 'back 1', 'back 2', 'back 3'].map((piece) => `${hand} ${piece}`),
      ),
    );
    expect(drafted.pieces.every(({ cut }) => cut.count === 1 && !cut.onFold)).toBe(true);
    for (const { bodyGirth, ease, targetGirth, sewnGirth } of drafted.levels) {
      expect(targetGirth).toBeCloseTo(bodyGirth + ease - drafted.lacingGap, 5);
      expect(Math.abs(sewnGirth - targetGirth)).toBeLessThanOrEqual(0.1);
    }
    const waist = drafted.levels.find((level) => level.name === 'waist');
    expect((waist?.rightY ?? 0) - (waist?.y ?? 0)).toBeCloseTo(6, 5);
    for (const { lengthA, lengthB } of drafted.seams)
      expect(Math.abs(lengthA - lengthB)).toBeLessThanOrEqual(0.05);
    // Centre front is sewn: left and right are each other's mates.
    expect(drafted.seams.map(({ a, b }) => `${a} ${b}`)).toContain('left-front-1/0 right-front-1/0');
    expect(drafted.pieces.find(({ id }) => id === 'left-front-1')?.edges[0]?.mate).toBe('right-front-1/0');
  });

  it('that no draft can take makes the client unusable, at the field', async () => {
    const client = join(place, 'odd.json');
    writeFileSync(
      client,
      JSON.stringify({ name, unit: 'mm', measurements, sides: { leftShare: { waist: 0.9 } } }),
    );
    const ran = await runDraft(['--client', client, '--out', join(place, 'none')]);
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/sides\.leftShare\.waist/);
  });
});

describe('wedges of the right’s own in a style file', () => {
  const own = DEFAULT_STYLE.wedges.map((wedge) => ({ ...wedge, id: `right-${wedge.id}`, weight: 2 }));

  it('come back as they were written', () => {
    const style = { ...DEFAULT_STYLE, rightWedges: own };
    expect(readStyle(JSON.parse(writeStyle('Ferry', style)), 'file')).toEqual({
      ok: true,
      value: { title: 'Ferry', style },
    });
  });

  it('need ids of their own', () => {
    const read = readStyle({ rightWedges: DEFAULT_STYLE.wedges }, 'file');
    expect(read.ok ? [] : read.faults.map(({ path }) => path)).toContain('rightWedges.0.id');
    const none = readStyle({ rightWedges: 3 }, 'file');
    expect(none.ok ? [] : none.faults.map(({ path }) => path)).toContain('rightWedges');
  });
});
