import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { wornFile } from '../../src/cli/output/wornFile';
import { DEMO_CLIENT, NAMED_STYLES, writeStyle } from '../../src/document';
import { DEFAULT_STYLE, draft } from '../../src/engine';
import { drawBodies } from '../support/bodies/drawBodies';
import { TALL_CINCHER } from '../support/styles/tallCincher';
import { runDraft } from './runDraft';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'staywright-'));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

type Point = readonly [number, number, number];
type WornFile = ReturnType<typeof wornFile>;

/** Length of a closed ring's convex hull, by gift wrapping. */
function hullLength(points: readonly (readonly number[])[]): number {
  const [first] = [...points].sort((p, q) => (p[0] as number) - (q[0] as number));
  if (!first) return 0;
  let [length, at] = [0, first];
  do {
    let next = points[0] === at ? (points[1] ?? at) : (points[0] ?? at);
    for (const p of points) {
      const [ax, ay, nx, ny, px, py] = [...at, ...next, ...p] as [
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      if ((nx - ax) * (py - ay) - (ny - ay) * (px - ax) < 0) next = p;
    }
    length += Math.hypot(...next.map((value, i) => value - (at[i] as number)));
    at = next;
  } while (at !== first);
  return length;
}

/** A tape is read where the outline at a level is the two edges of the lacing, and not where top edge or hem cross it. */
function expectTapesOnCloth({ vertices, triangles, levels }: WornFile): void {
  const ways = new Set(
    (triangles as unknown as Point[]).flatMap(([a, b, c]) => [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`]),
  );
  const outline = [...ways]
    .filter((way) => !ways.has(way.split(' ').reverse().join(' ')))
    .map((way) => way.split(' ').map((at) => vertices[Number(at)] as [number, number, number]));
  for (const { name, y, tape } of levels) {
    const met = outline.filter(([from, to]) => (from?.[1] ?? 0) < y !== (to?.[1] ?? 0) < y);
    const atLacing = met.filter(([from]) => from && from[2] < 0 && Math.abs(from[0]) < 60);
    expect([name, tape !== null]).toEqual([name, met.length === 2 && atLacing.length === 2]);
  }
}

describe('--worn', () => {
  it('sews the garment and writes it with its body', async () => {
    const out = join(place, 'sewn');
    const ran = await runDraft(['--worn', '--style', 'under-bust', '--paper', 'roll', '--out', out]);
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out).toContain(join(out, 'worn.json'));
    const worn: WornFile = JSON.parse(readFileSync(join(out, 'worn.json'), 'utf8'));
    expect(Object.keys(worn)).toEqual([
      ...['unit', 'vertices', 'triangles', 'panelOf', 'flat', 'warpStrain', 'weftStrain', 'shear'],
      ...['standOff', 'contact', 'levels', 'scores', 'rest', 'body'],
    ]);
    expect(worn.rest).toMatchObject({ atRest: true });
    expect(worn.rest.residual).toBeLessThan(1e-3);
    const { vertices, triangles } = worn;
    for (const list of [worn.standOff, worn.contact]) expect(list).toHaveLength(vertices.length);
    for (const list of [worn.panelOf, worn.flat, worn.warpStrain, worn.weftStrain, worn.shear])
      expect(list).toHaveLength(triangles.length);

    const style = NAMED_STYLES.get('under-bust')?.style;
    if (!style) throw new Error('the style is there');
    const drafted = draft(DEMO_CLIENT.measurements, style);
    expect(new Set(worn.panelOf)).toEqual(new Set(drafted.pieces.map(({ id }) => id)));

    // Every edge but those of the outline has a triangle on both sides, which run opposite ways: all seams are closed.
    const ways = new Map<string, number>();
    for (const [a, b, c] of triangles as unknown as Point[])
      for (const way of [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`]) ways.set(way, (ways.get(way) ?? 0) + 1);
    expect(Math.max(...ways.values())).toBe(1);

    // The cloth on paper, all panels twice, is that of the pieces.
    const area = worn.flat.reduce((sum, corners) => {
      const [ax, ay, bx, by, cx, cy] = corners.flat() as [number, number, number, number, number, number];
      return sum + Math.abs((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
    }, 0);
    const cut = drafted.pieces.reduce((sum, { edges }) => {
      const ring = edges.flatMap(({ points }) => points.slice(0, -1));
      const twice = ring.reduce((all, { x, y }, i) => {
        const next = ring[(i + 1) % ring.length] ?? { x, y };
        return all + x * next.y - next.x * y;
      }, 0);
      return sum + Math.abs(twice) / 2;
    }, 0);
    expect(Math.abs(area / (2 * cut) - 1)).toBeLessThan(2e-3);

    // The lacing gap stands open at centre back.
    const back = vertices.filter(([, , z = 0]) => z < 0).map(([x = 0]) => Math.abs(x));
    expect(Math.min(...back)).toBeCloseTo(style.closure.lacingGap / 2, 6);

    for (const { level, points } of worn.body.sections) {
      const girth = DEMO_CLIENT.measurements[level];
      if (girth !== null) expect(Math.abs(hullLength(points) - girth)).toBeLessThan(0.1);
    }
    for (const { name, bodyGirth, garmentGirth, tape } of worn.levels) {
      expect(bodyGirth).toBeCloseTo(DEMO_CLIENT.measurements[name] ?? 0, 6);
      const target = drafted.proof.ledger.find(({ level }) => level === name)?.targetGirth ?? 0;
      expect(Math.abs(garmentGirth / target - 1)).toBeLessThan(0.02);
      if (tape !== null) expect(tape).toBeGreaterThan(garmentGirth);
    }
    expectTapesOnCloth(worn);
    expect(worn.scores).toMatchObject({ apex: null });
  });

  it('says what is not judged yet, and takes away what an earlier run made', async () => {
    const out = join(place, 'shouldered');
    // Its top edge crosses the under-bust line: no tape lies on cloth all the way there.
    const file = join(place, 'high-cincher.json');
    writeFileSync(file, writeStyle('High', TALL_CINCHER));
    await runDraft(['--worn', '--style', file, '--paper', 'roll', '--out', out]);
    const worn: WornFile = JSON.parse(readFileSync(join(out, 'worn.json'), 'utf8'));
    expectTapesOnCloth(worn);
    expect(worn.levels.map(({ tape }) => tape)).toContain(null);
    const ran = await runDraft(['--worn', '--style', 'princess-bodice', '--paper', 'roll', '--out', out]);
    expect(ran.err).toContain('note worn: Garments that hang from the shoulders are not judged yet');
    expect(existsSync(join(out, 'worn.json'))).toBe(false);
  });

  it('says what is not sewn on, and that a garment can lie in two ways', async () => {
    const client = join(place, 'two-ways.json');
    // One of those on whom a bodice that ends at the waist can lie in the hollow of the back or span it.
    const measurements = drawBodies(20, 1988)[9];
    writeFileSync(client, JSON.stringify({ name: 'Isla Quince', unit: 'mm', measurements }));
    const style = join(place, 'style.json');
    const bridal = NAMED_STYLES.get('bridal-bodice')?.style ?? DEFAULT_STYLE;
    writeFileSync(style, writeStyle('Bridal', { ...bridal, extras: { modesty: { overlap: 30 } } }));
    const out = join(place, 'two-ways');
    const ran = await runDraft([
      ...['--worn', '--style', style, '--client', client],
      ...['--paper', 'roll', '--out', out],
    ]);
    expect(ran.err).toMatch(/note worn: .* can come to rest in two ways\. .* up to \d\d mm away/);
    expect(ran.err).toMatch(/note worn: Not sewn on here: Back modesty panel\. A modesty panel lies loose/);
    const { rest, scores }: WornFile = JSON.parse(readFileSync(join(out, 'worn.json'), 'utf8'));
    expect(rest.other).toMatchObject({ part: 'back' });
    expect(rest.other?.apart).toBeGreaterThan(10);
    expect(scores).toHaveProperty('J');
  });

  it('writes both halves of a body that differs left to right', async () => {
    const client = join(place, 'client.json');
    const sides = { leftShare: { waist: 0.53 }, rightLower: {} };
    writeFileSync(
      client,
      JSON.stringify({ name: 'Isla Quince', unit: 'mm', measurements: DEMO_CLIENT.measurements, sides }),
    );
    const out = join(place, 'apart');
    const ran = await runDraft([
      ...['--worn', '--style', 'cincher', '--client', client],
      ...['--paper', 'roll', '--out', out],
    ]);
    expect(ran.code).toBe(0);
    const worn: WornFile = JSON.parse(readFileSync(join(out, 'worn.json'), 'utf8'));
    expect(Object.keys(worn.scores)).toEqual(['left', 'right']);
    const waist = worn.levels.find(({ name }) => name === 'waist')?.y ?? Number.NaN;
    const lefts = worn.vertices.flatMap(([x = 0, y = 0]) => (Math.abs(y - waist) < 15 ? [x] : []));
    expect(Math.max(...lefts)).toBeGreaterThan(-Math.min(...lefts) + 5);
  });

  it('does not go with --stdin', async () => {
    expect(await runDraft(['--stdin', '--worn'])).toMatchObject({ code: 2 });
  });
});
