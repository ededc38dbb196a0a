// From what was measured to a body that can be drafted: checked numbers, with the missing over-bust girth estimated.

import { type Issue, issue } from '../terms/issue';
import type { LevelName } from '../terms/names';
import { frontArcsOf } from './frontArcs';
import { MEASUREMENTS, type Measurements } from './measurements';

/** A checked body; mm. What is null was not measured and the draft does without. */
export interface Body {
  readonly bust: number;
  readonly underBust: number;
  readonly waist: number;
  readonly hip: number;
  readonly overBust: number;
  readonly highHip: number | null;
  readonly neckToBust: number;
  readonly neckToUnderBust: number;
  readonly neckToWaist: number;
  readonly neckToHip: number;
  readonly bustPointWidth: number;
  readonly acrossShoulder: number | null;
  readonly neckWidth: number | null;
  readonly backNeckToWaist: number | null;
  readonly underarmToWaist: number | null;
  readonly waistToLap: number | null;
  /** Front arcs, side seam to side seam, where they were measured. */
  readonly frontArc: { readonly [level in LevelName]?: number };
}

/**
 * Over-bust girth from bust girth, mm: the regression line of the 2,208 women of the 1988 US Army survey
 * (Gordon et al. 1989, NATICK/TR-89/044: means 887.04 and 907.08, SDs 53.23 and 63.52, correlation 0.901).
 */
function estimatedOverBust(bustMm: number): number {
  return 887.04 + 0.901 * (53.23 / 63.52) * (bustMm - 907.08);
}

/** Nineteen in twenty of them lie within so much of it: 1.96 of the SD that the correlation leaves. mm */
const OVER_BUST_WITHIN_MM = 1.96 * 53.23 * Math.sqrt(1 - 0.901 ** 2);

/**
 * Checks the measurements. `body` is null when one that is needed is missing or any is out of all span;
 * each fault is a blocking issue at its field.
 */
export function checkBody(measurements: Measurements): { body: Body | null; issues: Issue[] } {
  const issues: Issue[] = [];
  if (typeof measurements !== 'object' || measurements === null)
    return checkBody(
      Object.fromEntries(MEASUREMENTS.map(({ name }) => [name, null])) as unknown as Measurements,
    );
  for (const { name, needed, least, most } of MEASUREMENTS) {
    const value: unknown = measurements[name];
    if (value === null || value === undefined) {
      if (needed) issues.push(issue('measurementMissing', 'error', { field: name }));
    } else if (typeof value !== 'number' || !(value >= least && value <= most)) {
      issues.push(issue('measurementOutOfRange', 'error', { field: name }, { least, most }));
    }
  }
  const arcs = frontArcsOf(measurements);
  issues.push(...arcs.issues);
  if (issues.some(({ severity }) => severity === 'error')) return { body: null, issues };
  const bust = measurements.bust as number;
  const overBust = measurements.overBust ?? estimatedOverBust(bust);
  if (measurements.overBust === null || measurements.overBust === undefined)
    issues.push(
      issue(
        'overBustEstimated',
        'note',
        { field: 'overBust', level: 'overBust' },
        { overBust, within: OVER_BUST_WITHIN_MM },
      ),
    );
  return {
    body: {
      bust,
      underBust: measurements.underBust as number,
      waist: measurements.waist as number,
      hip: measurements.hip as number,
      overBust,
      highHip: measurements.highHip ?? null,
      neckToBust: measurements.neckToBust as number,
      neckToUnderBust: measurements.neckToUnderBust as number,
      neckToWaist: measurements.neckToWaist as number,
      neckToHip: measurements.neckToHip as number,
      bustPointWidth: measurements.bustPointWidth as number,
      acrossShoulder: measurements.acrossShoulder ?? null,
      neckWidth: measurements.neckWidth ?? null,
      backNeckToWaist: measurements.backNeckToWaist ?? null,
      underarmToWaist: measurements.underarmToWaist ?? null,
      waistToLap: measurements.waistToLap ?? null,
      frontArc: arcs.frontArc,
    },
    issues,
  };
}
