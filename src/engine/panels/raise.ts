// How far the heights of a seam were raised after a fitting: what lies below a shortened stretch moves up, and the stretch itself is
// drawn together.

import { at, numberAt } from '../geometry/lists';
import { type SmoothLine, slopeInSpan, xInSpan } from '../geometry/smoothLine';

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
export function raisedHeight(raise: Raise, y: number): number {
  let height = y;
  for (const { from, to, by } of raise) height -= by * Math.min(1, Math.max(0, (y - from) / (to - from)));
  return height;
}

/**
 * A line with its knots raised. Above each shortened stretch it is as it was, below it moved as a whole; between them the slopes are
 * those of the line drawn together.
 */
export function raisedLine(line: SmoothLine, raise: Raise): SmoothLine {
  if (raise.length === 0 || line.ys.length === 1) return line;
  const knots = withBounds(line.ys, raise);
  const raised: { ys: number[]; xs: number[]; slopes: number[] } = { ys: [], xs: [], slopes: [] };
  let span = -1;
  for (let i = 0; i < knots.length; i += 1) {
    const y = numberAt(knots, i);
    while (span + 1 < line.ys.length && numberAt(line.ys, span + 1) <= y) span += 1;
    raised.ys.push(raisedHeight(raise, y));
    raised.xs.push(xInSpan(line, span, y));
    raised.slopes.push(slopeInSpan(line, span, y) / stretchAt(raise, y));
  }
  return raised;
}

/** Heights of knots with those bounds of a raise that lie between the outermost, ascending; the heights themselves where none does. */
function withBounds(ys: readonly number[], raise: Raise): readonly number[] {
  const start = numberAt(ys, 0);
  const end = numberAt(ys, ys.length - 1);
  let knots: number[] | null = null;
  const add = (y: number): void => {
    if (y <= start || y >= end || (knots ?? ys).includes(y)) return;
    knots ??= [...ys];
    knots.push(y);
  };
  for (let i = 0; i < raise.length; i += 1) {
    add(at(raise, i).from);
    add(at(raise, i).to);
  }
  return knots ? (knots as number[]).sort((a, b) => a - b) : ys;
}

/** How much longer a mm of height is on the raised seam; at a bound, as on that side of it which changes less. */
function stretchAt(raise: Raise, y: number): number {
  let [above, below] = [1, 1];
  for (const { from, to, by } of raise) {
    const part = by / (to - from);
    if (y > from && y <= to) above -= part;
    if (y >= from && y < to) below -= part;
  }
  return Math.abs(above - 1) < Math.abs(below - 1) ? above : below;
}
