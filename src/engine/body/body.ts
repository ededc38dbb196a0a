// From what was measured to a body that can be drafted: checked numbers, with the missing over-bust girth estimated.

import { type Issue, issue } from '../terms/issue';
import type { LevelName } from '../terms/names';
import { frontArcsOf } from './frontArcs';
import {
  MEASUREMENTS,
  type MeasurementName,
  type Measurements,
  type NeededMeasurement,
  UNMEASURED,
} from './measurements';

/**
 * A checked body; mm. Null was not measured, and the draft does without. The over-bust girth is estimated where it was not
 * measured; front arcs, from side seam to side seam, stand by their level. The back's line, from which its wedges are counted, stands
 * half of `backLineWidth` from the centre: as far as the bust points, before any fitting corrected those.
 */
export type Body = Readonly<Record<NeededMeasurement | 'overBust', number>> &
  Omit<Measurements, NeededMeasurement | 'overBust'> & {
    readonly frontArc: { readonly [level in LevelName]?: number };
    readonly backLineWidth: number;
  };

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
  if (typeof measurements !== 'object' || measurements === null) return checkBody(UNMEASURED);
  for (const { name, needed, least, most } of MEASUREMENTS) {
    const value: unknown = measurements[name];
    if (value === null || value === undefined) {
      if (needed) issues.push(issue('measurementMissing', {}, { field: name }));
    } else if (typeof value !== 'number' || !(value >= least && value <= most)) {
      issues.push(issue('measurementOutOfRange', { least, most }, { field: name }));
    }
  }
  const { bust } = measurements;
  // A front over-bust arc is a part of the girth that the draft goes by, be that measured or estimated.
  const estimated = typeof bust === 'number' ? estimatedOverBust(bust) : null;
  const arcs = frontArcsOf({ ...measurements, overBust: measurements.overBust ?? estimated });
  issues.push(...arcs.issues);
  if (bust === null || issues.some(({ severity }) => severity === 'error')) return { body: null, issues };
  const overBust = measurements.overBust ?? estimatedOverBust(bust);
  if (measurements.overBust === null || measurements.overBust === undefined)
    issues.push(
      issue(
        'overBustEstimated',
        { overBust, within: OVER_BUST_WITHIN_MM },
        { field: 'overBust', level: 'overBust' },
      ),
    );
  const measured: Partial<Record<MeasurementName, number | null>> = {};
  for (const { name } of MEASUREMENTS) measured[name] = measurements[name] ?? null;
  // The checks above leave no needed measurement without its number.
  const backLineWidth = measurements.bustPointWidth;
  return { body: { ...measured, overBust, frontArc: arcs.frontArc, backLineWidth } as Body, issues };
}
