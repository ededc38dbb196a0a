// The style of one half of a garment whose halves differ.

import type { Side } from '../terms/names';
import type { Style } from './style';

/** What a half is drafted by: the wedges of its side, and a joined centre where one half cannot lie on the fold. */
export function styleOfSide({ rightWedges, ...style }: Style, side: Side): Style {
  const { front, back } = style.closure;
  return {
    ...style,
    wedges: side === 'right' ? (rightWedges ?? style.wedges) : style.wedges,
    closure: {
      ...style.closure,
      front: front === 'fold' ? 'seam' : front,
      back: back === 'fold' ? 'seam' : back,
    },
  };
}
