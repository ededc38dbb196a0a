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

/** Correlations in the order of {@link SURVEY}. */
export const CORRELATIONS: readonly (readonly number[])[] = [
  [1, 0.901, 0.875, 0.863, 0.707, 0.534, 0.636, 0.119, 0.236, 0.2, 0.198],
  [0.901, 1, 0.871, 0.834, 0.714, 0.441, 0.538, 0.214, 0.303, 0.263, 0.255],
  [0.875, 0.871, 1, 0.863, 0.679, 0.458, 0.493, 0.195, 0.26, 0.204, 0.242],
  [0.863, 0.834, 0.863, 1, 0.74, 0.439, 0.542, 0.109, 0.246, 0.208, 0.177],
  [0.707, 0.714, 0.679, 0.74, 1, 0.368, 0.515, 0.26, 0.366, 0.252, 0.328],
  [0.534, 0.441, 0.458, 0.439, 0.368, 1, 0.403, 0.136, 0.206, 0.2, 0.188],
  [0.636, 0.538, 0.493, 0.542, 0.515, 0.403, 1, 0.001, 0.236, 0.193, 0.234],
  [0.119, 0.214, 0.195, 0.109, 0.26, 0.136, 0.001, 1, 0.889, 0.85, 0.942],
  [0.236, 0.303, 0.26, 0.246, 0.366, 0.206, 0.236, 0.889, 1, 0.883, 0.919],
  [0.2, 0.263, 0.204, 0.208, 0.252, 0.2, 0.193, 0.85, 0.883, 1, 0.865],
  [0.198, 0.255, 0.242, 0.177, 0.328, 0.188, 0.234, 0.942, 0.919, 0.865, 1],
];
