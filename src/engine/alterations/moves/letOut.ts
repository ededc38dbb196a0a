// Seams let out by more than their allowance: the mock-up as sewn has no cloth for it.

import { leastBetween } from '../../geometry/smoothLine';
import type { Panel } from '../../panels/panel';
import type { Seam } from '../../panels/seamEdge';
import type { Style } from '../../style/style';
import { identityOf } from '../../terms/identity';
import { type Issue, issue } from '../../terms/issue';
import { TAPE_TOLERANCE_MM } from '../../terms/units';
import { sumOfChanges } from './changeLine';
import type { PlannedSeam } from './seams';

/**
 * A note for each edge that is let out by more than its seam allowance.
 *
 * @param plannedOn the planned alterations of a seam
 */
export function letOutIssues(
  seams: readonly Seam[],
  plannedOn: (seam: Seam) => readonly PlannedSeam[],
  { highest, lowest }: { readonly highest: number; readonly lowest: number },
  allowances: Style['allowances'],
): Issue[] {
  return seams.flatMap((seam) => {
    const planned = plannedOn(seam);
    const allowance = allowances[allowanceOfSeam(seam)];
    return (['a', 'b'] as const).flatMap((mate) => {
      const edge = seam[mate];
      // Together they let out no more than each by itself at its most.
      if (planned.reduce((sum, each) => sum + Math.min(0, ...each[mate].xs), 0) > -allowance) return [];
      const change = sumOfChanges(planned.map((each) => each[mate]));
      const out = change ? -leastBetween(change, highest, lowest).x : 0;
      return edge && out > allowance + TAPE_TOLERANCE_MM
        ? [issue('letOutPastAllowance', { out, allowance }, placeOf(seam, edge.panel))]
        : [];
    });
  });
}

const placeOf = ({ identity }: Seam, panel: Panel): Issue['at'] => ({
  block: panel.block,
  piece: identityOf(panel),
  seam: identity,
});

function allowanceOfSeam({ identity, a, b }: Seam): 'seam' | 'side' | 'centre' {
  if (identity.kind === 'centre') return 'centre';
  const isAtSide = [a, b].some((edge) => edge?.panel.kind === 'sidePanel');
  return identity.kind === 'sideSeam' || isAtSide ? 'side' : 'seam';
}
