// What a style's numbers may be, said once: the check holds them to it, and the forms offer no more. Lengths in mm, from the
// least to the most.

export const STYLE_SPANS = {
  ease: [-600, 600],
  topAbove: [-600, 200],
  hemBelow: [-400, 800],
  /** A place of the top edge or the hem, beyond the level edge. */
  edgeNode: [-400, 400],
  lacingGap: [0, 300],
  allowance: [0, 100],
  /** A wedge that parts two panels may add cloth; a dart is sewn shut. */
  wedgeIntake: [-200, 300],
  dartIntake: [0, 300],
  /** A dart's point, below its level. */
  dartPoint: [-400, 400],
  cupBelow: [5, 150],
  cupIntake: [0, 100],
} as const;

/** By the path of each number within the shoulders. */
export const SHOULDERS_SPANS = {
  drop: [0, 80],
  armholeIn: [0, 40],
  'intake.front': [0, 60],
  'intake.back': [0, 60],
  bandAbove: [10, 150],
} as const;
