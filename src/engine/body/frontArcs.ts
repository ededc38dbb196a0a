// Measured front arcs: where the tape was laid across the front from side seam to side seam, the front's part of the girth
// is known and need not be taken from the style.

import { type Issue, issue } from '../terms/issue';
import type { LevelName } from '../terms/names';
import { TAPE_TOLERANCE_MM } from '../terms/units';
import type { Measurements } from './measurements';

/** Which arc belongs to which level. */
const FRONT_ARCS = [
  { name: 'frontBustArc', level: 'bust' },
  { name: 'frontWaistArc', level: 'waist' },
  { name: 'frontHipArc', level: 'hip' },
] as const;

/** Parts of the girth that a draft can carry; the same span as a style's own share. */
const POSSIBLE = { least: 0.2, most: 0.8 } as const;

/** Side seams outside this stand oddly far forward or back. Our own bound, no source. */
const USUAL = { least: 0.4, most: 0.6 } as const;

/**
 * The arcs that were measured, mm by level. One that cannot be the front's part of its girth is a blocking issue, an odd
 * one a warning, both with the usual or possible span in mm. Arcs whose girth is missing or absurd are left to the girth's own issue.
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
