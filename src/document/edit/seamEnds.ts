// The seams of a draft by the names that fittings give them, and where they end at the top edge and at the hem.

import {
  type BlockName,
  type Draft,
  hasArmhole,
  isCentre,
  type PanelName,
  type Piece,
  type PieceIdentity,
  type SeamHeight,
  type SeamIdentity,
  type SeamName,
  type SeamWalkRow,
} from '../../engine';

const panelName = ({ kind, block, number }: PieceIdentity): PanelName =>
  kind === 'sidePanel' ? { kind } : { kind: 'panel', block, number };

/** The seam, or the open edge, at the centre of a block. */
export function centreSeam(block: BlockName): SeamName {
  const panel: PanelName = { kind: 'panel', block, number: 1 };
  return { kind: 'seam', pieces: [panel, panel] };
}

/** The name under which a seam of the draft is altered; null for one that no fitting alters. */
export function seamNameOf(seam: SeamIdentity, walk: Pick<SeamWalkRow, 'a' | 'b'> | null): SeamName | null {
  switch (seam.kind) {
    case 'dart':
      return { kind: 'dart', wedge: seam.wedge };
    case 'centre':
      return centreSeam(seam.block);
    case 'wedge':
    case 'sideSeam':
      return walk && { kind: 'seam', pieces: [panelName(walk.a.piece), panelName(walk.b.piece)] };
    default:
      return null;
  }
}

/** The same seam has the same key. */
export const keyOfSeam = (seam: SeamName): string => JSON.stringify(seam);

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
  if (waist === undefined || ys.length === 0 || (end === 'top' && hasArmhole(unaltered.pieces))) return null;
  const y = end === 'top' ? Math.min(...ys) : Math.max(...ys);
  return { kind: 'belowWaist', mm: Math.round((y - waist) * 10) / 10 };
}

/** The end at which a height lies; null for one between. */
export function seamEndAt(unaltered: Draft, seam: SeamName, height: SeamHeight): SeamEnd | null {
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
