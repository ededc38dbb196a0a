// Polygon offsetting as the union of the polygon with a rectangle along every chord and a mitre at every outward corner. It is
// slower than joining offset edges, but right for any outline, so it serves where those come to no single ring.

import { at, first, last, pairs, ringPairs } from '../lists';
import { distance, type Point } from '../point';
import { signedArea } from '../polyline';
import { subtractPolygons, unionPolygons } from './unionPolygons';

/**
 * The ring around a closed outline that runs counter-clockwise as seen on paper (y down), no nearer to each edge than its
 * allowance. Null when the union does not come out as one outline. What lies past a fold is left out.
 *
 * @param edges each ends where the next one starts; allowances in mm, not negative
 * @param mitreLimit the tip of a mitre stands at most this many allowances away from its corner; a sharper corner is bevelled
 * @param folds straight edges of the outline, each on a fold
 */
export function offsetByUnion(
  edges: readonly { readonly points: readonly Point[]; readonly allowance: number }[],
  mitreLimit: number,
  folds: readonly { readonly points: readonly Point[] }[] = [],
): Point[] | null {
  const chords = edges.flatMap(({ points, allowance }) =>
    pairs(points).map(([start, end]) => chordOf(start, end, allowance)),
  );
  const ring = chords.map(({ start }) => start);
  const rectangles = chords.map(({ start, end, out }) => [start, end, plus(end, out), plus(start, out)]);
  const mitres = ringPairs(chords).flatMap(([chord, next]) => mitre(chord, next, mitreLimit));
  const parts = [ring, ...rectangles, ...mitres].map((part) =>
    signedArea(part) < 0 ? [...part].reverse() : part,
  );
  const union = unionPolygons(parts, 'nonzero');
  const kept = folds.length > 0 ? subtractPolygons(union, folds.map(pastFold)) : union;
  const [outer, ...others] = kept.filter((path) => signedArea(path) > 0);
  return outer && others.length === 0 ? withoutSpikes(outer).reverse() : null;
}

/** Farther than any outline reaches. mm */
const FAR_MM = 10_000;

/** A triangle on the far side of a fold from the cloth, larger than any outline. */
function pastFold({ points }: { readonly points: readonly Point[] }): Point[] {
  const from = first(points);
  const to = last(points);
  const scale = FAR_MM / (distance(from, to) || 1);
  const along = { x: (to.x - from.x) * scale, y: (to.y - from.y) * scale };
  return [minus(from, along), plus(from, along), plus(from, { x: -along.y, y: along.x })];
}

/** Cosine of the turn from which on a point is the tip of a spike or a slit between two rectangles, not a corner. */
const SPIKE_COS = -0.99;

/** The ring without tips at which it turns back on itself; they arise where two rectangles just fail to meet. */
function withoutSpikes(ring: readonly Point[]): Point[] {
  const kept = [...ring];
  for (let i = 0; i < kept.length && kept.length > 3; ) {
    const count = kept.length;
    const a = at(kept, (i + count - 1) % count);
    const b = at(kept, i);
    const c = at(kept, (i + 1) % count);
    const px = b.x - a.x;
    const py = b.y - a.y;
    const qx = c.x - b.x;
    const qy = c.y - b.y;
    const lengths = Math.sqrt((px * px + py * py) * (qx * qx + qy * qy));
    if (lengths > 1e-9 && px * qx + py * qy > SPIKE_COS * lengths) i += 1;
    else {
      kept.splice(i, 1);
      // The points on both sides may now turn back in their turn.
      i = Math.max(0, i - 1);
    }
  }
  return kept;
}

interface Chord {
  readonly start: Point;
  readonly end: Point;
  /** The outward normal, as long as the allowance, mm. */
  readonly out: Point;
  readonly allowance: number;
}

function chordOf(start: Point, end: Point, allowance: number): Chord {
  const length = Math.hypot(end.x - start.x, end.y - start.y) || 1;
  const out = { x: (-(end.y - start.y) / length) * allowance, y: ((end.x - start.x) / length) * allowance };
  return { start, end, out, allowance };
}

const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });

const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

/** What lies between the rectangles of two chords at an outward corner: up to the tip of the mitre, or bevelled. */
function mitre(a: Chord, b: Chord, mitreLimit: number): Point[][] {
  const p = minus(a.end, a.start);
  const q = minus(b.end, b.start);
  const cross = p.x * q.y - p.y * q.x;
  if (cross >= -1e-12) return [];
  const from = plus(a.end, a.out);
  const to = plus(b.start, b.out);
  const along = ((to.x - from.x) * q.y - (to.y - from.y) * q.x) / cross;
  const tip = { x: from.x + p.x * along, y: from.y + p.y * along };
  const reach = mitreLimit * Math.max(a.allowance, b.allowance);
  const isWithinLimit = Math.hypot(tip.x - a.end.x, tip.y - a.end.y) <= reach && along >= 0;
  return [isWithinLimit ? [a.end, from, tip, to] : [a.end, from, to]];
}
