// The plan of one cloth: where each outline lies, found by a search that is stopped when enough time has gone by.

import type { Point } from '../../engine';
import { type BoxToLay, layBoxes } from '../cloth/layBoxes';
import { layShape } from '../cloth/pairs/layShape';
import { roomsAround } from '../cloth/roomsAround';
import { rowsAcross } from '../cloth/rowsAcross';
import { type Search, searchLay } from '../cloth/search';
import { type Strip, type StripItem, shapeOf, strip } from '../cloth/strip';
import { type Cloth, laidWidth } from './cloth';
import { type Copy, copiesOn, type PieceToLay, type Way, waysOf } from './copies';
import { isClear } from './isClear';
import type { LayFault, LayPlan } from './plan';
import { planFrom } from './planFrom';

/** A lay that is being searched for. */
interface LayWork {
  /** Goes one step on, some milliseconds. */
  readonly step: () => void;
  /** The shortest plan so far. A new object for each that is shorter. */
  readonly best: () => LayPlan;
}

export type LayStart =
  | { readonly ok: true; readonly work: LayWork }
  | { readonly ok: false; readonly faults: readonly LayFault[] };

/** Rows across the cloth at least. */
const ROWS = 240;

/**
 * Starts to lay pieces on a cloth, with a plan at once: their boxes in columns. The first step makes ready for the search, which takes
 * longer than others. The same pieces, cloth, seed and number of steps come to the same plan.
 */
export function startLay(asked: readonly PieceToLay[], cloth: Cloth, seed: number): LayStart {
  const copies = copiesOn(asked, cloth);
  const numbers = new Map(asked.map(({ piece }, i) => [piece, i]));
  const width = laidWidth(cloth);
  const faults: LayFault[] = [];
  const ways: Way[] = [];
  const known = new Map<string, readonly number[]>();
  const items = copies.map((copy): StripItem => {
    const key = JSON.stringify([numbers.get(copy.piece), copy.bias, copy.sides, copy.onFold]);
    const found = known.get(key);
    if (found) return { ways: found, row: copy.onFold ? 0 : null };
    const all = waysOf(copy, cloth);
    const fitting = all.filter(({ ring }) => widthOf(ring) <= width + EVEN_MM);
    const [first] = fitting;
    if (!first && !faults.some(({ piece }) => piece === copy.piece)) faults.push(faultOf(copy, all));
    const indices = fitting.map((way) => ways.push(way) - 1);
    known.set(key, indices);
    return { ways: indices, row: copy.onFold ? 0 : null };
  });
  if (faults.length > 0) return { ok: false, faults };
  const laid: Laid = { copies, items, ways, cloth };
  return { ok: true, work: workOn(boxesPlan(laid), laid, seed) };
}

/** What is laid: copies with their items, the ways that these may lie in, and on what. */
interface Laid {
  readonly copies: readonly Copy[];
  readonly items: readonly StripItem[];
  readonly ways: readonly Way[];
  readonly cloth: Cloth;
}

/** The plan of the boxes in columns, each piece in the first way it may lie. */
function boxesPlan({ copies, items, ways, cloth }: Laid): LayPlan {
  const chosen = items.map((item) => ways[item.ways[0] ?? 0] as Way);
  const boxes = chosen.map(({ ring }, i): BoxToLay => {
    const length = Math.max(...ring.map(({ x }) => x));
    return { length, width: widthOf(ring), onFold: copies[i]?.onFold === true };
  });
  const places = layBoxes(boxes, laidWidth(cloth) + EVEN_MM, cloth.gapMm);
  return planFrom(
    cloth,
    copies.map((copy, i) => ({ copy, way: chosen[i] as Way, at: places[i] as Point })),
  );
}

/** The strip of the rooms that the outlines need. Half of the gap around each piece may lie past the edges of the cloth. */
function stripOf({ items, ways, cloth }: Laid): Strip {
  const clear = cloth.gapMm / 2;
  const roomOf = roomsAround(clear);
  const across = laidWidth(cloth) + 2 * clear + EVEN_MM;
  const shapes = ways.map(({ ring }) => layShape(roomOf(ring)));
  return strip(shapes, items, across, rowsAcross(shapes, across, ROWS));
}

/** A piece that is wider than the cloth by less lies on it. mm */
const EVEN_MM = 1e-6;

const widthOf = (ring: readonly Point[]): number => Math.max(...ring.map(({ y }) => y));

function faultOf({ piece, bias }: Copy, ways: readonly Way[]): LayFault {
  if (ways.length === 0) return { code: bias ? 'foldOnBias' : 'foldAcrossGrain', piece };
  return { code: 'widerThanCloth', piece, needsMm: Math.min(...ways.map(({ ring }) => widthOf(ring))) };
}

function workOn(first: LayPlan, laid: Laid, seed: number): LayWork {
  const { copies, ways, cloth } = laid;
  let plan = first;
  let running: { readonly search: Search; readonly on: Strip } | null = null;
  let shown: ReturnType<Search['best']> | null = null;
  return {
    step: () => {
      if (running) {
        running.search.step();
        return;
      }
      const on = stripOf(laid);
      running = { search: searchLay(on, seed), on };
    },
    best: () => {
      const next = running?.search.best() ?? null;
      if (!running || !next || next === shown) return plan;
      shown = next;
      const { on } = running;
      const found = planFrom(
        cloth,
        copies.map((copy, i) => {
          const { shape, row, x } = next.places[i] ?? { shape: 0, row: 0, x: 0 };
          return {
            copy,
            way: ways[shape] as Way,
            at: { x, y: row * on.rowHeight + shapeOf(on, shape).inset },
          };
        }),
      );
      if (found.lengthMm < plan.lengthMm && isClear(found)) plan = found;
      return plan;
    },
  };
}
