// The parts of a line that do not lie where another line lies.

import { distanceToChord, type Point } from '../../engine';

/** Nearer than this two lines are drawn as one. mm */
const LEAST_MM = 0.15;

/** The parts of a line through points, as lines, that lie farther than 0.15 mm from another line. */
export function movedRuns(was: readonly Point[], now: readonly Point[]): Point[][] {
  const isMoved = was.map((point) => distanceTo(point, now) > LEAST_MM);
  const runs: Point[][] = [];
  for (const [i, point] of was.entries()) {
    const next = was[i + 1];
    if (!next || !(isMoved[i] || isMoved[i + 1])) continue;
    const run = runs.at(-1);
    if (run && run.at(-1) === point) run.push(next);
    else runs.push([point, next]);
  }
  return runs;
}

/** From a point to the nearest place of a line, mm; infinite from a line of no points. */
const distanceTo = (point: Point, line: readonly Point[]): number =>
  line.reduce(
    (least, a, i) => Math.min(least, distanceToChord(a, line[i + 1] ?? a, point)),
    Number.POSITIVE_INFINITY,
  );
