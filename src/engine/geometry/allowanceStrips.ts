// The cut line by brute force: the piece, a strip along every chord and a gusset at every outward corner, all made one.
// Slower than moving the edges, but right for any outline; it is asked where moving them comes to no clear ring.

import type { Point } from './point';
import { signedArea } from './polyline';
import { unionPolygons } from './unionPolygons';

/** A run of the outline with its allowance, mm. */
interface Run {
  readonly points: readonly Point[];
  readonly allowance: number;
}

/**
 * The ring around a closed outline that runs counter-clockwise as seen on paper (y down), no nearer to each run than its
 * allowance; null when the union does not come out as one ring.
 */
export function unionOfStrips(runs: readonly Run[], mitreLimit: number): Point[] | null {
  const chords = runs.flatMap(({ points, allowance }) =>
    points.slice(1).map((end, i) => chordOf(points[i] as Point, end, allowance)),
  );
  const ring = chords.map(({ start }) => start);
  const strips = chords.map(({ start, end, out }) => [start, end, shifted(end, out), shifted(start, out)]);
  const gussets = chords.flatMap((chord, i) =>
    gusset(chord, chords[(i + 1) % chords.length] as Chord, mitreLimit),
  );
  const parts = [ring, ...strips, ...gussets].map((part) =>
    signedArea(part) < 0 ? [...part].reverse() : part,
  );
  const [outer, ...others] = unionPolygons(parts, 'wound').filter((path) => signedArea(path) > 0);
  return outer && others.length === 0 ? withoutNeedles(outer).reverse() : null;
}

/** Cosine of the turn from which on a point is the tip of a crack or a needle between two strips, not a corner. */
const NEEDLE_COS = -0.99;

/** The ring without tips at which it turns back on itself; they come of strips that just fail to meet. */
function withoutNeedles(ring: readonly Point[]): Point[] {
  const kept = [...ring];
  for (let i = 0; i < kept.length && kept.length > 3; ) {
    const [a, b, c] = [kept.at(i - 1) as Point, kept[i] as Point, kept[(i + 1) % kept.length] as Point];
    const [px, py, qx, qy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
    const lengths = Math.sqrt((px * px + py * py) * (qx * qx + qy * qy));
    if (lengths > 1e-9 && px * qx + py * qy > NEEDLE_COS * lengths) i += 1;
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
  /** The way out, as long as the allowance. */
  readonly out: Point;
  readonly allowance: number;
}

function chordOf(start: Point, end: Point, allowance: number): Chord {
  const length = Math.hypot(end.x - start.x, end.y - start.y) || 1;
  const out = { x: (-(end.y - start.y) / length) * allowance, y: ((end.x - start.x) / length) * allowance };
  return { start, end, out, allowance };
}

const shifted = (point: Point, by: Point): Point => ({ x: point.x + by.x, y: point.y + by.y });

/** What lies between the strips of two chords at an outward corner: to the tip where they meet, or squared past it. */
function gusset(a: Chord, b: Chord, mitreLimit: number): Point[][] {
  const way = ({ start, end }: Chord): Point => ({ x: end.x - start.x, y: end.y - start.y });
  const [p, q] = [way(a), way(b)];
  const turn = p.x * q.y - p.y * q.x;
  if (turn >= -1e-12) return [];
  const [from, to] = [shifted(a.end, a.out), shifted(b.start, b.out)];
  const along = ((to.x - from.x) * q.y - (to.y - from.y) * q.x) / turn;
  const tip = { x: from.x + p.x * along, y: from.y + p.y * along };
  const reach = mitreLimit * Math.max(a.allowance, b.allowance);
  const near = Math.hypot(tip.x - a.end.x, tip.y - a.end.y) <= reach && along >= 0;
  return [near ? [a.end, from, tip, to] : [a.end, from, to]];
}
