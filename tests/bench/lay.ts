// How densely the lay plan packs: `npm run bench -- lay FILE…`, files of { name, stripWidth, items: [{ polygon, quantity,
// rotations }] } with rotations in degrees. Prints `name density seconds overlap` of each; `--seconds S` (10), `--seed N` (1), and
// with `--out DIR` the placements in the shape of lay.json.

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import polygonClipping from 'polygon-clipping';
import type { Point } from '../../src/engine';
import { layShape } from '../../src/paper/cloth/pairs/layShape';
import { rowsAcross } from '../../src/paper/cloth/rowsAcross';
import { searchLay } from '../../src/paper/cloth/search';
import { type Place, type Strip, type StripItem, strip } from '../../src/paper/cloth/strip';
import { signed } from '../support/judges/judgeLay';

interface Instance {
  readonly name: string;
  readonly stripWidth: number;
  readonly items: readonly {
    readonly polygon: readonly (readonly [number, number])[];
    readonly quantity: number;
    readonly rotations: readonly number[];
  }[];
}

/** Rows across the strip at least. */
const ROWS = 200;

export function benchLay(words: readonly string[], say: (line: string) => unknown): void {
  const given = [...words];
  const option = (name: string, usual: string): string => {
    const at = given.indexOf(`--${name}`);
    return at < 0 ? usual : (given.splice(at, 2)[1] ?? usual);
  };
  const [seconds, seed, out] = [
    Number(option('seconds', '10')),
    Number(option('seed', '1')),
    option('out', ''),
  ];
  const densities = given.map((file) => {
    const instance: Instance = JSON.parse(readFileSync(file, 'utf8'));
    const start = performance.now();
    const { laid, turns, numbers } = stripOf(instance);
    const search = searchLay(laid, seed);
    while (performance.now() - start < seconds * 1000) search.step();
    const took = (performance.now() - start) / 1000;
    const { places } = search.best();
    const rings = places.map((place) => ringAt(laid, place));
    const length = Math.max(...rings.flat().map(({ x }) => x));
    const area = rings.reduce((sum, ring) => sum + Math.abs(signed(ring)), 0);
    const density = area / (length * instance.stripWidth);
    say(`${instance.name} ${(100 * density).toFixed(2)} ${took.toFixed(1)} ${overlapOf(rings).toFixed(6)}`);
    if (out !== '') {
      mkdirSync(out, { recursive: true });
      const placed = rings.map((ring, i) => ({
        ...numbers[i],
        mirrored: false,
        turn: turns[places[i]?.shape ?? 0],
        outline: ring.map(({ x, y }) => [x, y]),
      }));
      const file = { unit: 'mm', width: instance.stripWidth, length, density, layers: 1, placed };
      writeFileSync(join(out, `${instance.name}.json`), `${JSON.stringify(file)}\n`);
    }
    return density;
  });
  const mean = densities.reduce((sum, density) => sum + density, 0) / densities.length;
  if (densities.length > 1) say(`mean ${(100 * mean).toFixed(2)}`);
}

function stripOf({ items, stripWidth }: Instance) {
  const shapes: ReturnType<typeof layShape>[] = [];
  const turns: number[] = [];
  const numbers: { readonly piece: string; readonly copy: number }[] = [];
  const laid = items.flatMap(({ polygon, quantity, rotations }, n): StripItem[] => {
    const ways = rotations.flatMap((turn) => {
      const shape = layShape(polygon.map((point) => turned(point, turn)));
      if (shape.width > stripWidth + 1e-9) return [];
      shapes.push(shape);
      turns.push(turn);
      return [shapes.length - 1];
    });
    return Array.from({ length: quantity }, (_, i) => {
      numbers.push({ piece: String(n + 1), copy: i + 1 });
      return { ways, row: null };
    });
  });
  return { laid: strip(shapes, laid, stripWidth, rowsAcross(shapes, stripWidth, ROWS)), turns, numbers };
}

/** Right angles are exact. */
function turned([x, y]: readonly [number, number], degrees: number): Point {
  const [cos, sin] = [Math.cos, Math.sin].map(
    (of) => Math.round(of((degrees * Math.PI) / 180) * 1e12) / 1e12,
  ) as [number, number];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

const ringAt = ({ shapes, rowHeight }: Strip, { shape, row, x }: Place): Point[] =>
  (shapes[shape]?.outline ?? []).map((point) => ({ x: point.x + x, y: point.y + row * rowHeight }));

/** The area that any two rings share, by polygon-clipping. */
function overlapOf(rings: readonly (readonly Point[])[]): number {
  const drawn = rings.map((ring) => [ring.map(({ x, y }): [number, number] => [x, y])]);
  let overlap = 0;
  for (const [i, a] of drawn.entries())
    for (const b of drawn.slice(i + 1))
      for (const ring of polygonClipping.intersection(a, b).flat())
        overlap += Math.abs(signed(ring.map(([x, y]) => ({ x, y }))));
  return overlap;
}
