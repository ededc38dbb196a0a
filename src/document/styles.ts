// The styles that can be asked for by name.

import { DEFAULT_STYLE, type Style } from '../engine';

export interface NamedStyle {
  /** What it is called on paper. */
  readonly title: string;
  readonly style: Style;
}

export const NAMED_STYLES: ReadonlyMap<string, NamedStyle> = new Map([
  ['default', { title: 'Over-bust corset', style: DEFAULT_STYLE }],
]);
