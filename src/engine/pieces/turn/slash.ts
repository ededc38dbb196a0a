// A front piece slashed from its side seam to the bust point: where the slash lies, what turns, and whether there is room for it.

import { distanceToChord } from '../../geometry/chord';
import { firstIntersection } from '../../geometry/firstIntersection';
import { at, first, last } from '../../geometry/lists';
import { between, distance, type Point, turnAbout } from '../../geometry/point';
import { polylineLength } from '../../geometry/polyline';
import { edgeIndex, longEdgeIndex } from '../edgeLookup';
import type { Piece } from '../piece';
import { splitFromTop } from './splitSide';

/** Why a dart cannot be turned. `offSeam` has the least and the most it may lie below the armhole, mm. */
export type TurnFault =
  | { readonly kind: 'offSeam'; readonly least: number; readonly most: number }
  | { readonly kind: 'meets' };

/** A slash in a front piece; points on the piece, mm. */
export interface Slash {
  /** Edges of the piece by their indices: the side edge, and the legs of the dart as it was drafted, the outer one first. */
  readonly side: number;
  readonly outLeg: number;
  readonly inLeg: number;
  /** The most the dart may lie below the armhole, and its point short of the bust point, mm. */
  readonly most: { readonly below: number; readonly short: number };
  readonly bustPoint: Point;
  /** Where the legs met the neckline, that towards the centre first. */
  readonly drafted: readonly [Point, Point];
  /** The side edge below the slash, and above it once that is turned; both walked up. */
  readonly lowerPoints: readonly Point[];
  readonly upperPoints: readonly Point[];
  /** The ends of the new legs at the side seam, the place between them, and the dart's point. */
  readonly lower: Point;
  readonly upper: Point;
  readonly middle: Point;
  readonly point: Point;
  /** By how much what lies above the slash turns, rad; as seen on paper counter-clockwise is less than 0. */
  readonly turnRad: number;
  readonly turn: (point: Point) => Point;
}

/** So much of the side seam is left above and below the dart; our own bounds, no source. mm */
const [LEAST_ABOVE_MM, LEAST_BELOW_MM] = [15, 25];

/** Nearer than this to another dart no dart can be sewn. mm */
const CLEAR_OF_DART_MM = 10;

/** A dart is stitched at least so long a part of the way from the side seam to the bust point. */
const LEAST_STITCHED = 0.4;

/**
 * The slash of a piece; null where it has no open dart of the wedge at its top.
 *
 * @param below how far below the armhole it begins, along the side seam, mm
 * @param short how far the dart's point is to end short of the bust point, mm
 */
export function slashIn(piece: Piece, wedge: string, below: number, short: number): Slash | TurnFault | null {
  const { edges } = piece;
  const [inLeg, outLeg] = (['inner', 'outer'] as const).map((leg) =>
    edgeIndex(edges, { at: 'top', dart: { wedge, leg } }),
  ) as [number, number];
  const side = longEdgeIndex(piece, 'outer');
  if (outLeg < 0 || inLeg !== outLeg + 1) return null;
  const sidePoints = at(edges, side).points;
  const mostBelow = polylineLength(sidePoints) - LEAST_BELOW_MM;
  if (below < LEAST_ABOVE_MM || below > mostBelow)
    return { kind: 'offSeam', least: LEAST_ABOVE_MM, most: Math.max(LEAST_ABOVE_MM, mostBelow) };
  const outPoints = at(edges, outLeg).points;
  const bustPoint = last(outPoints);
  const [from, to] = [first(outPoints), last(at(edges, inLeg).points)];
  const turnRad = angleOf(bustPoint, to) - angleOf(bustPoint, from);
  const turn = turnAbout(bustPoint, turnRad);
  const halves = splitFromTop(sidePoints, below);
  const lower = last(halves.lower);
  const upperPoints = halves.upper.map(turn);
  const upper = first(upperPoints);
  const middle = between(lower, upper, 0.5);
  // Along the fold: both legs stay of one length wherever the point lies on it.
  const depth = distance(bustPoint, middle);
  const mostShort = (1 - LEAST_STITCHED) * depth;
  const point = between(bustPoint, middle, Math.min(short, mostShort) / (depth || 1));
  const most = { below: mostBelow, short: mostShort };
  const drafted = [to, from] as const;
  const lowerPoints = halves.lower;
  const ends = { lowerPoints, upperPoints, lower, upper, middle, point };
  return { side, outLeg, inLeg, most, bustPoint, drafted, ...ends, turnRad, turn };
}

/** Whether the slash comes too near another dart, is too short, or meets an edge on its way. */
export function isBlocked({ edges, darts }: Piece, wedge: string, slash: Slash): boolean {
  const { bustPoint, lower, inLeg, outLeg } = slash;
  if (distance(bustPoint, lower) < 2 * LEAST_BELOW_MM) return true;
  if (darts.some((dart) => dart.wedge !== wedge && isInWay(dart, bustPoint, lower))) return true;
  return edges.some((edge, i) => {
    if (i === inLeg || i === outLeg) return false;
    const met = firstIntersection(bustPoint, lower, edge.points);
    return met !== null && distance(met.at, lower) > 0.01 && distance(met.at, bustPoint) > 0.01;
  });
}

const angleOf = (centre: Point, { x, y }: Point): number => Math.atan2(y - centre.y, x - centre.x);

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
