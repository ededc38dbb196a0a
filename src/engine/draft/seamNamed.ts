// The seams of a draft by the names that fittings give them, and where they end at the top edge and at the hem.

import type { PanelName, SeamEnd, SeamName } from '../alterations/terms/alteration';
import { isCentre } from '../alterations/terms/alterationsOfSide';
import type { SeamWalkRow } from '../checks/seamWalk';
import { hasArmhole } from '../pieces/edgeLookup';
import type { Piece } from '../pieces/piece';
import type { PieceIdentity, SeamIdentity } from '../terms/identity';
import type { BlockName } from '../terms/names';
import type { Draft } from './draft';

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

/**
 * The height at which a seam ends in the top edge or the hem, mm; null where it does not reach that edge from top to hem, and at the
 * top where neckline and armhole stand for its edge.
 */
export function seamEnd(draft: Draft, seam: SeamName, end: SeamEnd): number | null {
  const ys = edgeOf(draft, seam)?.points.map(({ y }) => y) ?? [];
  if (ys.length === 0 || (end === 'top' && hasArmhole(draft.pieces))) return null;
  return end === 'top' ? Math.min(...ys) : Math.max(...ys);
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
    // Of a side seam in which a dart opens the part below it ends in the hem.
    if (each.seam.kind === 'sideSeam' && each.seam.part === 'aboveDart') return false;
    const name = seamNameOf(each.seam, each);
    return name !== null && keyOfSeam(name) === keyOfSeam(seam);
  });
  return pieces.find(({ id }) => id === row?.a.piece.id)?.edges[row?.a.edge ?? -1];
}
