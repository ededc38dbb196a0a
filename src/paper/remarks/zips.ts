// Names the edges that close with a zip.

import { REMARKS } from '../../document';
import type { Edge, Piece, Style } from '../../engine';

const TEXTS = REMARKS.zips;

type Zipped = Pick<Style, 'closure' | 'joinedSide'>;

/**
 * "zip" for an edge that closes with one, "zip on the left" for a side seam on a piece that is cut twice; null for others. A side
 * zip is on the left (common practice, no source).
 */
export function zipOn({ side, block, cut }: Piece, { role, isSideSeam }: Edge, style: Zipped): string | null {
  if (role === 'centre') return style.closure[block] === 'zip' ? TEXTS.here : null;
  if (!isSideSeam || !hasSideZip(style) || side === 'right') return null;
  return side !== 'left' && (cut.count > 1 || cut.onFold) ? TEXTS.onTheLeft : TEXTS.here;
}

/** A sentence for each zip of the garment: "Zip in the left side seam; …". */
export const zipSentences = (style: Zipped): string[] => [
  ...(['front', 'back'] as const)
    .filter((block) => style.closure[block] === 'zip')
    .map((block) => TEXTS.centre({ block })),
  ...(hasSideZip(style) ? [TEXTS.side] : []),
];

const hasSideZip = ({ closure, joinedSide = false }: Zipped): boolean =>
  closure.sideZip === true && !joinedSide;
