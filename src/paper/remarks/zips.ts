// Which edges close with a zip, as the pattern says it: a seam that opens is not sewn like the others.

import type { Edge, Piece, Style } from '../../engine';

type Zipped = Pick<Style, 'closure' | 'joinedSide'>;

/**
 * "zip" on an edge that closes with one, "zip on the left" on a side seam of which the garment has two; null elsewhere. It is
 * worn on the left as a rule (common practice, no source).
 */
export function zipOn({ side, block, cut }: Piece, { role, isSideSeam }: Edge, style: Zipped): string | null {
  if (role === 'centre') return style.closure[block] === 'zip' ? 'zip' : null;
  if (!isSideSeam || !hasSideZip(style) || side === 'right') return null;
  return side === 'left' ? 'zip' : cut.count > 1 || cut.onFold ? 'zip on the left' : 'zip';
}

/** "Zip in the left side seam.", a sentence each; none where the garment has no zip. */
export const zipSentences = (style: Zipped): string[] => [
  ...(['front', 'back'] as const)
    .filter((block) => style.closure[block] === 'zip')
    .map((block) => `Zip at centre ${block}.`),
  ...(hasSideZip(style) ? ['Zip in the left side seam; the right one is sewn.'] : []),
];

const hasSideZip = ({ closure, joinedSide = false }: Zipped): boolean =>
  closure.sideZip === true && !joinedSide;
