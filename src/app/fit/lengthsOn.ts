// The lengths of the seam in hand, to be written on the drawing beside its two edges.

import { formatLength, PROOFS, type Unit } from '../../document';
import type { Draft } from '../../engine';
import type { PointedOut, SeamLengths } from '../../table';
import { differencePhrase } from '../components/differenceWritten';

/** Both lengths and what they differ by, ease left aside; null where no seam is in hand. */
export function lengthsOn(place: PointedOut | null, { proof }: Draft, unit: Unit): SeamLengths | null {
  if (place?.kind !== 'seam') return null;
  const walk = proof.seams.find(({ a, b }) =>
    [a, b].every((side, i) => side.piece.id === place.pieces[i] && side.edge === place.edges[i]),
  );
  if (!walk) return null;
  const apart = walk.lengthB - walk.lengthA;
  return {
    edges: [walk.lengthA, walk.lengthB].map((mm) => formatLength(mm, unit, { withUnit: true })),
    difference:
      walk.ease === 0
        ? PROOFS.apart({ difference: differencePhrase(apart, unit) })
        : PROOFS.seamWalk.eased({ length: formatLength(apart, unit, { withUnit: true }) }),
  };
}
