// The rows of the table, in the order in which the tape goes.

import type { Client } from '../../../document';
import { MEASUREMENTS, type MeasurementGroup, type MeasurementName, type Style } from '../../../engine';

/** The groups in order; a measurement says itself which it belongs to. */
const GROUPS: readonly MeasurementGroup[] = ['round', 'down', 'fit', 'across', 'shoulders'];

export interface RowGroup {
  readonly group: MeasurementGroup;
  readonly names: readonly MeasurementName[];
}

const ALL: readonly RowGroup[] = GROUPS.map((group) => ({
  group,
  names: MEASUREMENTS.filter((each) => each.group === group).map(({ name }) => name),
}));

/** Groups of which a usual client has nothing: they are shown where they are asked for, or needed. */
export const ALSO_GROUPS = ['across', 'shoulders'] as const;

export type AlsoGroup = (typeof ALSO_GROUPS)[number];

/** Those of the groups that are asked for; the others are left out. */
export const rowGroups = (also: ReadonlySet<MeasurementGroup>): readonly RowGroup[] =>
  ALL.filter(({ group }) => !isAlso(group) || also.has(group));

/** The group of a measurement, where it is one that is asked for; null otherwise. */
export function alsoGroupOf(measurement: MeasurementName): AlsoGroup | null {
  const group = MEASUREMENTS.find(({ name }) => name === measurement)?.group;
  return group && isAlso(group) ? group : null;
}

/** The groups that the style of a draft needs, or of which something was measured. */
export function neededGroups(client: Client, style: Style): ReadonlySet<AlsoGroup> {
  const isMeasured = (of: AlsoGroup): boolean =>
    MEASUREMENTS.some(({ group, name }) => group === of && client.measurements[name] !== null);
  const isNeeded = (of: AlsoGroup): boolean => of === 'shoulders' && style.shoulders !== undefined;
  return new Set(ALSO_GROUPS.filter((group) => isNeeded(group) || isMeasured(group)));
}

const isAlso = (group: MeasurementGroup): group is AlsoGroup => ALSO_GROUPS.some((each) => each === group);
