// The seam allowances of a style.

import type { Allowances, Style } from '../../engine';

/** The allowances that a style may leave open, so that they follow the top edge's. */
const FOLLOWING: readonly (keyof Allowances)[] = ['armhole', 'neckline'];

/** Whether an allowance may be left open. */
export const followsTop = (edge: keyof Allowances): boolean => FOLLOWING.includes(edge);

/** A style with one of its allowances set, mm; null takes away one that may be left open, and is 0 for the others. */
export function setAllowance(style: Style, edge: keyof Allowances, mm: number | null): Style {
  if (mm !== null || !followsTop(edge))
    return { ...style, allowances: { ...style.allowances, [edge]: mm ?? 0 } };
  const { [edge]: _, ...others } = style.allowances;
  return { ...style, allowances: others as Allowances };
}

/** The edges with an allowance of their own, in the order in which they are asked for. */
export const allowanceEdges = ({ shoulders }: Style): (keyof Allowances)[] => [
  'seam',
  'side',
  'top',
  ...(shoulders ? FOLLOWING : []),
  'centre',
  'hem',
];
