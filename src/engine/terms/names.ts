// The names of levels, blocks and sides that every part of the engine speaks of.

/** A horizontal line of the draft with a girth, from the top down. */
export const LEVEL_NAMES = ['overBust', 'bust', 'underBust', 'waist', 'highHip', 'hip'] as const;
export type LevelName = (typeof LEVEL_NAMES)[number];

/** Which half block: x runs from its own centre line towards the side. */
export type BlockName = 'front' | 'back';

/** Which half of the wearer, as she says it herself. */
export const SIDES = ['left', 'right'] as const;
export type Side = (typeof SIDES)[number];

/** A number for each level. */
export type PerLevel = Readonly<Record<LevelName, number>>;
