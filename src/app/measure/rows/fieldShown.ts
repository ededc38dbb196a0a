// The field in hand, as the figure and what stands beside it show it.

import type { MeasurementName } from '../../../engine';

export interface FieldShown {
  /** Path of the field: a measurement, or a number of how the sides differ. */
  readonly field: string;
  /** The measurement whose tape is drawn. */
  readonly measurement: MeasurementName;
  readonly label: string;
  /** How it is taken. */
  readonly how: string;
}

/** The input of a measurement's row, by its path; null where it is not on the screen. */
export const inputOf = (field: string): HTMLInputElement | null =>
  document.querySelector(`[data-field="${field}"] input`);

/** The id of the way on to the next step, which has the focus after the last field. */
export const NEXT_STEP = 'next-step';
