// The default style with its lines and shares set, for tests that follow one rule and want no other to move their figures.

import { DEFAULT_STYLE, inches, type Style } from '../../../src/engine';

/** The over-bust line 2 in above the bust line and a front share at every level, whatever was measured. */
export const SET_LINES: Style = {
  ...DEFAULT_STYLE,
  overBustAbove: inches(2),
  frontShare: { overBust: 0.515, bust: 0.53, underBust: 0.515, waist: 0.51, highHip: 0.5, hip: 0.49 },
};
