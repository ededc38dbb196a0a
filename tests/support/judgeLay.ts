// What is wrong with a plan of a cloth, measured with code of its own and an independent polygon library, polygon-clipping.

import polygonClipping from 'polygon-clipping';
import type { Point } from '../../src/engine';
import type { LayPlan, Placed } from '../../src/paper/layPlan/plan';

/** Outlines that touch may seem to share so much, mm². */
const TOUCH_MM2 = 1e-6;
const EVEN_MM = 1e-5;

/** A sentence for each fault: overlaps, gaps that are too small, outlines past the cloth, grain, nap, fold and pairs. */
export function faultsOf({ placed, cloth, lengthMm, density }: LayPlan): string[] {
  const width = cloth.folded ? cloth.widthMm / 2 : cloth.widthMm;
  const named = ({ piece, copy }: Placed): string => `${piece.id} ${copy}`;
  const faults: string[] = [];
  for (const each of placed) {
    const [xs, ys] = [each.outline.map(({ x }) => x), each.outline.map(({ y }) => y)];
    if (Math.min(...xs) < -EVEN_MM || Math.max(...xs) > lengthMm + EVEN_MM)
      faults.push(`${named(each)} is past an end`);
    if (Math.min(...ys) < -EVEN_MM || Math.max(...ys) > width + EVEN_MM)
      faults.push(`${named(each)} is past an edge`);
    if (each.onFold && Math.abs(Math.min(...ys)) > EVEN_MM) faults.push(`${named(each)} is off the fold`);
    if (cloth.nap && Math.cos((each.turn * Math.PI) / 180) < 0.6)
      faults.push(`${named(each)} lies against the nap`);
  }
  for (const [i, a] of placed.entries())
    for (const b of placed.slice(i + 1)) {
      const shared = areaOfShared(a.outline, b.outline);
      if (shared > TOUCH_MM2) faults.push(`${named(a)} overlaps ${named(b)} by ${shared} mm²`);
      const apart = cloth.gapMm > 0 ? gapBetween(a.outline, b.outline) : Number.POSITIVE_INFINITY;
      if (apart < cloth.gapMm - EVEN_MM) faults.push(`${named(a)} is ${apart} mm from ${named(b)}`);
    }
  const used = placed.reduce((sum, { outline }) => sum + Math.abs(signed(outline)), 0) / (lengthMm * width);
  if (Math.abs(used - density) > 1e-9) faults.push(`density ${density} is ${used}`);
  return faults;
}

function areaOfShared(a: readonly Point[], b: readonly Point[]): number {
  const ring = (points: readonly Point[]): [number, number][] => points.map(({ x, y }) => [x, y]);
  const shared = polygonClipping.intersection([ring(a)], [ring(b)]);
  return shared.flat().reduce((sum, points) => sum + Math.abs(signed(points.map(([x, y]) => ({ x, y })))), 0);
}

/** The area inside a ring, positive one way round and negative the other. mm² */
export const signed = (ring: readonly Point[]): number =>
  ring.reduce((sum, { x, y }, i) => {
    const next = ring[(i + 1) % ring.length] as Point;
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);

function gapBetween(a: readonly Point[], b: readonly Point[]): number {
  const nearest = (points: readonly Point[], ring: readonly Point[]): number =>
    Math.min(
      ...points.map((point) =>
        Math.min(...ring.map((from, i) => toSide(point, from, ring[(i + 1) % ring.length] as Point))),
      ),
    );
  return Math.min(nearest(a, b), nearest(b, a));
}

function toSide(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const t = ((point.x - from.x) * dx + (point.y - from.y) * dy) / (dx * dx + dy * dy || 1);
  const along = Math.max(0, Math.min(1, t));
  return Math.hypot(point.x - from.x - along * dx, point.y - from.y - along * dy);
}
