import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PiecesFile } from '../../src/cli/output/piecesFile';
import { readFittings } from '../../src/document';
import { inches } from '../../src/engine';
import { runDraft } from './runDraft';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'staywright-'));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

const day = (alterations: unknown, more = {}) => ({
  unit: 'mm',
  fittings: [{ date: '2026-11-26', note: '', alterations, ...more }],
});
const WAIST = {
  kind: 'seam',
  seam: ['front-1', 'front-2'],
  side: 'both',
  at: [{ level: 'waist', a: 6.35, b: 6.35 }],
};

const faultsOf = (data: unknown): string[] => {
  const read = readFittings(data);
  return read.ok ? [] : read.faults.map(({ path }) => path);
};

async function drafted(
  file: unknown,
  out: string,
): Promise<{ pieces: PiecesFile; err: string; code: number | null }> {
  const path = join(place, `${out}.json`);
  writeFileSync(path, JSON.stringify(file));
  const ran = await runDraft(['--fittings', path, '--paper', 'roll', '--out', join(place, out)]);
  return {
    pieces: JSON.parse(readFileSync(join(place, out, 'pieces.json'), 'utf8')) as PiecesFile,
    err: ran.err,
    code: ran.code,
  };
}

describe('a file of fittings', () => {
  it('names seams, darts, places and heights as data', () => {
    const read = readFittings({
      unit: 'in',
      fittings: [
        {
          date: '2026-11-26',
          note: 'hollow of the back',
          alterations: [
            {
              kind: 'seam',
              seam: ['front-2', 'side'],
              at: [
                { belowWaist: '1 1/2', a: '1/4', b: 0 },
                { edge: 'hem', a: 0, b: '1/8' },
              ],
            },
            { kind: 'seam', seam: ['front-dart'], side: 'left', at: [{ level: 'waist', a: 0.5, b: 0.5 }] },
            {
              kind: 'length',
              between: ['underBust', 'waist'],
              at: [
                { place: 'centreBack', by: '1/2' },
                { place: ['front-3', 'back-3'], by: 0 },
              ],
            },
            { kind: 'edge', edge: 'top', at: [{ place: 'bustLine', by: -0.25 }], on: false },
            { kind: 'bustPoint', out: 0.5 },
          ],
        },
      ],
    });
    expect(read.ok && read.value).toEqual([
      {
        date: '2026-11-26',
        note: 'hollow of the back',
        on: true,
        alterations: [
          {
            kind: 'seam',
            seam: {
              kind: 'seam',
              pieces: [{ kind: 'panel', block: 'front', number: 2 }, { kind: 'sidePanel' }],
            },
            side: 'both',
            at: [
              { height: { kind: 'belowWaist', mm: inches(1.5) }, a: inches(0.25), b: 0 },
              { height: { kind: 'end', end: 'hem' }, a: 0, b: inches(0.125) },
            ],
            on: true,
          },
          {
            kind: 'seam',
            seam: { kind: 'dart', wedge: 'front-dart' },
            side: 'left',
            at: [{ height: { kind: 'level', level: 'waist' }, a: inches(0.5), b: inches(0.5) }],
            on: true,
          },
          {
            kind: 'length',
            between: ['underBust', 'waist'],
            side: 'both',
            at: [
              { place: { kind: 'landmark', name: 'centreBack' }, by: inches(0.5) },
              {
                place: {
                  kind: 'seam',
                  pieces: [
                    { kind: 'panel', block: 'front', number: 3 },
                    { kind: 'panel', block: 'back', number: 3 },
                  ],
                },
                by: 0,
              },
            ],
            on: true,
          },
          {
            kind: 'edge',
            edge: 'top',
            side: 'both',
            at: [{ place: { kind: 'landmark', name: 'bustLine' }, by: inches(-0.25) }],
            on: false,
          },
          { kind: 'bustPoint', side: 'both', out: inches(0.5), down: 0, on: true },
        ],
      },
    ]);
  });

  it.each<[string, unknown, string]>([
    ['no object', [], ''],
    ['another unit', { unit: 'cm', fittings: [] }, 'unit'],
    ['no list', { fittings: {} }, 'fittings'],
    ['no fittings', {}, 'fittings'],
    ['a day that is none', { fittings: [{ date: '2026-02-30', alterations: [] }] }, 'fittings.0.date'],
    ['a kind that is none', day([{ kind: 'seem' }]), 'fittings.0.alterations.0.kind'],
    ['a field of another kind', day([{ ...WAIST, edge: 'top' }]), 'fittings.0.alterations.0.edge'],
    ['half a seam', day([{ ...WAIST, seam: ['front-1', 'front'] }]), 'fittings.0.alterations.0.seam'],
    ['no height', day([{ ...WAIST, at: [] }]), 'fittings.0.alterations.0.at'],
    [
      'two heights in one',
      day([{ ...WAIST, at: [{ level: 'waist', belowWaist: 1, a: 1, b: 1 }] }]),
      'fittings.0.alterations.0.at.0',
    ],
    [
      'an edge at which no seam ends',
      day([{ ...WAIST, at: [{ edge: 'neckline', a: 1, b: 1 }] }]),
      'fittings.0.alterations.0.at.0.edge',
    ],
    [
      'one edge alone',
      day([{ ...WAIST, at: [{ level: 'waist', a: 1 }] }]),
      'fittings.0.alterations.0.at.0.b',
    ],
    [
      'text for mm',
      day([{ ...WAIST, at: [{ level: 'waist', a: '1/4', b: 1 }] }]),
      'fittings.0.alterations.0.at.0.a',
    ],
    [
      'an amount out of span',
      day([{ ...WAIST, at: [{ level: 'waist', a: 1, b: 1e4 }] }]),
      'fittings.0.alterations.0.at.0.b',
    ],
    [
      'levels upside down',
      day([
        {
          kind: 'length',
          between: ['waist', 'bust'],
          at: [
            { place: 'side', by: 1 },
            { place: 'centreBack', by: 1 },
          ],
        },
      ]),
      'fittings.0.alterations.0.between',
    ],
    [
      'one place for a length',
      day([{ kind: 'length', between: ['bust', 'waist'], at: [{ place: 'side', by: 1 }] }]),
      'fittings.0.alterations.0.at',
    ],
    [
      'a place that is none',
      day([{ kind: 'edge', edge: 'top', at: [{ place: 'armpit', by: 1 }] }]),
      'fittings.0.alterations.0.at.0.place',
    ],
  ])('%s is a fault at its field', (_, data, path) => {
    expect(faultsOf(data)).toEqual([path]);
  });
});

describe('--fittings', () => {
  it('alters the draft and says in pieces.json by how much', async () => {
    const gone = { ...WAIST, seam: ['front-8', 'front-9'] };
    const { pieces, err, code } = await drafted(day([WAIST, gone, { ...WAIST, on: false }]), 'altered');
    expect(code).toBe(0);
    expect(pieces.alterations).toEqual([
      { fitting: 0, alteration: 0, applied: true, code: null },
      { fitting: 0, alteration: 1, applied: false, code: 'seamGone' },
      { fitting: 0, alteration: 2, applied: false, code: 'switchedOff' },
    ]);
    for (const { name, targetGirth, sewnGirth, alteredBy } of pieces.levels) {
      expect(alteredBy, name).toBeCloseTo(name === 'waist' ? -25.4 : 0, 6);
      expect(Math.abs(sewnGirth - targetGirth - (alteredBy ?? 0)), name).toBeLessThanOrEqual(0.1);
    }
    expect(err).toContain('warn fittings.0.alterations.1: ');
  });

  it('leaves pieces.json as it was where no file is named', async () => {
    const out = join(place, 'plain');
    await runDraft(['--paper', 'roll', '--out', out]);
    const pieces = JSON.parse(readFileSync(join(out, 'pieces.json'), 'utf8')) as PiecesFile;
    expect(pieces.alterations).toBeUndefined();
    expect(pieces.levels.every((level) => !('alteredBy' in level))).toBe(true);
  });

  it('ends with 2 and the path of the field where the file cannot be used', async () => {
    const path = join(place, 'bad.json');
    writeFileSync(path, JSON.stringify(day([{ kind: 'seem' }])));
    const ran = await runDraft(['--fittings', path, '--out', join(place, 'bad')]);
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/^fittings\.0\.alterations\.0\.kind: /);
    expect((await runDraft(['--fittings', join(place, 'none.json')])).code).toBe(2);
    expect((await runDraft(['--stdin', '--fittings', path])).code).toBe(2);
  });
});
