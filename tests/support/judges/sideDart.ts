// A front whose bust dart opens in the side seam, with that dart shut about the bust point: measured as a stranger would who lays the
// upper part of the side back on the lower.

import { type Measurements, openWidth, type Piece, type Point, type Style } from '../../../src/engine';

/** The bust point on the front's block, from the tape alone. */
export const bustPointOf = (body: Measurements, { closure }: Style): Point => ({
  x:
    (body.bustPointWidth ?? 0) / 2 -
    (closure.front === 'lacing' ? openWidth({ ...closure, back: 'seam' }) / 2 : 0),
  y: body.neckToBust ?? 0,
});

const turnedAbout =
  (centre: Point, rad: number) =>
  ({ x, y }: Point): Point => {
    const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
    return {
      x: centre.x + (x - centre.x) * cos - (y - centre.y) * sin,
      y: centre.y + (x - centre.x) * sin + (y - centre.y) * cos,
    };
  };

/** By how much the upper part of the side turns about the bust point until the legs of the dart meet, rad; null without such a dart. */
export function shuttingTurn(piece: Piece, bustPoint: Point): number | null {
  const above = piece.edges.find(({ sidePart }) => sidePart === 'aboveDart');
  const below = piece.edges.find(({ sidePart }) => sidePart === 'belowDart');
  if (!piece.edges.some(({ at, dart }) => at === 'outer' && dart) || !above || !below) return null;
  const angle = ({ x, y }: Point): number => Math.atan2(y - bustPoint.y, x - bustPoint.x);
  const [upper, lower] = [ends(above.points)[1], ends(below.points)[0]];
  return angle(lower) - angle(upper);
}

/** The higher and the lower end of a line. */
export function ends(points: readonly Point[]): [Point, Point] {
  const [a, b] = [points[0] as Point, points.at(-1) as Point];
  return a.y < b.y ? [a, b] : [b, a];
}

/**
 * The piece with the dart shut: its side in one edge, and armhole and shoulder turned with the upper part of it. The point at which a side
 * is parted lies on a chord of its curve and is left out. Itself where no dart opens in the side seam.
 */
export function shutAtSide(piece: Piece, bustPoint: Point): Piece {
  const above = piece.edges.find(({ sidePart }) => sidePart === 'aboveDart');
  if (!above) return piece;
  const turn = turnedAbout(bustPoint, shuttingTurn(piece, bustPoint) ?? 0);
  const edges = piece.edges.flatMap((edge) => {
    if (edge.sidePart === 'aboveDart' || (edge.at === 'outer' && edge.dart)) return [];
    if (edge.sidePart === 'belowDart')
      return [{ ...edge, points: [...edge.points.slice(0, -1), ...above.points.slice(1).map(turn)] }];
    const isTurned = edge.role === 'armhole' || edge.role === 'shoulder';
    return isTurned ? [{ ...edge, points: edge.points.map(turn) }] : [edge];
  });
  return { ...piece, edges };
}
