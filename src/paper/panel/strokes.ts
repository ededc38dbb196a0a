// What is put on paper before anyone asks which paper: lines and texts in mm, x to the right, y down.

import type { Point } from '../../engine';

export type StrokeKind = 'cut' | 'sew' | 'fold' | 'grain' | 'mark' | 'leader';

export interface Stroke {
  readonly kind: StrokeKind;
  /** A closed line has its first point again at its end. */
  readonly points: readonly Point[];
}

export interface PlacedText {
  readonly text: string;
  /** Left end of the baseline. */
  readonly start: Point;
  /** Clockwise as seen on paper, rad; 0 reads from left to right. */
  readonly turnRad: number;
  readonly sizePt: number;
  readonly bold: boolean;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The smallest upright box around points; null around none. */
export function boxAround(points: readonly Point[]): Box | null {
  if (points.length === 0) return null;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, top, right, bottom };
}

/** Points moved by an offset. */
export const moved = (points: readonly Point[], by: Point): Point[] =>
  points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
