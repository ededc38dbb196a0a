// The plan of one cloth: where each outline lies, found by a search that is stopped when enough time has gone by.

import type { Point } from '../../engine';
import { layShape } from '../cloth/layShape';
import { roomsAround } from '../cloth/roomsAround';
import { type Search, searchLay } from '../cloth/search';
import { type StripItem, strip } from '../cloth/strip';
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

/** Rows across the cloth. */
const ROWS = 360;

/** Starts to lay pieces on a cloth, with a plan at once. The same pieces, cloth, seed and number of steps come to the same plan. */
export function startLay(asked: readonly PieceToLay[], cloth: Cloth, seed: number): LayStart {
  const copies = copiesOn(asked, cloth);
  const numbers = new Map(asked.map(({ piece }, i) => [piece, i]));
  const width = laidWidth(cloth);
  const clear = cloth.gapMm / 2;
  const roomOf = roomsAround(clear);
  const faults: LayFault[] = [];
  const shapes: { readonly way: Way; readonly shape: ReturnType<typeof layShape> }[] = [];
  const known = new Map<string, readonly number[]>();
  const items = copies.map((copy): StripItem => {
    const key = JSON.stringify([numbers.get(copy.piece), copy.bias, copy.sides, copy.onFold]);
    const found = known.get(key);
    if (found) return { ways: found, row: copy.onFold ? 0 : null };
    const ways = waysOf(copy, cloth);
    const fitting = ways.filter(({ ring }) => widthOf(ring) <= width + EVEN_MM);
    const [first] = fitting;
    if (!first && !faults.some(({ piece }) => piece === copy.piece)) faults.push(faultOf(copy, ways));
    const indices = fitting.map((way) => {
      shapes.push({ way, shape: layShape(roomOf(way.ring)) });
      return shapes.length - 1;
    });
    known.set(key, indices);
    return { ways: indices, row: copy.onFold ? 0 : null };
  });
  if (faults.length > 0) return { ok: false, faults };
  // Half of the gap around each piece may lie past the edges of the cloth.
  const laid = strip(
    shapes.map(({ shape }) => shape),
    items,
    width + 2 * clear + EVEN_MM,
    (width + 2 * clear + EVEN_MM) / ROWS,
  );
  return { ok: true, work: workOn(searchLay(laid, seed), copies, shapes, cloth, laid.rowHeight) };
}

/** A piece that is wider than the cloth by less lies on it. mm */
const EVEN_MM = 1e-6;

const widthOf = (ring: readonly Point[]): number => Math.max(...ring.map(({ y }) => y));

function faultOf({ piece, bias }: Copy, ways: readonly Way[]): LayFault {
  if (ways.length === 0) return { code: bias ? 'foldOnBias' : 'foldAcrossGrain', piece };
  return { code: 'widerThanCloth', piece, needsMm: Math.min(...ways.map(({ ring }) => widthOf(ring))) };
}

function workOn(
  search: Search,
  copies: readonly Copy[],
  shapes: readonly { readonly way: Way }[],
  cloth: Cloth,
  rowHeight: number,
): LayWork {
  let shown = search.best();
  const planOf = ({ places }: typeof shown): LayPlan =>
    planFrom(
      cloth,
      copies.map((copy, i) => {
        const { shape, row, x } = places[i] ?? { shape: 0, row: 0, x: 0 };
        const { way } = shapes[shape] as { readonly way: Way };
        return { copy, way, at: { x, y: row * rowHeight } };
      }),
    );
  let plan = planOf(shown);
  return {
    step: search.step,
    best: () => {
      const next = search.best();
      if (next === shown) return plan;
      shown = next;
      const found = planOf(next);
      if (isClear(found)) plan = found;
      return plan;
    },
  };
}
