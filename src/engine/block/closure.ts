// What closing a garment asks of its centre edges: which lie on the fold, what must be straight, what a zip wants.

import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { Side } from '../terms/names';
import { inches } from '../terms/units';
import type { Block } from './block';

const SIDES: readonly Side[] = ['front', 'back'];

/** What is added at a seam for a zip: common practice, no source. mm */
const ZIP_ALLOWANCE_MM = inches(1);

/**
 * Which centres are cut on the fold, and what there is to say: a fold or a busk needs a straight centre line, which a
 * wedge there curves; and a garment has to open somewhere.
 */
export function checkClosure(
  blocks: Readonly<Record<Side, Block>>,
  { closure, joinedSide = false, allowances }: Pick<Style, 'closure' | 'joinedSide' | 'allowances'>,
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
  const zips = [
    ...(SIDES.some((side) => closure[side] === 'zip') ? (['centre'] as const) : []),
    ...(closure.sideZip ? (['side'] as const) : []),
  ];
  for (const edge of zips)
    if (allowances[edge] < ZIP_ALLOWANCE_MM)
      issues.push(
        issue('zipNeedsAllowance', 'warn', { field: `allowances.${edge}` }, { least: ZIP_ALLOWANCE_MM }),
      );
  const zipped = closure.sideZip === true && !joinedSide;
  if (closure.sideZip && joinedSide)
    issues.push(issue('sideZipNeedsSeam', 'block', { field: 'closure.sideZip' }));
  if (!zipped && SIDES.every((side) => closure[side] === 'fold' || closure[side] === 'seam'))
    issues.push(issue('noOpening', 'warn', { field: 'closure.back' }));
  return { onFold, issues };
}
