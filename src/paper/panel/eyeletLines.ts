// Eyelets as they are drawn on the panels: a ring around a cross at the centre to punch.

import type { Draft, Point } from '../../engine';
import { eyeletsFor } from '../making/eyelets';
import type { MakingSettings } from '../making/settings';
import type { Stroke } from './strokes';

/** Radius of the hole of a common eyelet; common practice, no source. mm */
const RING_MM = 2.5;
const CROSS_MM = 1.5;

/** The eyelets of one piece in the coordinates of its block; none where it is not laced. */
export function eyeletLines(draft: Draft, settings: MakingSettings, piece: string): Stroke[] {
  return eyeletsFor(draft, settings)
    .filter((row) => row.piece.id === piece)
    .flatMap((row) => row.points.flatMap(eyeletMark));
}

function eyeletMark({ x, y }: Point): Stroke[] {
  const ring = Array.from({ length: 17 }, (_, i): Point => {
    const turn = (i * Math.PI) / 8;
    return { x: x + RING_MM * Math.cos(turn), y: y + RING_MM * Math.sin(turn) };
  });
  const cross = (dx: number, dy: number): Stroke => ({
    kind: 'mark',
    points: [
      { x: x - dx, y: y - dy },
      { x: x + dx, y: y + dy },
    ],
  });
  return [{ kind: 'mark', points: ring }, cross(CROSS_MM, 0), cross(0, CROSS_MM)];
}
