// A cincher whose top edge is a length above the waist. On the demo's body it crosses the under-bust line, and its panels take a sheet
// fewer of Legal where some are turned head down.

import { NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE, inches, type Style } from '../../../src/engine';

export const TALL_CINCHER: Style = {
  ...(NAMED_STYLES.get('cincher')?.style ?? DEFAULT_STYLE),
  topFrom: 'waist',
  topAbove: inches(2.75),
};
