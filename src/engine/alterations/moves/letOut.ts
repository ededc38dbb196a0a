// Seams let out by more than their allowance: the mock-up as sewn has no cloth for it.

import { leastBetween } from '../../geometry/smoothLine';
import type { Panel } from '../../panels/panel';
import type { Seam } from '../../panels/seamEdge';
import type { Style } from '../../style/style';
import { identityOf } from '../../terms/identity';
import { type Issue, issue } from '../../terms/issue';
import { TAPE_TOLERANCE_MM } from '../../terms/units';
import type { SeamLines } from '../closed/seamLines';
import type { PlannedSeams, SeamChanges } from './seams';

/**
 * A note for each edge that is let out by more than its seam allowance.
 *
 * @param made the alterations that were made, and `changes` what they add up to
 */
export function letOutIssues(
  lines: SeamLines,
  { made, changes }: { readonly made: PlannedSeams; readonly changes: SeamChanges },
  { highest, lowest }: { readonly highest: number; readonly lowest: number },
  allowances: Style['allowances'],
): Issue[] {
  const issues: Issue[] = [];
  for (const [seam, line] of lines) {
    const allowance = allowances[allowanceOfSeam(seam)];
    // Each at its most, wherever that is.
    let mostOut = 0;
    for (const each of made.get(line) ?? []) mostOut += each.mostOut;
    if (mostOut < allowance) continue;
    for (const mate of ['a', 'b'] as const) {
      const [edge, change] = [seam[mate], changes.get(line)?.[mate]];
      if (!edge || !change) continue;
      const out = -leastBetween(change, highest, lowest).x;
      if (out > allowance + TAPE_TOLERANCE_MM)
        issues.push(issue('letOutPastAllowance', { out, allowance }, placeOf(seam, edge.panel)));
    }
  }
  return issues;
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
