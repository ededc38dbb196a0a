// Checks how a garment is closed: which centres lie on the fold, which must be straight, and whether a zip has allowance enough.

import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { inches, TAPE_TOLERANCE_MM } from '../terms/units';
import type { Block } from './block';

const BLOCK_NAMES: readonly BlockName[] = ['front', 'back'];

/** The least seam allowance for a zip: common practice, no source. mm */
const ZIP_ALLOWANCE_MM = inches(1);

/**
 * Which centres are cut on the fold, and the issues of the closure: a fold or a busk needs a straight centre line, and a wedge on it
 * makes it curved; a garment must open somewhere; a zip needs an allowance.
 */
export function checkClosure(
  blocks: Readonly<Record<BlockName, Block>>,
  { closure, joinedSide = false, allowances }: Pick<Style, 'closure' | 'joinedSide' | 'allowances'>,
): { onFold: Readonly<Record<BlockName, boolean>>; issues: Issue[] } {
  const issues: Issue[] = [];
  const onFold = { front: false, back: false };
  for (const block of BLOCK_NAMES) {
    const centre = blocks[block].wedges.find(
      (wedge) => wedge.onCentre && [...wedge.intake.values()].some((intake) => intake !== 0),
    );
    const place = { block, ...(centre ? { wedge: centre.id } : {}), field: `closure.${block}` };
    if (closure[block] === 'busk' && centre) issues.push(issue('buskNeedsStraightCentre', {}, place));
    if (closure[block] !== 'fold') continue;
    if (centre) issues.push(issue('foldBecomesSeam', {}, place));
    else onFold[block] = true;
  }
  const zips = [
    ...(BLOCK_NAMES.some((block) => closure[block] === 'zip') ? (['centre'] as const) : []),
    ...(closure.sideZip ? (['side'] as const) : []),
  ];
  for (const edge of zips)
    if (allowances[edge] < ZIP_ALLOWANCE_MM - TAPE_TOLERANCE_MM)
      issues.push(issue('zipNeedsAllowance', { least: ZIP_ALLOWANCE_MM }, { field: `allowances.${edge}` }));
  const zipped = closure.sideZip === true && !joinedSide;
  if (closure.sideZip && joinedSide) issues.push(issue('sideZipNeedsSeam', {}, { field: 'closure.sideZip' }));
  if (!zipped && BLOCK_NAMES.every((block) => closure[block] === 'fold' || closure[block] === 'seam'))
    issues.push(issue('noOpening', {}, { field: 'closure.back' }));
  return { onFold, issues };
}
