// What is wrong with a plan of a cloth, measured with code of its own and an independent polygon library, polygon-clipping.

import polygonClipping from 'polygon-clipping';
import type { Point } from '../../../src/engine';
import type { LayPlan, Placed } from '../../../src/paper/layPlan/plan';

/** Outlines that touch may seem to share so much, mm². */
const TOUCH_MM2 = 1e-6;
const EVEN_MM = 1e-5;

/** A sentence for each fault: overlaps, gaps that are too small, outlines past the cloth, grain, nap, fold and pairs. */
export function faultsOf({ placed, cloth, lengthMm, density }: LayPlan): string[] {
  const width = cloth.folded ? cloth.widthMm / 2 : cloth.widthMm;
  const named = ({ piece, copy }: Placed): string => `${piece.id} ${copy}`;
  const faults: string[] = [];
  for (const each of placed) {
    const [left, right, bottom, top] = boxOf(each.outline);
    if (left < -EVEN_MM || right > lengthMm + EVEN_MM) faults.push(`${named(each)} is past an end`);
    if (bottom < -EVEN_MM || top > width + EVEN_MM) faults.push(`${named(each)} is past an edge`);
    if (each.onFold && Math.abs(bottom) > EVEN_MM) faults.push(`${named(each)} is off the fold`);
    if (cloth.nap && Math.cos((each.turn * Math.PI) / 180) < 0.6)
      faults.push(`${named(each)} lies against the nap`);
  }
  const boxes = placed.map(({ outline }) => boxOf(outline));
  for (const [i, a] of placed.entries())
    for (const [j, b] of placed.entries()) {
      if (j <= i) continue;
      // Outlines whose boxes are farther apart than the gap are farther apart themselves.
      if (apartBy(boxes[i] as Box, boxes[j] as Box) > cloth.gapMm + EVEN_MM) continue;
      const shared = areaOfShared(a.outline, b.outline);
      if (shared > TOUCH_MM2) faults.push(`${named(a)} overlaps ${named(b)} by ${shared} mm²`);
      const apart = cloth.gapMm > 0 ? gapBetween(a, b, cloth.gapMm + EVEN_MM) : Number.POSITIVE_INFINITY;
      if (apart < cloth.gapMm - EVEN_MM) faults.push(`${named(a)} is ${apart} mm from ${named(b)}`);
    }
  const used = placed.reduce((sum, { outline }) => sum + Math.abs(signed(outline)), 0) / (lengthMm * width);
  if (Math.abs(used - density) > 1e-9) faults.push(`density ${density} is ${used}`);
  return faults;
}

/** The least and greatest x and y of an outline, mm. */
type Box = readonly [number, number, number, number];

function boxOf(outline: readonly Point[]): Box {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}

/** How far two boxes are apart along the axis along which they are farther apart; negative where they share an area. mm */
const apartBy = (a: Box, b: Box): number => Math.max(b[0] - a[1], a[0] - b[1], b[2] - a[3], a[2] - b[3]);

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

/** The least distance between two outlines, mm; infinite where it is more than `most`. */
function gapBetween(a: Placed, b: Placed, most: number): number {
  const nearest = (points: readonly Point[], ring: readonly Point[]): number => {
    const [left, right, bottom, top] = boxOf(ring);
    // Points that are farther from its box are farther from the ring.
    const near = points.filter(
      ({ x, y }) => x > left - most && x < right + most && y > bottom - most && y < top + most,
    );
    return Math.min(
      Number.POSITIVE_INFINITY,
      ...near.map((point) =>
        Math.min(...ring.map((from, i) => toSide(point, from, ring[(i + 1) % ring.length] as Point))),
      ),
    );
  };
  return Math.min(nearest(a.outline, b.outline), nearest(b.outline, a.outline));
}

function toSide(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const t = ((point.x - from.x) * dx + (point.y - from.y) * dy) / (dx * dx + dy * dy || 1);
  const along = Math.max(0, Math.min(1, t));
  return Math.hypot(point.x - from.x - along * dx, point.y - from.y - along * dy);
}
