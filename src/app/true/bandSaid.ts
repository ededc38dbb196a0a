// What is not drawn among the panels closed up: the off-shoulder band, and how its edge stands against theirs.

import { formatDifference, formatLength, type Unit } from '../../document';
import { type BandWalkRow, bandWalk, type Draft } from '../../engine';

/** More than this is eased in, and said so. mm */
const EVEN_MM = 0.1;

/** A sentence for each half with a band of its own; empty where there is none. */
export const sayBands = (draft: Draft, unit: Unit): string[] => bandWalk(draft).map((row) => said(row, unit));

function said({ side, bands, panels }: BandWalkRow, unit: Unit): string {
  const length = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const apart = bands - panels;
  const whose = side === null ? 'The off-shoulder band is' : `The ${side} half’s off-shoulder band is`;
  const even =
    Math.abs(apart) <= EVEN_MM
      ? 'as long as'
      : `${formatDifference(apart, unit)} ${apart > 0 ? 'longer' : 'shorter'} than`;
  return `${whose} not drawn here. Front and back together its lower edge is ${length(bands)}, ${even} the top edges it is sewn to, mark to mark${Math.abs(apart) <= EVEN_MM ? '' : '; ease the difference in'}.`;
}
