// Level lines of a front whose bust dart was turned into the side seam: what lies above the dart was turned, and its levels with it.

import { crossingsAt, type Draft, type Piece, type Point } from '../../engine';

type Turned = NonNullable<Draft['turnedDart']>;

/**
 * The parts of a level line on the turned piece, in the coordinates in which the front was drafted, from the centre towards the side. Null
 * where the level lies below all that was turned, so that it runs level across the piece.
 */
export function turnedLevel({ before, ...dart }: Turned, y: number): Point[][] | null {
  const { bustPoint, lower, drafted, piece: id } = dart;
  const piece = before.pieces.find((each) => each.id === id);
  if (!piece || y >= Math.max(bustPoint.y, lower.y)) return null;
  const slash = xOn(bustPoint, lower, y);
  const leg = xOn(bustPoint, drafted[1], y);
  return spansOf(piece, y)
    .flatMap(([from, to]) =>
      slash === null || slash <= from || slash >= to
        ? [[from, to] as const]
        : [[from, slash] as const, [slash, to] as const],
    )
    .map(([from, to]) => {
      const middle = (from + to) / 2;
      // Above the bust point what is turned begins at the dart's outer leg, below it at the slash.
      const begins = leg ?? slash ?? Number.POSITIVE_INFINITY;
      const ends = leg !== null && slash !== null ? slash : Number.POSITIVE_INFINITY;
      const line = [
        { x: from, y },
        { x: to, y },
      ];
      return middle > begins && middle < ends ? line.map(turnAbout(dart)) : line;
    });
}

function spansOf({ edges }: Piece, y: number): [number, number][] {
  const ring = edges.flatMap(({ points }) => points.slice(0, -1));
  const xs = crossingsAt([...ring, ...ring.slice(0, 1)], y).sort((a, b) => a - b);
  return xs.flatMap((x, i): [number, number][] => {
    const end = xs[i + 1];
    return i % 2 === 0 && end !== undefined ? [[x, end]] : [];
  });
}

/** The x at which a straight line passes a height between its ends; null beyond them. */
const xOn = (a: Point, b: Point, y: number): number | null =>
  a.y > y === b.y > y ? null : a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);

function turnAbout({ bustPoint, turnRad }: Omit<Turned, 'before'>): (point: Point) => Point {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return ({ x, y }) => ({
    x: bustPoint.x + (x - bustPoint.x) * cos - (y - bustPoint.y) * sin,
    y: bustPoint.y + (x - bustPoint.x) * sin + (y - bustPoint.y) * cos,
  });
}
