// The front's part of the girths that a style sets, as a pure step from one style to the next.

import type { LevelName, Style } from '../../engine';

/** Sets the front's part of the girth at a level, or (null) leaves it to the draft. */
export function setFrontShare(style: Style, level: LevelName, share: number | null): Style {
  const { [level]: _, ...others } = style.frontShare;
  return { ...style, frontShare: share === null ? others : { ...others, [level]: share } };
}
