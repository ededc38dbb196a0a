// The armhole of the finished pieces against the arm that goes through it, and its base against the armpit.

import type { Body } from '../body/body';
import { edgesLength } from '../pieces/edgeLookup';
import type { Piece } from '../pieces/piece';
import { type Issue, issue } from '../terms/issue';
import { TAPE_TOLERANCE_MM } from '../terms/units';

export interface Armhole {
  /** Round one armhole, shoulder seam to shoulder seam, mm. */
  readonly length: number;
  /** Height of its base as drafted, mm below the shoulder level. */
  readonly base: number;
}

/** The armhole of a half's pieces; null where one of its panels was not made. */
export function armholeOf(pieces: readonly Piece[], base: number): Armhole | null {
  const count = pieces.flatMap(({ edges }) => edges.filter(({ role }) => role === 'armhole')).length;
  return count < 2 ? null : { length: edgesLength(pieces, 'armhole'), base };
}

/** An armhole less than this longer than the upper arm is round binds it (common practice, no source). mm */
const LEAST_ROOM_MM = 60;

/** The armhole's length against the girth of the upper arm where that was measured, and a base above the measured armpit. */
export function roomForArm(
  { upperArm, neckToWaist, underarmToWaist }: Body,
  { length, base }: Armhole,
): Issue[] {
  const issues: Issue[] = [];
  if (upperArm !== null)
    issues.push(
      length < upperArm + LEAST_ROOM_MM - TAPE_TOLERANCE_MM
        ? issue('armholeTight', { length, upperArm, least: LEAST_ROOM_MM }, { field: 'upperArm' })
        : issue('armholeLength', { length, upperArm }, { field: 'upperArm' }),
    );
  const over = underarmToWaist === null ? 0 : neckToWaist - underarmToWaist - base;
  if (over > TAPE_TOLERANCE_MM)
    issues.push(issue('topAboveArmpit', { over }, { field: 'topShape.underarm' }));
  return issues;
}
