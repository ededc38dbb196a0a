// How far the heights of a seam were raised after a fitting: what lies below a shortened stretch moves up, and the stretch itself is
// drawn together.

import { numberAt } from '../geometry/lists';
import { type SmoothLine, slopeAt, xAt } from '../geometry/smoothLine';

/** Between two heights a seam is `by` mm shorter (longer below nothing). */
interface ShortenedStretch {
  readonly from: number;
  readonly to: number;
  readonly by: number;
}

/** All that one seam is shortened by; empty for none. */
export type Raise = readonly ShortenedStretch[];

/** The raise of a panel's long edges; that of its darts stands with them. */
export interface PanelRaise {
  readonly inner: Raise;
  readonly outer: Raise;
}

/** Where a height as drafted lies on a raised seam, mm. */
export const raisedHeight = (raise: Raise, y: number): number =>
  raise.reduce(
    (height, { from, to, by }) => height - by * Math.min(1, Math.max(0, (y - from) / (to - from))),
    y,
  );

/**
 * A line with its knots raised. Above each shortened stretch it is as it was, below it moved as a whole; between them the slopes are
 * those of the line drawn together.
 */
export function raisedLine(line: SmoothLine, raise: Raise): SmoothLine {
  if (raise.length === 0 || line.ys.length === 1) return line;
  const start = numberAt(line.ys, 0);
  const end = numberAt(line.ys, line.ys.length - 1);
  const bounds = raise.flatMap(({ from, to }) => [from, to]).filter((y) => y > start && y < end);
  const ys = [...new Set([...line.ys, ...bounds])].sort((a, b) => a - b);
  return {
    ys: ys.map((y) => raisedHeight(raise, y)),
    xs: ys.map((y) => xAt(line, y)),
    slopes: ys.map((y) => slopeAt(line, y) / stretchAt(raise, y)),
  };
}

/** How much longer a mm of height is on the raised seam; at a bound, as on that side of it which changes less. */
function stretchAt(raise: Raise, y: number): number {
  const rate = (isInside: (stretch: ShortenedStretch) => boolean): number =>
    raise.filter(isInside).reduce((part, { from, to, by }) => part - by / (to - from), 1);
  const above = rate(({ from, to }) => y > from && y <= to);
  const below = rate(({ from, to }) => y >= from && y < to);
  return Math.abs(above - 1) < Math.abs(below - 1) ? above : below;
}
