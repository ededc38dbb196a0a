// Sizes of a printed page's head and of the two calibration squares.

import { MM_PER_INCH } from '../../engine';

/** Height of the head. mm */
export const HEAD_MM = 20;

/** Sides of the squares from centre of line to centre of line, mm. */
export const METRIC_SQUARE_MM = 100;
export const INCH_SQUARE_MM = 4 * MM_PER_INCH;

/** Gap between the squares, and around them. mm */
export const SQUARES_GAP_MM = 5;
