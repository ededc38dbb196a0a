// Where a chord first meets a row of chords.

import { between, type Point } from './point';

export interface ChordMeeting {
  readonly at: Point;
  /** How far along the chord, from 0 to 1. */
  readonly along: number;
  /** Index of the point of the row behind the meeting, and how far along the row's chord up to there, from 0 to 1. */
  readonly index: number;
  readonly within: number;
}

/** The meeting nearest to `a`, ends counting in; null where there is none. Chords that lie along the row do not meet it. */
export function chordMeeting(a: Point, b: Point, row: readonly Point[]): ChordMeeting | null {
  let nearest: Omit<ChordMeeting, 'at'> | null = null;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  for (let index = 1; index < row.length; index += 1) {
    const [p, q] = [row[index - 1] as Point, row[index] as Point];
    const turn = dx * (q.y - p.y) - dy * (q.x - p.x);
    if (turn === 0) continue;
    const along = ((p.x - a.x) * (q.y - p.y) - (p.y - a.y) * (q.x - p.x)) / turn;
    const within = ((p.x - a.x) * dy - (p.y - a.y) * dx) / turn;
    if (along < 0 || along > 1 || within < 0 || within > 1 || (nearest && along >= nearest.along)) continue;
    nearest = { along, index, within };
  }
  return nearest && { at: between(a, b, nearest.along), ...nearest };
}
