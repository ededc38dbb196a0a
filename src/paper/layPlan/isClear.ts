// Whether a plan can be cut: no outline over another, the gap kept, all on the cloth. Checked on the outlines as they are cut.

import { distanceToChord, isInside, type Point } from '../../engine';
import { type Box, boxAround } from '../geometry/box';
import { laidWidth } from './cloth';
import type { LayPlan } from './plan';

/** Lengths that differ by less are even. mm */
const EVEN_MM = 1e-6;

/** True where all outlines lie on the cloth, none over another, and any two at least the gap apart. */
export function isClear({ placed, cloth, lengthMm }: LayPlan): boolean {
  const rings = placed.map(({ outline }) => ({ outline, box: boxAround(outline) as Box }));
  const width = laidWidth(cloth);
  const isOn = ({ left, top, right, bottom }: Box): boolean =>
    left >= -EVEN_MM && top >= -EVEN_MM && right <= lengthMm + EVEN_MM && bottom <= width + EVEN_MM;
  return rings.every(
    (a, i) => isOn(a.box) && rings.slice(i + 1).every((b) => areApart(a, b, cloth.gapMm - EVEN_MM)),
  );
}

interface Ring {
  readonly outline: readonly Point[];
  readonly box: Box;
}

function areApart(a: Ring, b: Ring, gap: number): boolean {
  const reach = Math.max(gap, 0);
  if (!areNear(a.box, b.box, reach)) return true;
  const [first, second] = [chordsNear(a.outline, b.box, reach), chordsNear(b.outline, a.box, reach)];
  for (const one of first)
    for (const other of second) {
      if (!areNear(one.box, other.box, reach)) continue;
      if (cross(one, other) || (gap > 0 && chordDistance(one, other) < gap)) return false;
    }
  return !holds(a, b) && !holds(b, a);
}

interface Chord {
  readonly from: Point;
  readonly to: Point;
  readonly box: Box;
}

function chordsNear(ring: readonly Point[], box: Box, reach: number): Chord[] {
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length] as Point;
    const own = boxAround([from, to]) as Box;
    return areNear(own, box, reach) ? [{ from, to, box: own }] : [];
  });
}

const areNear = (a: Box, b: Box, reach: number): boolean =>
  a.left <= b.right + reach &&
  b.left <= a.right + reach &&
  a.top <= b.bottom + reach &&
  b.top <= a.bottom + reach;

/** Twice the signed area of a triangle, mm². */
const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Whether two chords cross inside both. */
function cross({ from: a, to: b }: Chord, { from: c, to: d }: Chord): boolean {
  const [p, q, r, s] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  const isApart = (one: number, other: number): boolean => (one > 0 && other < 0) || (one < 0 && other > 0);
  return isApart(p, q) && isApart(r, s);
}

const chordDistance = (one: Chord, other: Chord): number =>
  Math.min(
    distanceToChord(one.from, one.to, other.from),
    distanceToChord(one.from, one.to, other.to),
    distanceToChord(other.from, other.to, one.from),
    distanceToChord(other.from, other.to, one.to),
  );

/** Whether one ring holds a corner of another: chords that only meet at corners do not cross. */
const holds = ({ outline, box }: Ring, inner: Ring): boolean =>
  inner.outline.some(
    (point) =>
      point.x > box.left &&
      point.x < box.right &&
      point.y > box.top &&
      point.y < box.bottom &&
      isInside(outline, point) &&
      depthIn(outline, point) > EVEN_MM,
  );

const depthIn = (ring: readonly Point[], point: Point): number =>
  Math.min(...ring.map((from, i) => distanceToChord(from, ring[(i + 1) % ring.length] as Point, point)));
