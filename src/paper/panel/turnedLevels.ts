// Level lines of a front whose bust dart was turned into the side seam: what lies above the dart was turned, and its levels with it.

import {
  crossingsAt,
  type Draft,
  type LevelName,
  type Piece,
  type Point,
  raisedPath,
  stopsAlong,
  turnAbout,
} from '../../engine';

type Turned = NonNullable<Draft['turnedDart']>;
type Stretch = readonly [Point, Point];

/**
 * The stretches of a level line on the turned piece, in the coordinates in which the front was drafted, from the centre towards the side.
 * Null where no part of the level was turned.
 *
 * @param y height of the level as drafted, mm
 */
export function turnedLevel(
  { turnedDart, raisedLevels }: Pick<Draft, 'turnedDart' | 'raisedLevels'>,
  name: LevelName,
  y: number,
): Stretch[] | null {
  const piece = turnedDart?.before.pieces.find(({ id }) => id === turnedDart.piece);
  if (!turnedDart || !piece) return null;
  const raised = raisedPath(raisedLevels, piece, name);
  const stretches = raised ? pairsOf(stopsAlong(piece, raised) ?? []) : levelOn(piece, y);
  const parts = stretches.flatMap((stretch) => cutBy(stretch, turnedDart));
  if (!parts.some((part) => isTurned(part, turnedDart))) return null;
  const turn = turnAbout(turnedDart.bustPoint, turnedDart.turnRad);
  return parts.map((part) => (isTurned(part, turnedDart) ? [turn(part[0]), turn(part[1])] : part));
}

function levelOn({ edges }: Piece, y: number): Stretch[] {
  const ring = edges.flatMap(({ points }) => points.slice(0, -1));
  const xs = crossingsAt([...ring, ...ring.slice(0, 1)], y).sort((a, b) => a - b);
  return pairsOf(xs.map((x) => ({ x, y })));
}

const pairsOf = (points: readonly Point[]): Stretch[] =>
  points.flatMap((point, i): Stretch[] => {
    const end = points[i + 1];
    return i % 2 === 0 && end ? [[point, end]] : [];
  });

/** On which side of the line from `a` to `b` a point lies: less than 0 on the left of who goes along it, as seen on paper. */
const sideOf = (a: Point, b: Point, { x, y }: Point): number =>
  (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);

/** A stretch in two where the slash crosses it. */
function cutBy([from, to]: Stretch, { bustPoint, lower }: Turned): Stretch[] {
  const [a, b] = [sideOf(bustPoint, lower, from), sideOf(bustPoint, lower, to)];
  if (a < 0 === b < 0 || a === b) return [[from, to]];
  const part = a / (a - b);
  const place = { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part };
  // Beyond the bust point no slash was made.
  const isOnSlash =
    (place.x - bustPoint.x) * (lower.x - bustPoint.x) + (place.y - bustPoint.y) * (lower.y - bustPoint.y) >=
    0;
  return isOnSlash
    ? [
        [from, place],
        [place, to],
      ]
    : [[from, to]];
}

/** Whether a stretch lies between the slash and the dart's outer leg. */
function isTurned([from, to]: Stretch, { bustPoint, lower, drafted }: Turned): boolean {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return sideOf(bustPoint, lower, middle) < 0 && sideOf(bustPoint, drafted[1], middle) > 0;
}
