// Slash and turn: the front piece is slashed from its side seam to the bust point, its bust dart is closed where it was drafted, and
// opens in the slash. What lies between the two turns about the bust point; nothing of it changes its shape.

import { firstIntersection } from '../../geometry/firstIntersection';
import { at } from '../../geometry/lists';
import { bandedRing } from '../../geometry/offset/bandedRing';
import { isSelfIntersecting } from '../../geometry/offset/isSelfIntersecting';
import { between, distance, type Point } from '../../geometry/point';
import { ringThrough, ringWithoutRepeats } from '../../geometry/polyline';
import { uprightInside } from '../../geometry/uprightInside';
import { identityOf } from '../../terms/identity';
import { DRILL_INSIDE_MM } from '../dartMarks';
import type { Edge, Mark, Piece } from '../piece';
import { cutAcrossDarts } from './cutAcrossDarts';
import { isBlocked, type Slash, slashIn, type TurnFault } from './slash';
import { partOfMark } from './splitSide';

/** How a bust dart lies that was turned into the side seam; points on the front piece, mm. */
export interface TurnedDart
  extends Pick<Slash, 'most' | 'bustPoint' | 'drafted' | 'lower' | 'upper' | 'point' | 'turnRad'> {
  readonly wedge: string;
  /** Id of the front piece. */
  readonly piece: string;
  /** How far below the armhole it opens, along the side seam. */
  readonly below: number;
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

/**
 * Turns the bust dart of the front piece; null where it has none at its top.
 *
 * @param below how far below the armhole it is to open, along the side seam, mm
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
  const slash = slashIn(piece, wedge, below, short);
  if (slash === null || 'kind' in slash) return slash;
  if (isBlocked(piece, wedge, slash)) return { kind: 'meets' };
  const edges = edgesTurned(piece, wedge, slash);
  const ring = ringThrough(edges);
  if (isSelfIntersecting(bandedRing(ringWithoutRepeats(ring)))) return { kind: 'meets' };
  const { most, bustPoint, drafted, lower, upper, point, turnRad } = slash;
  const others = piece.darts.filter((dart) => dart.wedge !== wedge);
  const { line, turnsUp } = cutAcrossDarts({ ...piece, edges }, turnsHem);
  const turned: Piece = {
    ...piece,
    edges,
    darts: [...others, { wedge, inner: [point, lower], outer: [point, upper], open: true }],
    cutLine: line ?? ring,
    grain: isClearGrain(piece.grain, edges) ? piece.grain : uprightInside(ring, closedRings(others)),
    marks: marksTurned(piece, below, slash),
  };
  return {
    piece: turned,
    isValid: line !== null,
    turnsUp,
    dart: { wedge, piece: piece.id, below, most, bustPoint, drafted, lower, upper, point, turnRad },
    edgeNow: (before) => edgeNow(before, slash),
    moved: (p) => (isOnTurned(piece, p, slash) ? slash.turn(p) : p),
  };
}

/** The edges of the piece with the dart shut in the neckline and open in the side seam. */
function edgesTurned(piece: Piece, wedge: string, slash: Slash): Edge[] {
  const { edges } = piece;
  const { side, inLeg, outLeg, turn, lowerPoints, upperPoints, lower, upper, point } = slash;
  const sideEdge = at(edges, side);
  const [before, after] = [at(edges, outLeg - 1).points.map(turn), at(edges, inLeg + 1)];
  /** A leg of the dart; its mate is the other, by its index. */
  const leg = (name: 'inner' | 'outer', mate: number, points: readonly Point[]): Edge => ({
    role: 'seam',
    at: 'outer',
    dart: { wedge, leg: name },
    isSideSeam: false,
    mate: { piece: identityOf(piece), edge: mate },
    allowance: 0,
    points,
  });
  return [
    ...edges.slice(0, side),
    { ...sideEdge, sidePart: 'belowDart', points: lowerPoints },
    leg('inner', side + 2, [lower, point]),
    leg('outer', side + 1, [point, upper]),
    { ...sideEdge, sidePart: 'aboveDart', points: upperPoints },
    ...edges.slice(side + 1, outLeg - 1).map((edge) => ({ ...edge, points: edge.points.map(turn) })),
    // Closed, the neckline runs on across the dart in one edge.
    { ...after, points: [...before.slice(0, -1), ...after.points] },
    ...edges.slice(inLeg + 2),
  ];
}

/** Three edges more at the side, three less at the neckline: two legs and one of its parts. Null for a leg as it was drafted. */
function edgeNow(before: number, { side, inLeg, outLeg }: Slash): number | null {
  if (before <= side) return before;
  if (before === inLeg || before === outLeg) return null;
  return before < outLeg ? before + 3 : before;
}

/** Whether a point lies on an edge that turns. */
const isOnTurned = ({ edges }: Piece, p: Point, { side, outLeg }: Slash): boolean =>
  edges.slice(side + 1, outLeg).some(({ points }) => points.some(({ x, y }) => x === p.x && y === p.y));

/** The marks of the piece where they lie now, with one at each end of the dart in the side seam. */
function marksTurned({ edges, marks }: Piece, below: number, slash: Slash): Mark[] {
  const { side, outLeg, bustPoint, turn, lower, upper, middle, point } = slash;
  const drilled = bustPoint.y - DRILL_INSIDE_MM;
  const onFold = between(point, middle, DRILL_INSIDE_MM / (distance(point, middle) || 1));
  const moved = marks.flatMap((mark): Mark[] => {
    if (mark.kind === 'drill')
      return Math.abs(mark.at.y - drilled) < 1e-6 ? [{ ...mark, level: 'bust', at: onFold }] : [mark];
    if (mark.edge === null) return [mark];
    if (mark.edge === side) {
      const part = partOfMark(at(edges, side).points, mark.at, below);
      if (part === null) return [];
      return part === 'aboveDart' ? [{ ...mark, at: turn(mark.at), edge: side + 3 }] : [mark];
    }
    const edge = edgeNow(mark.edge, slash);
    if (edge === null) return [];
    return [{ ...mark, at: mark.edge > side && mark.edge < outLeg ? turn(mark.at) : mark.at, edge }];
  });
  return [
    ...moved,
    { kind: 'balance', level: null, at: lower, edge: side },
    { kind: 'balance', level: null, at: upper, edge: side + 3 },
  ];
}

/** A piece that was left as it is drafted, with the cut line of what stands there. */
export function cutUnturned(piece: Piece, turnsHem: boolean): Piece {
  const { line } = cutAcrossDarts(piece, turnsHem);
  return line ? { ...piece, cutLine: line } : piece;
}

const closedRings = (darts: Piece['darts']): Point[][] =>
  darts.filter(({ open }) => !open).map(({ inner, outer }) => [...inner, ...[...outer].reverse()]);

/** Whether a grain line meets no edge. */
const isClearGrain = ([top, foot]: Piece['grain'], edges: readonly Edge[]): boolean =>
  edges.every(({ points }) => firstIntersection(top, foot, points) === null);
