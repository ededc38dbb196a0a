// Zips and hook tape, which are bought by the length of their edge.

import { type Draft, polylineLength, type Style } from '../../engine';
import { centreEdges } from './lacedEdges';

export interface Fastening {
  readonly kind: 'zip' | 'hooks';
  readonly place: 'front' | 'back' | 'side';
  /** Length of the finished edge or seam it is sewn to, mm. */
  readonly edgeMm: number;
}

/** A fastening for each centre that closes with a zip or hooks, and one for a zip in the side seam. */
export function fasteningsOf(draft: Draft, { closure }: Style): Fastening[] {
  const centres = (['front', 'back'] as const).flatMap((place): Fastening[] => {
    const kind = closure[place];
    const [centre] = kind === 'zip' || kind === 'hooks' ? centreEdges(draft, place) : [];
    if (!centre || (kind !== 'zip' && kind !== 'hooks')) return [];
    return [{ kind, place, edgeMm: polylineLength(centre.edge.points) }];
  });
  // A dart that opens in the side seam parts it, and the zip is sewn over it.
  const [first] = draft.proof.seams.filter(({ seam }) => seam.kind === 'sideSeam');
  const sideSeam = draft.proof.seams.filter(
    ({ seam }) => seam.kind === 'sideSeam' && seam.side === first?.seam.side,
  );
  return closure.sideZip && first
    ? [
        ...centres,
        { kind: 'zip', place: 'side', edgeMm: sideSeam.reduce((sum, { lengthA }) => sum + lengthA, 0) },
      ]
    : centres;
}
