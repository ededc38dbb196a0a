// Measured front arcs: an arc is the front's part of a girth, taped across the front from side seam to side seam. It is used instead
// of the style's share.

import { type Issue, issue } from '../terms/issue';
import type { LevelName } from '../terms/names';
import { TAPE_TOLERANCE_MM } from '../terms/units';
import type { Measurements } from './measurements';

/** Which arc belongs to which level. */
const FRONT_ARCS = [
  { name: 'frontOverBustArc', level: 'overBust' },
  { name: 'frontBustArc', level: 'bust' },
  { name: 'frontUnderBustArc', level: 'underBust' },
  { name: 'frontWaistArc', level: 'waist' },
  { name: 'frontHipArc', level: 'hip' },
] as const;

/** Parts of the girth that a draft can carry; the same span as a style's own share. */
const POSSIBLE = { least: 0.2, most: 0.8 } as const;

/** Usual parts of the girth; outside these the side seam stands unusually far forward or back. Our own bounds, no source. */
const USUAL = { least: 0.4, most: 0.6 } as const;

/**
 * The arcs that were measured, mm by level. An arc that cannot be the front's part of its girth has a blocking issue with the
 * possible span in mm, an unusual one a warning with the usual span. An arc whose girth is missing or no number has neither,
 * because the girth has an issue of its own.
 */
export function frontArcsOf(measurements: Measurements): {
  frontArc: { readonly [level in LevelName]?: number };
  issues: Issue[];
} {
  const issues: Issue[] = [];
  const frontArc: { [level in LevelName]?: number } = {};
  for (const { name, level } of FRONT_ARCS) {
    const [arc, girth]: readonly unknown[] = [measurements[name], measurements[level]];
    // What is no number at all is the measurement's own issue.
    if (typeof arc !== 'number' || typeof girth !== 'number' || !Number.isFinite(arc * girth)) continue;
    const place = { field: name, level };
    const spanValues = ({ least, most }: { least: number; most: number }) => ({
      arc,
      girth,
      least: least * girth,
      most: most * girth,
    });
    const within = ({ least, most }: { least: number; most: number }, tolerance = 0): boolean =>
      arc >= least * girth - tolerance && arc <= most * girth + tolerance;
    if (!within(POSSIBLE)) issues.push(issue('frontArcImpossible', spanValues(POSSIBLE), place));
    else if (!within(USUAL, TAPE_TOLERANCE_MM))
      issues.push(issue('frontArcUnusual', spanValues(USUAL), place));
    frontArc[level] = arc;
  }
  return { frontArc, issues };
}
