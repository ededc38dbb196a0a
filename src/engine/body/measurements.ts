// What the tape gives: the measurements a draft needs, their usual span, and which may be left out.

/** All lengths in mm. Names follow ISO 8559-1 where it has one (see {@link MEASUREMENTS}). */
export interface Measurements {
  readonly bust: number | null;
  readonly underBust: number | null;
  readonly waist: number | null;
  readonly hip: number | null;
  readonly overBust: number | null;
  readonly highHip: number | null;
  readonly neckToBust: number | null;
  readonly neckToUnderBust: number | null;
  readonly neckToWaist: number | null;
  readonly neckToHip: number | null;
  readonly bustPointWidth: number | null;
  readonly acrossShoulder: number | null;
  readonly neckWidth: number | null;
  readonly backNeckToWaist: number | null;
  readonly underarmToWaist: number | null;
  readonly waistToLap: number | null;
  /** Across the front from side seam to side seam, at the level of the name. */
  readonly frontBustArc: number | null;
  readonly frontWaistArc: number | null;
  readonly frontHipArc: number | null;
}

export type MeasurementName = keyof Measurements;

export interface MeasurementDefinition {
  readonly name: MeasurementName;
  readonly kind: 'girth' | 'length';
  /** A draft cannot be made without it. */
  readonly needed: boolean;
  /** Outside this span (mm) it is taken for a slip of the tape or the keyboard and refused. */
  readonly least: number;
  readonly most: number;
}

const girth = (name: MeasurementName, needed: boolean): MeasurementDefinition => ({
  name,
  kind: 'girth',
  needed,
  least: 300,
  most: 2500,
});

const length = (
  name: MeasurementName,
  needed: boolean,
  least: number,
  most: number,
): MeasurementDefinition => ({ name, kind: 'length', needed, least, most });

/** Every measurement in the order in which it is taken: girths from the top down, then lengths from the neck, then widths, then front arcs. */
export const MEASUREMENTS: readonly MeasurementDefinition[] = [
  girth('overBust', false),
  girth('bust', true),
  girth('underBust', true),
  girth('waist', true),
  girth('highHip', false),
  girth('hip', true),
  length('neckToBust', true, 80, 600),
  length('neckToUnderBust', true, 100, 700),
  length('neckToWaist', true, 150, 900),
  length('neckToHip', true, 200, 1200),
  length('bustPointWidth', true, 60, 500),
  length('acrossShoulder', false, 150, 800),
  length('neckWidth', false, 30, 300),
  length('backNeckToWaist', false, 150, 900),
  length('underarmToWaist', false, 40, 500),
  length('waistToLap', false, 20, 500),
  length('frontBustArc', false, 150, 1800),
  length('frontWaistArc', false, 100, 1800),
  length('frontHipArc', false, 150, 1800),
];
