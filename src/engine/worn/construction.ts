// How a draft is made up: what is open, boned and taped, and what lies behind its panels.

import type { Draft } from '../draft/draft';
import { facingShape } from '../extras/facing';
import { lacedEdge } from '../extras/lacedEdge';
import type { Piece } from '../pieces/piece';
import { lacedBlocks } from '../style/openings';
import type { Style } from '../style/style';
import { type Construction, USUAL_CLOTH } from './cloth/garmentEnergy';
import type { Facing } from './mesh/layers';

/** The construction of a style's draft, or of one half of it. */
export function constructionOf(
  style: Style,
  { levels, pieces }: Pick<Draft, 'levels' | 'pieces'>,
): Construction {
  const { closure } = style;
  const openAt = (block: 'front' | 'back'): number | null =>
    closure[block] === 'lacing' ? closure.lacingGap / 2 : null;
  return {
    open: { front: openAt('front'), back: openAt('back') },
    busk: closure.front === 'busk',
    waistY: levels.find(({ name }) => name === 'waist')?.y ?? null,
    bones: true,
    cloth: USUAL_CLOTH,
    facings: facingsBehind(style, pieces),
  };
}

/** None where the style asks for none, where nothing is laced, and where a facing has no room. */
export function facingsBehind({ closure, extras }: Style, pieces: readonly Piece[]): Facing[] {
  const width = extras?.facing?.width;
  if (width === undefined) return [];
  return lacedBlocks(closure).flatMap((block) => {
    const edge = lacedEdge(block, pieces);
    const shape = edge && facingShape(edge, width);
    const panel = pieces.find((piece) => piece.block === block && piece.number === 1);
    return shape && panel ? [{ panel: panel.id, ring: shape.outline.flatMap(({ points }) => points) }] : [];
  });
}
