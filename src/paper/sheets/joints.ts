// Joints of neighbouring sheets. Their marks lie on the same point of the plan on both sheets and have numbers, so that each joint
// fits one neighbour only.

import { distanceToChord, type Point } from '../../engine';
import type { Box } from '../geometry/box';
import { nearSegments, type Segment } from '../geometry/nearSegments';
import { type Grid, type SheetPosition, sheetName, stepAcross, stepDown, windowOf } from './grid';

export interface Joint {
  /** Counted from 1; each pair of neighbours has its own number. */
  readonly number: number;
  /** Left and right neighbour, or upper and lower. */
  readonly sheets: readonly [SheetPosition, SheetPosition];
  readonly direction: 'across' | 'down';
  /** Centres of its two marks on the plan, in the middle of the overlap. */
  readonly joinMarks: readonly [Point, Point];
}

/** Distance of marks from lines of the pattern where there is room. mm */
const CLEAR_MM = 7;
const TRIES = 9;

/** A joint for each pair of neighbouring printed sheets. Marks stand away from lines and from other overlaps. */
export function jointsOf(
  grid: Grid,
  sheets: readonly SheetPosition[],
  lines: readonly (readonly Point[])[],
): Joint[] {
  const printed = new Set(sheets.map(sheetName));
  const near = nearSegments(lines);
  const joints: Joint[] = [];
  for (const sheet of sheets) {
    const neighbours = [
      { direction: 'across', other: { row: sheet.row, column: sheet.column + 1 } },
      { direction: 'down', other: { row: sheet.row + 1, column: sheet.column } },
    ] as const;
    for (const { direction, other } of neighbours) {
      if (!printed.has(sheetName(other))) continue;
      const joinMarks = [
        joinMarkIn(grid, sheet, direction, 0, near),
        joinMarkIn(grid, sheet, direction, 1, near),
      ] as const;
      joints.push({ number: joints.length + 1, sheets: [sheet, other], direction, joinMarks });
    }
  }
  return joints;
}

/** The place farthest from lines for a mark in the first (0) or second (1) half of a joint. */
function joinMarkIn(
  grid: Grid,
  sheet: SheetPosition,
  direction: Joint['direction'],
  half: 0 | 1,
  near: (box: Box) => Segment[],
): Point {
  const window = windowOf(grid, sheet);
  const [from, to] =
    direction === 'across'
      ? [window.top, window.top + stepDown(grid)]
      : [window.left, window.left + stepAcross(grid)];
  const [start, end] = [from + grid.overlapMm + CLEAR_MM, to - CLEAR_MM];
  const middle = grid.overlapMm / 2;
  const pointAt = (t: number): Point =>
    direction === 'across'
      ? { x: window.right - middle, y: start + (end - start) * t }
      : { x: start + (end - start) * t, y: window.bottom - middle };
  let best = { point: pointAt(0.25 + half * 0.5), score: -Infinity };
  for (let i = 0; i < TRIES; i += 1) {
    const t = half * 0.55 + (0.45 * i) / (TRIES - 1);
    const point = pointAt(t);
    const reach = middle + LABEL_MM;
    const beside = [-reach, reach].map((sideways) =>
      direction === 'across' ? { x: point.x + sideways, y: point.y } : { x: point.x, y: point.y + sideways },
    );
    // The clearance of the mark counts double, because its numbers can move.
    const clear = 2 * clearance(point, near) + Math.min(...beside.map((spot) => clearance(spot, near)));
    const score = clear - 4 * Math.abs(t - (0.225 + half * 0.55));
    if (score > best.score) best = { point, score };
  }
  return best.point;
}

/** Distance of a mark's number from the overlap. mm */
export const LABEL_MM = 3;

function clearance({ x, y }: Point, near: (box: Box) => Segment[]): number {
  let least = CLEAR_MM;
  const box = { left: x - CLEAR_MM, top: y - CLEAR_MM, right: x + CLEAR_MM, bottom: y + CLEAR_MM };
  for (const [a, b] of near(box)) least = Math.min(least, distanceToChord(a, b, { x, y }));
  return least;
}
