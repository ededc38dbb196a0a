// The facings of a style, as they lie behind the panels of one half.

import { facingShape } from '../extras/facing';
import { lacedEdge } from '../extras/lacedEdge';
import type { Piece } from '../pieces/piece';
import { lacedBlocks } from '../style/openings';
import type { Style } from '../style/style';
import type { Facing } from './mesh/layers';

/** None where the style asks for none, where nothing is laced, and where a facing has no room. */
export function facingsBehind({ closure, extras }: Style, pieces: readonly Piece[]): Facing[] {
  const width = extras?.facing?.width;
  if (width === undefined) return [];
  return lacedBlocks(closure).flatMap((block) => {
    const edge = lacedEdge(block, pieces);
    const shape = edge && facingShape(edge, width);
    const panel = pieces.find((piece) => piece.block === block && piece.number === 1);
    if (!shape || !panel) return [];
    const { centre, hem, inner, top } = shape;
    const runs = [centre, ...hem.map(({ points }) => points), inner];
    const upper = [...top].reverse().map(({ points }) => [...points].reverse());
    return [{ panel: panel.id, ring: [...runs, ...upper].flat() }];
  });
}
