// Everything inside the engine is in millimetres and radians; inches exist only where people type and read.

/** Millimetres in one international inch, exact by definition (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

/** Millimetres of a length given in inches. */
export const inches = (value: number): number => value * MM_PER_INCH;

/** Tolerance: lengths that differ by no more are the same to a tape, and no warning stands on what they differ by. mm */
export const TAPE_TOLERANCE_MM = 0.5;
