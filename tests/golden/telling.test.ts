// Every ready style on telling bodies: held against the outlines that were looked at and kept, and judged as a cutter would.

import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import { type Draft, draft, inches } from '../../src/engine';
import { TELLING_BODIES } from '../support/bodies/tellingBodies';
import { bendsOf, bluntness, cornerAtTop, lean, offEvenStroke } from '../support/judges/cutter';
import { inSideSeam } from '../support/styles/sideDart';
import { apart, linesOf, OUTLINE_MM, outlinePage, readPage } from './outlines';

const UPDATING = process.env.UPDATE_GOLDEN === '1';

const SIDE_DART = 'Darted bodice to the waist, bust dart in the side seam';
const STYLES = new Map([
  ...NAMED_STYLES,
  ['darted-bodice-side-dart', { title: SIDE_DART, style: inSideSeam() }] as const,
]);

/** Numbers on a page are tenths of a mm, and its lines leave out points: two lines that are one lie no farther apart. mm */
const SAME_MM = OUTLINE_MM + 0.1;

/** What a cutter would redraw. mm */
const REDRAWN_MM = 5;

const DRAFTS = new Map(
  [...STYLES].map(([name, { style }]) => [
    name,
    TELLING_BODIES.map(([body, measurements]) => [body, draft(measurements, style)] as const),
  ]),
);
const draftsOf = (style: string): readonly (readonly [string, Draft])[] => DRAFTS.get(style) ?? [];

const FOLDER = new URL('telling/', import.meta.url);
const fileOf = (style: string): URL => new URL(`${style}.svg`, FOLDER);

describe.each([...STYLES].map(([name, { title }]) => ({ name, title })))('$name', ({ name, title }) => {
  it('is drawn as it was looked at', () => {
    if (UPDATING) {
      mkdirSync(FOLDER, { recursive: true });
      writeFileSync(fileOf(name), outlinePage(`${title}, on telling bodies`, draftsOf(name)));
    }
    expect(existsSync(fileOf(name)), 'kept by npm run golden:update').toBe(true);
    const kept = readPage(readFileSync(fileOf(name), 'utf8'));
    expect([...kept.keys()]).toEqual(TELLING_BODIES.map(([body]) => body));
    for (const [body, drafted] of draftsOf(name)) {
      const [lines, others] = [linesOf(drafted), kept.get(body) ?? []];
      expect(others.map((line) => line.name).sort()).toEqual(lines.map((line) => line.name).sort());
      for (const line of lines) {
        const other = others.find((each) => each.name === line.name);
        expect(apart(line.points, other?.points ?? []), `${body}, ${line.name}`).toBeLessThan(SAME_MM);
      }
    }
  });

  it('has every piece on every body', () => {
    for (const [body, { pieces, issues }] of draftsOf(name)) {
      expect(
        issues.filter(({ severity }) => severity === 'error'),
        body,
      ).toEqual([]);
      expect(pieces.length, body).toBeGreaterThan(1);
    }
  });

  it('has nothing that a cutter would redraw by more than 5 mm', () => {
    for (const [body, drafted] of draftsOf(name)) {
      expect(lean(drafted), `${body}: darts lean`).toBeLessThan(REDRAWN_MM);
      expect(offEvenStroke(drafted), `${body}: off an even stroke`).toBeLessThan(REDRAWN_MM);
    }
  });
});

/**
 * Least radius of each kind of edge, mm. These stand a little under the shortest bend on these bodies as they are drafted, so that a
 * change that bends an edge shorter is seen; they have no source, and below 15 mm a draft itself says that it cannot be sewn.
 */
const LEAST_RADIUS_MM = { seam: 22, top: 18, armhole: 20, hem: 45, centre: 70, shoulder: 1e6 } as const;

/** Her bust stands out by a quarter of a metre from ribs to tape within 76 mm, and goes in again within 25. */
const SHARPEST = 'slim ribs under a full bust';

/** Edges that go one way: how far they may bow back, mm, set like the radii. Seams go in at the waist, and with a bust in again above it. */
const AGAINST_MM = { top: REDRAWN_MM, armhole: 0.5, hem: 1.5, centre: REDRAWN_MM, shoulder: 0.1 } as const;

describe('edges', () => {
  it.each([...STYLES.keys()])('%s: turn no shorter than cloth can, and bow one way', (style) => {
    for (const [body, drafted] of draftsOf(style))
      for (const { edge, role, radius, against } of bendsOf(drafted)) {
        const least = role === 'seam' && body === SHARPEST ? 16 : LEAST_RADIUS_MM[role];
        expect(radius, `${body}: radius of ${edge}`).toBeGreaterThan(least);
        if (role !== 'seam')
          expect(against, `${body}: bow of ${edge} to its other side`).toBeLessThan(AGAINST_MM[role]);
      }
  });
});

describe('darts', () => {
  // A tape of 1085 over one of 775 within 76 mm: what two darts beside each other have to take there opens them by so much.
  it.each(['princess-bodice', 'darted-bodice', 'basque-bodice'])('%s: come to slim points', (style) => {
    for (const [body, drafted] of draftsOf(style)) {
      const most = body === 'slim ribs under a full bust' ? 55 : 50;
      expect(bluntness(drafted), body).toBeLessThan(most);
    }
    // On these bodies no dart has to take so much.
    const usual = draftsOf(style).filter(([body]) => !/full|tall/.test(body));
    for (const [body, drafted] of usual) expect(bluntness(drafted), body).toBeLessThan(37);
  });
});

describe('a top edge below the bust', () => {
  it.each([
    ['cincher', -inches(0.25)],
    ['under-bust', inches(1 / 16)],
  ])('%s: lies at its distance from the under-bust line on every body', (style, above) => {
    for (const [body, { pieces, levels }] of draftsOf(style)) {
      const line = levels.find(({ name }) => name === 'underBust')?.y ?? Number.NaN;
      const top = pieces
        .find(({ block, number }) => block === 'front' && number === 1)
        ?.edges.find(({ at }) => at === 'top');
      const centre = top?.points.at(-1);
      expect(line - (centre?.y ?? Number.NaN), body).toBeCloseTo(above, 1);
    }
  });
});

describe('the off-shoulder band', () => {
  it('ends under the arm in a corner that can be turned out', () => {
    for (const [body, drafted] of draftsOf('off-shoulder-bridal')) {
      const corners = cornerAtTop(drafted);
      expect(corners, body).toHaveLength(2);
      for (const corner of corners) expect(corner, body).toBeGreaterThan(35);
    }
  });
});

describe('the armhole of an off-shoulder band', () => {
  it('is one hollow without a short turn, on wide bodies too', () => {
    const drafted = draftsOf('off-shoulder-bridal');
    const armholes = drafted.flatMap(([body, each]) =>
      bendsOf({ ...each, pieces: [] }).flatMap((bend) =>
        bend.role === 'armhole' ? [{ body, ...bend }] : [],
      ),
    );
    expect(armholes).toHaveLength(2 * drafted.length);
    for (const { body, edge, radius, against } of armholes) {
      expect(radius, `${body}, ${edge}`).toBeGreaterThan(55);
      expect(against, `${body}, ${edge}`).toBeLessThan(0.5);
    }
  });
});

it('no outlines are kept of a style that there is not, and all together are small', () => {
  const files = (): string[] => readdirSync(FOLDER).filter((file) => file.endsWith('.svg'));
  if (UPDATING) for (const file of files()) if (!STYLES.has(file.slice(0, -4))) rmSync(new URL(file, FOLDER));
  expect(files().filter((file) => !STYLES.has(file.slice(0, -4)))).toEqual([]);
  const bytes = files().reduce((sum, file) => sum + readFileSync(new URL(file, FOLDER)).length, 0);
  expect(bytes).toBeLessThan(400_000);
});

it('two lines are told apart', () => {
  const row = [0, 10, 20].map((x) => ({ x, y: 0 }));
  expect(apart(row, row.slice(0, 1).concat(row.slice(2)))).toBe(0);
  expect(apart(row, [...row.slice(0, 2), { x: 20, y: 0.5 }])).toBeCloseTo(0.5, 2);
  expect(apart(row.slice(0, 2), row)).toBe(10);
});
