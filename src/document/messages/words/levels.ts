// The names of the levels, as they are written within a sentence and as they begin one.

import type { LevelName } from '../../../engine';
import { catalogue } from '../catalogue';

/** Lower case, for use within a sentence. */
export const LEVEL_WORDS: Readonly<Record<LevelName, string>> = catalogue({
  overBust: 'over-bust',
  bust: 'bust',
  underBust: 'under-bust',
  waist: 'waist',
  highHip: 'high hip',
  hip: 'hip',
});

/** With a capital, to begin a line. */
export const LEVEL_TITLES: Readonly<Record<LevelName, string>> = catalogue({
  overBust: 'Over-bust',
  bust: 'Bust',
  underBust: 'Under-bust',
  waist: 'Waist',
  highHip: 'High hip',
  hip: 'Hip',
});
