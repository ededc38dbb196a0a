// What closing a garment asks of its centre edges: which lie on the fold, and what must be straight.

import { type Issue, issue } from '../issue';
import type { Block } from './block';
import type { Closure, Side } from './types';

const SIDES: readonly Side[] = ['front', 'back'];

/**
 * Which centres are cut on the fold, and what there is to say: a fold or a busk needs a straight centre line, which a
 * wedge there curves; and a garment has to open somewhere.
 */
export function checkClosure(
  blocks: Readonly<Record<Side, Block>>,
  closure: Closure,
): { onFold: Readonly<Record<Side, boolean>>; issues: Issue[] } {
  const issues: Issue[] = [];
  const onFold = { front: false, back: false };
  for (const side of SIDES) {
    const centre = blocks[side].wedges.find(
      (wedge) => wedge.onCentre && [...wedge.intake.values()].some((intake) => intake !== 0),
    );
    const place = { block: side, ...(centre ? { wedge: centre.id } : {}), field: `closure.${side}` };
    if (closure[side] === 'busk' && centre) issues.push(issue('buskNeedsStraightCentre', 'block', place));
    if (closure[side] !== 'fold') continue;
    if (centre) issues.push(issue('foldBecomesSeam', 'note', place));
    else onFold[side] = true;
  }
  if (SIDES.every((side) => closure[side] === 'fold' || closure[side] === 'seam'))
    issues.push(issue('noOpening', 'warn', { field: 'closure.back' }));
  return { onFold, issues };
}
