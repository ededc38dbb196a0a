// Lengths along cubic Bézier curves, parts of them, and a part laid between other ends.

import { type Cubic, pointOn } from './cubic';
import { at as elementAt } from './lists';
import { between, distance, type Point } from './point';

/** A place on a curve and the direction in which the curve runs on there, rad: 0 along x, growing towards y (down on paper). */
export interface Heading {
  readonly point: Point;
  readonly angle: number;
}

/** Chords that a length is summed over; of a curve as short as a neckline or an armhole it is then within 0.01 mm. */
const CHORDS = 64;

/** A cubic with a vanishing handle has its direction from the next control point. mm */
const NO_HANDLE_MM = 1e-9;

const angleOf = (from: Point, to: Point): number => Math.atan2(to.y - from.y, to.x - from.x);

/** Direction of a cubic at its start, rad. */
const startAngle = ({ start, startHandle, endHandle }: Cubic): number =>
  angleOf(start, distance(start, startHandle) > NO_HANDLE_MM ? startHandle : endHandle);

/** Both parts of a cubic cut at parameter `t` (de Casteljau). */
function splitCubic({ start, startHandle, endHandle, end }: Cubic, t: number): [Cubic, Cubic] {
  const [a, b, c] = [
    between(start, startHandle, t),
    between(startHandle, endHandle, t),
    between(endHandle, end, t),
  ];
  const d = between(a, b, t);
  const e = between(b, c, t);
  const middle = between(d, e, t);
  return [
    { start, startHandle: a, endHandle: d, end: middle },
    { start: middle, startHandle: e, endHandle: c, end },
  ];
}

/** Length of cubics that follow one another, mm. */
export function cubicsLength(cubics: readonly Cubic[]): number {
  let length = 0;
  for (const cubic of cubics) {
    let from = cubic.start;
    for (let i = 1; i <= CHORDS; i += 1) {
      const to = pointOn(cubic, i / CHORDS);
      length += distance(from, to);
      from = to;
    }
  }
  return length;
}

/** Cubics that follow one another, cut in two at a part of their length, 0 to 1; `at` is the cut. */
export function cutCubics(
  cubics: readonly Cubic[],
  part: number,
): { before: Cubic[]; after: Cubic[]; at: Heading } {
  let left = part * cubicsLength(cubics);
  for (const [i, cubic] of cubics.entries()) {
    let from = cubic.start;
    for (let step = 1; step <= CHORDS; step += 1) {
      const to = pointOn(cubic, step / CHORDS);
      const chord = distance(from, to);
      const isLast = i === cubics.length - 1 && step === CHORDS;
      if (left <= chord || isLast) {
        const t = (step - 1 + (chord > 0 ? Math.min(1, left / chord) : 0)) / CHORDS;
        const [head, tail] = splitCubic(cubic, t);
        return {
          before: [...cubics.slice(0, i), head],
          after: [tail, ...cubics.slice(i + 1)],
          at: { point: head.end, angle: startAngle(tail) },
        };
      }
      left -= chord;
      from = to;
    }
  }
  const end = elementAt(cubics, cubics.length - 1).end;
  return { before: [...cubics], after: [], at: { point: end, angle: 0 } };
}

/**
 * The cubic laid between two other ends that it leaves and reaches in their directions; its handles keep their part of the
 * chord, so that it keeps its fullness.
 */
export function laidBetween(cubic: Cubic, start: Heading, end: Heading): Cubic {
  const scale = distance(start.point, end.point) / (distance(cubic.start, cubic.end) || 1);
  const [first, last] = [
    scale * distance(cubic.start, cubic.startHandle),
    scale * distance(cubic.endHandle, cubic.end),
  ];
  return {
    start: start.point,
    startHandle: {
      x: start.point.x + first * Math.cos(start.angle),
      y: start.point.y + first * Math.sin(start.angle),
    },
    endHandle: {
      x: end.point.x - last * Math.cos(end.angle),
      y: end.point.y - last * Math.sin(end.angle),
    },
    end: end.point,
  };
}

/** A rigid motion of the paper, told by where it takes a place and a direction. */
export function moveAlong(from: Heading, to: Heading): (heading: Heading) => Heading {
  const turn = to.angle - from.angle;
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return ({ point, angle }) => {
    const x = point.x - from.point.x;
    const y = point.y - from.point.y;
    return {
      point: { x: to.point.x + x * cos - y * sin, y: to.point.y + x * sin + y * cos },
      angle: angle + turn,
    };
  };
}
