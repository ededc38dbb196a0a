// Where a seam ends at the top edge and at the hem, as heights that an alteration can name.

import { type Draft, isCentre, type Piece, type SeamHeight, type SeamName } from '../../../../engine';
import { edgesOf, keyOfSeam, seamNameOf } from './alterable';

export type SeamEnd = 'top' | 'hem';

type BelowWaist = Extract<SeamHeight, { kind: 'belowWaist' }>;

export const SEAM_ENDS: readonly SeamEnd[] = ['top', 'hem'];

/** Nearer than this a height is the seam's end. mm */
const AT_END_MM = 0.5;

/**
 * How far below the waist a seam ends; null where it does not reach that edge from top to hem.
 *
 * @param unaltered the draft without its alterations, whose heights are those that alterations name
 */
export function seamEnd(unaltered: Draft, seam: SeamName, end: SeamEnd): BelowWaist | null {
  const waist = unaltered.span?.waist;
  const ys = edgeOf(unaltered, seam)?.points.map(({ y }) => y) ?? [];
  if (waist === undefined || ys.length === 0 || !edgesOf(unaltered).includes(end)) return null;
  const y = end === 'top' ? Math.min(...ys) : Math.max(...ys);
  return { kind: 'belowWaist', mm: Math.round((y - waist) * 10) / 10 };
}

/** The end at which a height lies; null for one between. */
export function endAt(unaltered: Draft, seam: SeamName, height: SeamHeight): SeamEnd | null {
  if (height.kind !== 'belowWaist') return null;
  return (
    SEAM_ENDS.find((end) => {
      const own = seamEnd(unaltered, seam, end);
      return own !== null && Math.abs(own.mm - height.mm) < AT_END_MM;
    }) ?? null
  );
}

function edgeOf({ pieces, proof }: Draft, seam: SeamName): Piece['edges'][number] | undefined {
  if (seam.kind === 'dart') return undefined;
  const [panel] = seam.pieces;
  if (isCentre(seam))
    return pieces
      .find(
        ({ kind, block, number }) =>
          panel.kind === 'panel' && kind === 'panel' && panel.block === block && panel.number === number,
      )
      ?.edges.find(({ at }) => at === 'inner');
  const row = proof.seams.find((each) => {
    const name = seamNameOf(each.seam, each);
    return name !== null && keyOfSeam(name) === keyOfSeam(seam);
  });
  return pieces.find(({ id }) => id === row?.a.piece.id)?.edges[row?.a.edge ?? -1];
}
