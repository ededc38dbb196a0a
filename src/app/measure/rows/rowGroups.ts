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

/** The groups that are shown: those of shoulders and arms only where they are asked for. */
export const rowGroups = (withShoulders: boolean): readonly RowGroup[] =>
  withShoulders ? ALL : ALL.filter(({ group }) => group !== 'shoulders');

/** Whether a draft goes up to the shoulders, or something of them was measured. */
export const hasShoulders = (client: Client, style: Style): boolean =>
  style.shoulders !== undefined ||
  MEASUREMENTS.some(({ group, name }) => group === 'shoulders' && client.measurements[name] !== null);
