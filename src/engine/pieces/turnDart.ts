// Slash and turn: the front piece is slashed from its side seam to the bust point, its bust dart is closed where it was drafted, and
// opens in the slash. What lies between the two turns about the bust point; nothing of it changes its shape.

import { distanceToChord } from '../geometry/chord';
import { firstIntersection } from '../geometry/firstIntersection';
import { at, first, last } from '../geometry/lists';
import { bandedRing } from '../geometry/offset/bandedRing';
import { type AllowedEdge, cutLineTurnedUp } from '../geometry/offset/cutLine';
import { isSelfIntersecting } from '../geometry/offset/isSelfIntersecting';
import { between, distance, type Point } from '../geometry/point';
import { polylineLength, ringThrough, ringWithoutRepeats } from '../geometry/polyline';
import { uprightInside } from '../geometry/uprightInside';
import { DRILL_INSIDE_MM, peakOf } from './dartMarks';
import { edgeIndex, longEdgeIndex } from './edgeLookup';
import type { Edge, Mark, Piece } from './piece';
import { lengthFromTop, splitFromTop } from './splitSide';

/** How a bust dart lies that was turned into the side seam; points on the front piece, mm. */
export interface TurnedDart {
  readonly wedge: string;
  /** Id of the front piece. */
  readonly piece: string;
  /** How far below the armhole it opens, along the side seam. */
  readonly below: number;
  /** What is turned about. */
  readonly bustPoint: Point;
  /** Where the legs met the neckline before the turn, that towards the centre first. */
  readonly drafted: readonly [Point, Point];
  /** The ends of both legs at the side seam, the lower one first, and where they meet. */
  readonly lower: Point;
  readonly upper: Point;
  readonly point: Point;
  /** By how much what lies above the dart was turned, rad; as seen on paper counter-clockwise is less than 0. */
  readonly turnRad: number;
}

/** The front piece turned, and what tells where its edges and points came from. */
export interface TurnedPiece {
  readonly piece: Piece;
  /** False where the cut line had to be left on the sew line. */
  readonly isValid: boolean;
  /** False where a hem that is to be turned up cannot lie on the seam allowances. */
  readonly turnsUp: boolean;
  readonly dart: TurnedDart;
  /** The edge that an edge of the piece has become; null for a leg of the dart as it was drafted. */
  readonly edgeNow: (before: number) => number | null;
  /** Where a point on an edge, or on a corner of the outline, has gone. */
  readonly moved: (point: Point) => Point;
}

/** Why a dart cannot be turned. `offSeam` has the least and the most it may lie below the armhole, mm. */
export type TurnFault =
  | { readonly kind: 'offSeam'; readonly least: number; readonly most: number }
  | { readonly kind: 'meets' };

/** So much of the side seam is left above and below the dart; our own bounds, no source. mm */
const [LEAST_ABOVE_MM, LEAST_BELOW_MM] = [15, 25];

/** Nearer than this to another dart no dart can be sewn. mm */
const CLEAR_OF_DART_MM = 10;

/** A dart is stitched at least so long a part of the way from the side seam to the bust point. */
const LEAST_STITCHED = 0.4;

/**
 * Turns the bust dart of the front piece.
 *
 * @param short how far the dart's point is to end short of the bust point, mm
 * @param turnsHem whether the hem is turned up
 */
export function turnDart(
  piece: Piece,
  wedge: string,
  below: number,
  short: number,
  turnsHem: boolean,
): TurnedPiece | TurnFault | null {
  const { edges } = piece;
  const [inLeg, outLeg] = (['inner', 'outer'] as const).map((leg) =>
    edgeIndex(edges, { at: 'top', dart: { wedge, leg } }),
  ) as [number, number];
  const side = longEdgeIndex(piece, 'outer');
  if (outLeg < 0 || inLeg !== outLeg + 1) return null;
  const [sideEdge, fromLeg, toLeg] = [at(edges, side), at(edges, outLeg), at(edges, inLeg)];
  const bustPoint = last(fromLeg.points);
  const [from, to] = [first(fromLeg.points), last(toLeg.points)];
  const sideLength = polylineLength(sideEdge.points);
  const most = sideLength - LEAST_BELOW_MM;
  if (below < LEAST_ABOVE_MM || below > most)
    return { kind: 'offSeam', least: LEAST_ABOVE_MM, most: Math.max(LEAST_ABOVE_MM, most) };

  const turnRad = angleOf(bustPoint, to) - angleOf(bustPoint, from);
  const turn = turnAbout(bustPoint, turnRad);
  const halves = splitFromTop(sideEdge.points, below);
  const lower = last(halves.lower);
  const upperPoints = halves.upper.map(turn);
  const upper = first(upperPoints);
  const reach = distance(bustPoint, lower);
  const middle = between(lower, upper, 0.5);
  // Along the fold: both legs stay of one length wherever the point lies on it.
  const depth = distance(bustPoint, middle);
  const point = between(bustPoint, middle, Math.min(short, (1 - LEAST_STITCHED) * depth) / (depth || 1));

  const others = piece.darts.filter((dart) => dart.wedge !== wedge);
  const sector = [
    bustPoint,
    ...edges.slice(side + 1, outLeg).flatMap(({ points }) => points),
    ...halves.upper,
  ];
  if (others.some((dart) => isInWay(dart, bustPoint, lower))) return { kind: 'meets' };
  const isCrossed = edges.some((edge, i) => {
    if (i === inLeg || i === outLeg) return false;
    const met = firstIntersection(bustPoint, lower, edge.points);
    return met !== null && distance(met.at, lower) > 0.01 && distance(met.at, bustPoint) > 0.01;
  });
  if (isCrossed || reach < 2 * LEAST_BELOW_MM || sector.length < 3) return { kind: 'meets' };

  const joined = at(edges, outLeg - 1);
  const [before, after] = [joined.points.map(turn), at(edges, inLeg + 1)];
  const leg = (name: 'inner' | 'outer', points: readonly Point[]): Edge => ({
    role: 'seam',
    at: 'outer',
    dart: { wedge, leg: name },
    isSideSeam: false,
    mate: null,
    allowance: 0,
    points,
  });
  const now: Edge[] = [
    ...edges.slice(0, side),
    { ...sideEdge, sidePart: 'belowDart', points: halves.lower },
    leg('inner', [lower, point]),
    leg('outer', [point, upper]),
    { ...sideEdge, sidePart: 'aboveDart', points: upperPoints },
    ...edges.slice(side + 1, outLeg - 1).map((edge) => ({ ...edge, points: edge.points.map(turn) })),
    // Closed, the neckline runs on across the dart in one edge.
    { ...after, points: [...before.slice(0, -1), ...after.points] },
    ...edges.slice(inLeg + 2),
  ];
  const legs = [side + 1, side + 2] as const;
  const own = { id: piece.id, kind: piece.kind, block: piece.block, number: piece.number, side: piece.side };
  const mated = now.map(
    (edge, i): Edge =>
      i === legs[0] || i === legs[1]
        ? { ...edge, mate: { piece: own, edge: legs[i === legs[0] ? 1 : 0] } }
        : edge,
  );
  const ring = ringThrough(mated);
  if (isSelfIntersecting(bandedRing(ringWithoutRepeats(ring)))) return { kind: 'meets' };
  // Three edges more at the side, three less at the neckline: two legs and one of its parts.
  const edgeNow = (index: number): number | null => {
    if (index <= side) return index;
    if (index === inLeg || index === outLeg) return null;
    return index < outLeg ? index + 3 : index;
  };
  const isMoved = (p: Point): boolean =>
    edges.slice(side + 1, outLeg).some(({ points }) => points.some(({ x, y }) => x === p.x && y === p.y));
  const { line, turnsUp } = cutLineTurnedUp(edgesToCut(mated, piece.cut.onFold, turnsHem));
  const drilled = bustPoint.y - DRILL_INSIDE_MM;
  const fold = between(point, middle, DRILL_INSIDE_MM / (distance(point, middle) || 1));
  const marks = piece.marks.flatMap((mark): Mark[] => {
    if (mark.kind === 'drill')
      return Math.abs(mark.at.y - drilled) < 1e-6 ? [{ ...mark, level: 'bust', at: fold }] : [mark];
    if (mark.edge === null) return [mark];
    if (mark.edge === side) {
      const along = lengthFromTop(sideEdge.points, mark.at, sideLength);
      if (Math.abs(along - below) < CLEAR_OF_MARK_MM) return [];
      return along < below ? [{ ...mark, at: turn(mark.at), edge: side + 3 }] : [mark];
    }
    const edge = edgeNow(mark.edge);
    if (edge === null) return [];
    return [{ ...mark, at: mark.edge > side && mark.edge < outLeg ? turn(mark.at) : mark.at, edge }];
  });
  const turned: Piece = {
    ...piece,
    edges: mated,
    darts: [...others, { wedge, inner: [point, lower], outer: [point, upper], open: true }],
    cutLine: line ?? ring,
    grain: isClearGrain(piece.grain, mated) ? piece.grain : uprightInside(ring, closedRings(others)),
    marks: [
      ...marks,
      { kind: 'balance', level: null, at: lower, edge: side },
      { kind: 'balance', level: null, at: upper, edge: side + 3 },
    ],
  };
  return {
    piece: turned,
    isValid: line !== null,
    turnsUp,
    dart: { wedge, piece: piece.id, below, bustPoint, drafted: [to, from], lower, upper, point, turnRad },
    edgeNow,
    moved: (p) => (isMoved(p) ? turn(p) : p),
  };
}

/** A piece that was left as it is drafted, with the cut line of what stands there. */
export function cutUnturned(piece: Piece, turnsHem: boolean): Piece {
  const { line } = cutLineTurnedUp(edgesToCut(piece.edges, piece.cut.onFold, turnsHem));
  return line ? { ...piece, cutLine: line } : piece;
}

/** A mark nearer than this to a dart's end is left out, as at the end of a seam. mm */
export const CLEAR_OF_MARK_MM = 6;

const angleOf = (centre: Point, { x, y }: Point): number => Math.atan2(y - centre.y, x - centre.x);

function turnAbout(centre: Point, turnRad: number): (point: Point) => Point {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return ({ x, y }) => ({
    x: centre.x + (x - centre.x) * cos - (y - centre.y) * sin,
    y: centre.y + (x - centre.x) * sin + (y - centre.y) * cos,
  });
}

/** Whether a dart crosses the slash, lies above it, or comes too near it. */
function isInWay({ inner, outer }: Piece['darts'][number], from: Point, to: Point): boolean {
  return [inner, outer].some(
    (points) =>
      firstIntersection(from, to, points) !== null ||
      points.some(
        (point) =>
          distanceToChord(from, to, point) < CLEAR_OF_DART_MM ||
          (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x) < 0,
      ),
  );
}

/** The edges of a piece as it is cut: across each open dart the edge rises to a peak on the dart's fold. */
function edgesToCut(edges: readonly Edge[], isOnFold: boolean, turnsHem: boolean): AllowedEdge[] {
  const runs: (AllowedEdge & { points: Point[] })[] = [];
  let across = false;
  for (const [i, { at: place, role, dart, allowance, points }] of edges.entries()) {
    const run = runs.at(-1);
    const next = edges[i + 1];
    if (dart && !across) {
      const peak =
        run && next && peakOf(run.points, { inner: [...points].reverse(), outer: next.points }, 'hem');
      if (peak) run.points.push(peak);
      across = true;
    } else if (!dart && run && across) {
      run.points.push(...points);
      across = false;
    } else if (!dart)
      runs.push({
        points: [...points],
        allowance,
        ...(role === 'centre' ? { onFold: isOnFold } : {}),
        ...(place === 'hem' && turnsHem ? { turnedUp: { start: !isOnFold, end: true } } : {}),
      });
  }
  return runs;
}

const closedRings = (darts: Piece['darts']): Point[][] =>
  darts.filter(({ open }) => !open).map(({ inner, outer }) => [...inner, ...[...outer].reverse()]);

/** Whether a grain line meets no edge. */
const isClearGrain = ([top, foot]: Piece['grain'], edges: readonly Edge[]): boolean =>
  edges.every(({ points }) => firstIntersection(top, foot, points) === null);
