// Published statistics of the 2,208 women of the 1988 US Army survey, as far as a draft needs them:
// C. C. Gordon et al., "1988 Anthropometric Survey of U.S. Army Personnel: Methods and Summary Statistics",
// NATICK/TR-89/044 (1989), approved for public release. mm; correlations have no unit.

/** The survey's name for what each row measures stands beside it. Heights are above the floor. */
export const SURVEY = [
  { name: 'bust', mean: 907.08, sd: 63.52, least: 711, most: 1176 }, // CHEST_CIRC
  { name: 'overBust', mean: 887.04, sd: 53.23, least: 753, most: 1121 }, // CHEST_CIRC_AT_SCYE
  { name: 'underBust', mean: 769.67, sd: 50.98, least: 640, most: 988 }, // CHEST_CIRC-BELOW_BUST_
  { name: 'waist', mean: 725.52, sd: 63.03, least: 568, most: 987 }, // WAIST_CIRC_NATURAL
  { name: 'hip', mean: 966.89, sd: 60.18, least: 787, most: 1189 }, // BUTTOCK_CIRC
  { name: 'bustPointWidth', mean: 184.81, sd: 16.19, least: 128, most: 241 }, // BUSTPOINT_TO_BUSTPOINT_BRTH
  { name: 'neckToBust', mean: 267.97, sd: 22.29, least: 202, most: 354 }, // NECK_TO_BUSTPOINT_LNTH
  { name: 'bustHeight', mean: 1174.38, sd: 55.02, least: 996, most: 1402 }, // CHEST_HT
  { name: 'waistHeight', mean: 1056.52, sd: 51.71, least: 863, most: 1234 }, // WAIST_HT_NATURAL
  { name: 'hipHeight', mean: 838.34, sd: 45.2, least: 653, most: 1022 }, // BUTT_HT
  { name: 'armpitHeight', mean: 1233.63, sd: 54.32, least: 1051, most: 1452 }, // AXILLA_HT
] as const;

export type SurveyName = (typeof SURVEY)[number]['name'];

/** Correlations, in thousandths and in the order of {@link SURVEY}. */
const THOUSANDTHS: readonly (readonly number[])[] = [
  [1000, 901, 875, 863, 707, 534, 636, 119, 236, 200, 198],
  [901, 1000, 871, 834, 714, 441, 538, 214, 303, 263, 255],
  [875, 871, 1000, 863, 679, 458, 493, 195, 260, 204, 242],
  [863, 834, 863, 1000, 740, 439, 542, 109, 246, 208, 177],
  [707, 714, 679, 740, 1000, 368, 515, 260, 366, 252, 328],
  [534, 441, 458, 439, 368, 1000, 403, 136, 206, 200, 188],
  [636, 538, 493, 542, 515, 403, 1000, 1, 236, 193, 234],
  [119, 214, 195, 109, 260, 136, 1, 1000, 889, 850, 942],
  [236, 303, 260, 246, 366, 206, 236, 889, 1000, 883, 919],
  [200, 263, 204, 208, 252, 200, 193, 850, 883, 1000, 865],
  [198, 255, 242, 177, 328, 188, 234, 942, 919, 865, 1000],
];

/** Correlations in the order of {@link SURVEY}. */
export const CORRELATIONS: readonly (readonly number[])[] = THOUSANDTHS.map((row) =>
  row.map((each) => each / 1000),
);
