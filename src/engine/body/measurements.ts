// The measurements: one description of each, from which its type, its check, its field and its place in a file follow.

/** Where a measurement is taken: round the body, down from the neck, across the front, for the fit, or for shoulders and arms. */
export type MeasurementGroup = 'round' | 'down' | 'across' | 'fit' | 'shoulders';

interface Definition<Name extends string, Needed extends boolean> {
  /** The name of ISO 8559-1 in camel case where it has one. */
  readonly name: Name;
  readonly kind: 'girth' | 'length';
  readonly group: MeasurementGroup;
  /** A draft cannot be made without it. */
  readonly needed: Needed;
  /** A value outside this span, mm, is refused as a mistake in measuring or typing. */
  readonly least: number;
  readonly most: number;
}

const girth = <Name extends string, Needed extends boolean>(
  name: Name,
  needed: Needed,
  [least, most]: readonly [number, number] = [300, 2500],
): Definition<Name, Needed> => ({ name, kind: 'girth', group: 'round', needed, least, most });

const length = <Name extends string, Needed extends boolean>(
  name: Name,
  group: MeasurementGroup,
  needed: Needed,
  least: number,
  most: number,
): Definition<Name, Needed> => ({ name, kind: 'length', group, needed, least, most });

/**
 * Every measurement in the order in which it is taken: girths from the top down, then lengths from the neck, then widths, then
 * front arcs (across the front from side seam to side seam), then what a shouldered block is fitted by.
 */
export const MEASUREMENTS = [
  girth('overBust', false),
  girth('bust', true),
  girth('underBust', true),
  girth('waist', true),
  girth('highHip', false),
  girth('hip', true),
  length('neckToBust', 'down', true, 80, 600),
  length('neckToUnderBust', 'down', true, 100, 700),
  length('neckToWaist', 'down', true, 150, 900),
  length('neckToHip', 'down', true, 200, 1200),
  length('waistToHighHip', 'fit', false, 30, 300),
  length('bustPointWidth', 'fit', true, 60, 500),
  length('acrossShoulder', 'fit', false, 150, 800),
  length('neckWidth', 'fit', false, 30, 300),
  length('backNeckToWaist', 'down', false, 150, 900),
  length('underarmToWaist', 'fit', false, 40, 500),
  length('waistToLap', 'fit', false, 20, 500),
  length('hollowOfBack', 'fit', false, 5, 120),
  length('frontOverBustArc', 'across', false, 150, 1800),
  length('frontBustArc', 'across', false, 150, 1800),
  length('frontUnderBustArc', 'across', false, 100, 1800),
  length('frontWaistArc', 'across', false, 100, 1800),
  length('frontHipArc', 'across', false, 150, 1800),
  length('shoulderLength', 'shoulders', false, 50, 300),
  length('shoulderDrop', 'shoulders', false, 5, 120),
  length('chestWidth', 'shoulders', false, 150, 900),
  length('backWidth', 'shoulders', false, 150, 900),
  { ...girth('upperArm', false, [120, 1000]), group: 'shoulders' },
] as const;

type MeasurementDefinition = (typeof MEASUREMENTS)[number];

export type MeasurementName = MeasurementDefinition['name'];

/** The measurements that a draft cannot be made without. */
export type NeededMeasurement = Extract<MeasurementDefinition, { readonly needed: true }>['name'];

/** All lengths in mm; null where it was not measured. */
export type Measurements = { readonly [name in MeasurementName]: number | null };

/** Nothing measured. */
export const UNMEASURED = Object.fromEntries(MEASUREMENTS.map(({ name }) => [name, null])) as Record<
  MeasurementName,
  null
>;
