// What cannot be sewn as it is drawn: seams and edges that bend too tightly, seams that lean too far, a top edge that makes a beak at
// the underarm, and a panel that ends in a narrow tip at the armhole. Read off the finished pieces.

import { type Level, nearestLevel } from '../block/lines/levels';
import { bendTighterThan, leanOver, pointAlong, type Reading } from '../geometry/bend';
import { ringPairs } from '../geometry/lists';
import type { Point } from '../geometry/point';
import { edgeAt, edgesAt, outerEdge } from '../pieces/edgeLookup';
import type { FinishedSeam } from '../pieces/finishedSeam';
import type { Edge, Piece } from '../pieces/piece';
import { identityOf } from '../terms/identity';
import { type EdgeName, type Issue, issue } from '../terms/issue';

/** A seam that bends to a smaller radius cannot be eased under the foot; our own bound. mm */
const LEAST_SEAM_RADIUS_MM = 15;

/** An edge is bound, faced or turned along one line, and a usual back neckline bends to about 14 mm; our own bound. mm */
const LEAST_EDGE_RADIUS_MM = 10;

/** A seam below the bust that leans more runs across the body rather than down it; our own bound. rad */
const MOST_LEAN_RAD = Math.PI / 4;

/** The top edge and the side seam, at a smaller angle, make a beak; 79° is the least of usual bodies and styles. rad */
const LEAST_UNDERARM_RAD = (75 * Math.PI) / 180;

/** The angle at the underarm is read so far along both edges, because a beak bends back nearer the seam. mm */
const UNDERARM_MM = 15;

/** Where a seam ends in the armhole, a narrower tip than this frays before it is sewn; our own bound. rad */
const LEAST_TIP_RAD = (25 * Math.PI) / 180;

/** A tip is read so far along both its edges: farther down it widens. mm */
const TIP_MM = 12;

/** Warnings about seams, those of open darts among them, and about the edges of all pieces. */
export function sewingIssues(
  pieces: readonly Piece[],
  seams: readonly FinishedSeam[],
  levels: readonly Level[],
): Issue[] {
  return [
    ...seams.flatMap((seam) => seamIssues(pieces, seam, levels)),
    ...pieces.flatMap((piece) => edgeIssues(piece, levels)),
  ];
}

function seamIssues(
  pieces: readonly Piece[],
  { seam, a, b }: FinishedSeam,
  levels: readonly Level[],
): Issue[] {
  const lines = [a, b].flatMap((reference) => {
    const edge = reference && edgeAt(pieces, reference);
    return edge ? [edge.points] : [];
  });
  const placeAt = ({ y }: Point) => ({ seam, level: nearestLevel(levels, y) });
  const bend = least(lines.flatMap((points) => bendTighterThan(points, LEAST_SEAM_RADIUS_MM) ?? []));
  // A dart may lie across the body, and a seam may run into the armhole.
  const bust = levels.find(({ name }) => name === 'bust')?.y ?? Number.NEGATIVE_INFINITY;
  const below = lines.map((points) => points.filter(({ y }) => y >= bust)).filter(({ length }) => length > 1);
  const leans = seam.kind === 'dart' ? [] : below.flatMap((points) => leanOver(points, MOST_LEAN_RAD) ?? []);
  const lean = leans.reduce<Reading | null>(
    (most, each) => (most && most.value > each.value ? most : each),
    null,
  );
  return [
    ...(bend
      ? [issue('seamBendsTightly', { radius: bend.value, least: LEAST_SEAM_RADIUS_MM }, placeAt(bend.at))]
      : []),
    ...(lean ? [issue('seamLeansFar', { angle: lean.value }, placeAt(lean.at))] : []),
  ];
}

function edgeIssues(piece: Piece, levels: readonly Level[]): Issue[] {
  const underarm = underarmAngle(piece);
  return [
    ...piece.edges.flatMap((edge): Issue[] => {
      const name = nameOf(edge, piece);
      const bend = name && bendTighterThan(edge.points, LEAST_EDGE_RADIUS_MM);
      if (!name || !bend) return [];
      const place = {
        block: piece.block,
        piece: identityOf(piece),
        edge: name,
        level: nearestLevel(levels, bend.at.y),
      };
      return [issue('edgeBendsTightly', { radius: bend.value, least: LEAST_EDGE_RADIUS_MM }, place)];
    }),
    ...tipsAtArmhole(piece)
      .filter((angle) => angle < LEAST_TIP_RAD)
      .map((angle) => issue('armholeTip', { angle }, { block: piece.block, piece: identityOf(piece) })),
    ...(underarm !== null && underarm < LEAST_UNDERARM_RAD
      ? [issue('underarmBeak', { angle: underarm }, { block: piece.block, piece: identityOf(piece) })]
      : []),
  ];
}

function nameOf({ role, dart }: Edge, { edges }: Piece): EdgeName | null {
  if (dart || role === 'seam' || role === 'centre' || role === 'shoulder') return null;
  return role === 'top' && edges.some((edge) => edge.role === 'shoulder') ? 'neckline' : role;
}

/** The angle inside a piece between its side seam and the top edge or armhole, rad; null for a piece without a side seam. */
function underarmAngle(piece: Piece): number | null {
  const side = outerEdge(piece);
  // Counter-clockwise, the edge towards the side is walked up, and the first part of the top edge comes next.
  const [edge] = edgesAt(piece, 'top');
  if (!side.isSideSeam || !edge) return null;
  return angleBetween([...side.points].reverse(), edge.points, UNDERARM_MM);
}

/** The angle inside a piece wherever a seam that is no side seam meets the armhole, rad. */
function tipsAtArmhole({ edges }: Piece): number[] {
  if (!edges.some(({ role }) => role === 'armhole')) return [];
  return ringPairs(edges).flatMap(([edge, next]) => {
    const [seam, other] = edge.role === 'seam' ? [edge, next] : [next, edge];
    if (seam.role !== 'seam' || other.role !== 'armhole' || seam.isSideSeam || seam.dart) return [];
    return [angleBetween([...edge.points].reverse(), next.points, TIP_MM)];
  });
}

/** The angle between two lines that leave one point, read so far along both, rad. */
function angleBetween(one: readonly Point[], other: readonly Point[], along: number): number {
  const [corner, a, b] = [one[0], pointAlong(one, along), pointAlong(other, along)];
  if (!corner) return Math.PI;
  const [ux, uy, vx, vy] = [a.x - corner.x, a.y - corner.y, b.x - corner.x, b.y - corner.y];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

const least = (readings: readonly Reading[]): Reading | null =>
  readings.reduce<Reading | null>(
    (tightest, each) => (tightest && tightest.value < each.value ? tightest : each),
    null,
  );
