// What women measure, and how their measurements go together: means, SDs (mm) and correlations (thousandths) of the
// 2,208 women of the 1988 US Army survey. C. C. Gordon et al., "1988 Anthropometric Survey of U.S. Army Personnel:
// Methods and Summary Statistics", NATICK/TR-89/044 (1989), approved for public release.

import type { MeasurementName } from '../../engine';

export interface SurveyRow {
  /** Stature is taken for the survey alone. */
  readonly name: MeasurementName | 'stature';
  readonly mean: number;
  readonly sd: number;
  /** With the rows above and with itself. */
  readonly with: readonly number[];
}

/**
 * Lengths down the front are put together from the survey's: neck to bust point, and 1.03 times the height of the bust
 * above the waist (the tape follows the body; common practice, no source); down to the hip as the heights differ. The
 * underarm's is the height of the armpit above the waist. Their SDs and correlations follow from the published ones.
 */
export const SURVEY: readonly (SurveyRow & { readonly name: MeasurementName })[] = [
  { name: 'overBust', mean: 887, sd: 53.2, with: [1000] },
  { name: 'bust', mean: 907.1, sd: 63.5, with: [901, 1000] },
  { name: 'underBust', mean: 769.7, sd: 51, with: [871, 875, 1000] },
  { name: 'waist', mean: 725.5, sd: 63, with: [834, 863, 863, 1000] },
  { name: 'hip', mean: 966.9, sd: 60.2, with: [714, 707, 679, 740, 1000] },
  { name: 'neckToBust', mean: 268, sd: 22.3, with: [538, 636, 493, 542, 515, 1000] },
  { name: 'neckToWaist', mean: 389.4, sd: 24.9, with: [320, 335, 329, 207, 270, 392, 1000] },
  { name: 'neckToHip', mean: 607.5, sd: 31.1, with: [379, 371, 400, 273, 459, 427, 643, 1000] },
  { name: 'bustPointWidth', mean: 184.8, sd: 16.2, with: [441, 534, 458, 439, 368, 403, 230, 236, 1000] },
  { name: 'backNeckToWaist', mean: 367.3, sd: 25.1, with: [137, 143, 174, 73, 176, 208, 717, 464, 68, 1000] },
  {
    name: 'underarmToWaist',
    mean: 177.1,
    sd: 21.5,
    with: [-85, -67, -14, -145, -52, 24, 749, 373, -20, 737, 1000],
  },
];

/** Stature, with its correlations to the rows of {@link SURVEY}; those of lengths that are put together follow in the same way. */
export const STATURE: SurveyRow = {
  name: 'stature',
  mean: 1629.4,
  sd: 63.6,
  with: [288, 222, 266, 188, 361, 282, 433, 642, 206, 477, 286, 1000],
};

/** The least and the greatest bust girth that was measured, mm. */
export const SURVEYED_BUST = { least: 711, most: 1176 } as const;
