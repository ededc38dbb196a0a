// The levels as the maker calls them.

import type { LevelName } from '../../engine';
import { catalogue } from './catalogue';

/** Lower case, for use within a sentence. */
export const LEVEL_WORDS: Readonly<Record<LevelName, string>> = catalogue({
  overBust: 'over-bust',
  bust: 'bust',
  underBust: 'under-bust',
  waist: 'waist',
  highHip: 'high hip',
  hip: 'hip',
});
