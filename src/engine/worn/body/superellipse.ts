// Superellipses |x/a|ⁿ + |y/b|ⁿ = 1: the sections of the body without breasts.

/** Half breadth `a` across and half depth `b` from front to back, mm; exponent `n`, 2 for an ellipse. */
export interface Superellipse {
  readonly a: number;
  readonly b: number;
  readonly n: number;
}

/** Distance from the middle in the direction `t` from the front, mm. */
export const superellipseRadius = ({ a, b, n }: Superellipse, sin: number, cos: number): number =>
  (Math.abs(sin / a) ** n + Math.abs(cos / b) ** n) ** (-1 / n);

const CHORDS = 120;

/** Length round the whole, mm, within 0.05 %: the surface is brought to its girth afterwards. */
function perimeter(shape: Superellipse): number {
  let [length, px, py] = [0, 0, shape.b];
  for (let i = 1; i <= CHORDS / 2; i += 1) {
    const t = (2 * Math.PI * i) / CHORDS;
    const [sin, cos] = [Math.sin(t), Math.cos(t)];
    const r = superellipseRadius(shape, sin, cos);
    length += Math.sqrt((r * sin - px) ** 2 + (r * cos - py) ** 2);
    [px, py] = [r * sin, r * cos];
  }
  return 2 * length;
}

const ROOT_ROUNDS = 30;

/**
 * The root of a growing function between two bounds, within 1e-3 of its value; a bound where it has none there. False position
 * with the Illinois rule (M. Dowell, P. Jarratt, BIT 11, 1971).
 */
export function rootBetween(f: (x: number) => number, least: number, most: number): number {
  let [low, high] = [least, most];
  let [atLow, atHigh] = [f(low), f(high)];
  if (atLow >= 0) return low;
  if (atHigh <= 0) return high;
  for (let i = 0; i < ROOT_ROUNDS; i += 1) {
    const x = (low * atHigh - high * atLow) / (atHigh - atLow);
    const value = f(x);
    if (Math.abs(value) < 1e-3) return x;
    if (value > 0) {
      [high, atHigh] = [x, value];
      atLow /= 2;
    } else {
      [low, atLow] = [x, value];
      atHigh /= 2;
    }
  }
  return (low + high) / 2;
}

/** The section of a girth (mm) whose breadth is `ratio` times its depth. */
export function withRatio(girth: number, ratio: number, n: number): Superellipse {
  const b = rootBetween((depth) => perimeter({ a: depth * ratio, b: depth, n }) - girth, 10, girth);
  return { a: b * ratio, b, n };
}

/** The section of a girth (mm) with the half breadth `a`, its breadth kept within `least` and `most` times its depth. */
export function withBreadth(
  girth: number,
  a: number,
  n: number,
  [least, most]: readonly [number, number],
): Superellipse {
  const b = rootBetween((depth) => perimeter({ a, b: depth, n }) - girth, 10, girth);
  const ratio = a / b;
  return ratio >= least && ratio <= most
    ? { a, b, n }
    : withRatio(girth, Math.min(most, Math.max(least, ratio)), n);
}
