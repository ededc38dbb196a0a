// Where the name of a piece is written on its outline.

import type { Point } from '../../engine';

/** The middle of the longest stretch inside an outline along x, of some tried across it, and its length. mm */
export function labelAt(outline: readonly Point[]): { readonly at: Point; readonly roomMm: number } {
  const ys = outline.map(({ y }) => y);
  const [top, foot] = [Math.min(...ys), Math.max(...ys)];
  let best = { at: { x: 0, y: (top + foot) / 2 }, roomMm: 0 };
  for (let n = 1; n < TRIES; n += 1) {
    const y = top + ((foot - top) * n) / TRIES;
    const xs = crossings(outline, y);
    for (let i = 1; i < xs.length; i += 2) {
      const [from, to] = [xs[i - 1] as number, xs[i] as number];
      // The middle is preferred to a stretch near a tip that is hardly longer.
      const roomMm = (to - from) * (1 - Math.abs(n / TRIES - 0.5));
      if (roomMm > best.roomMm) best = { at: { x: (from + to) / 2, y }, roomMm };
    }
  }
  return best;
}

const TRIES = 12;

function crossings(outline: readonly Point[], y: number): number[] {
  return outline
    .flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length] as Point;
      return a.y > y === b.y > y ? [] : [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
    })
    .sort((p, q) => p - q);
}
