// Finds whether a text has room: clear of every line and every other text.

import type { Point } from '../../engine';
import { type Box, boxAround } from '../geometry/box';
import { clipSegment } from '../geometry/clip';
import type { Stroke } from './strokes';
import { cornersOf, type TurnedBox } from './textBlock';

/** The lines and texts that a text must keep clear of. Texts and leaders are added as they are placed. */
export interface Room {
  readonly segments: (readonly [Point, Point])[];
  readonly taken: TurnedBox[];
}

/** The room among lines, with no text in it yet. */
export function roomAmong(lines: readonly Stroke[]): Room {
  const segments = lines.flatMap(({ points }) =>
    points.slice(1).map((point, i) => [points[i] as Point, point] as const),
  );
  return { segments, taken: [] };
}

/** True when a box, `clearMm` larger on all sides, touches no line and no text. */
export function isClear(room: Room, box: TurnedBox, clearMm: number): boolean {
  const grown = { ...box, halfWidth: box.halfWidth + clearMm, halfHeight: box.halfHeight + clearMm };
  const within = {
    left: -grown.halfWidth,
    top: -grown.halfHeight,
    right: grown.halfWidth,
    bottom: grown.halfHeight,
  };
  const reach = Math.hypot(grown.halfWidth, grown.halfHeight);
  const { x, y } = box.centre;
  const [left, right, top, bottom] = [x - reach, x + reach, y - reach, y + reach];
  const into = intoFrameOf(grown);
  for (const [a, b] of room.segments) {
    if ((a.x > right && b.x > right) || (a.x < left && b.x < left)) continue;
    if ((a.y > bottom && b.y > bottom) || (a.y < top && b.y < top)) continue;
    if (clipSegment(into(a), into(b), within)) return false;
  }
  return !room.taken.some((other) => overlap(grown, other));
}

/** True when a box reaches into one of the upright boxes. */
export function touchesAny(box: TurnedBox, uprights: readonly Box[]): boolean {
  if (uprights.length === 0) return false;
  const around = boxAround(cornersOf(box)) as Box;
  return uprights.some(
    (each) =>
      around.left < each.right &&
      around.right > each.left &&
      around.top < each.bottom &&
      around.bottom > each.top,
  );
}

const intoFrameOf = ({ centre, turnRad }: TurnedBox): ((point: Point) => Point) => {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return ({ x, y }) => ({
    x: (x - centre.x) * cos + (y - centre.y) * sin,
    y: (y - centre.y) * cos - (x - centre.x) * sin,
  });
};

/** Whether two turned boxes overlap: they do unless a side of one of them separates them. */
function overlap(a: TurnedBox, b: TurnedBox): boolean {
  const isApart = (from: TurnedBox, other: TurnedBox): boolean => {
    const around = boxAround(cornersOf(other).map(intoFrameOf(from))) as Box;
    return (
      around.left > from.halfWidth ||
      around.right < -from.halfWidth ||
      around.top > from.halfHeight ||
      around.bottom < -from.halfHeight
    );
  };
  return !isApart(a, b) && !isApart(b, a);
}
