// The text along an edge: its name, the panel it is sewn to, its allowance, what is eased in and a zip.

import { edgeTitle, formatLength, type LengthUnit, PATTERN, pieceLabel } from '../../document';
import type { Edge, Piece, Style } from '../../engine';
import { zipOn } from '../remarks/zips';
import { foldOf } from './panelLines';

const TEXTS = PATTERN.edge;

/**
 * Examples: "To Front 2 · ½ in", "Side seam, to Back 3 · 1 in · zip on the left", "Hem · no allowance", "Centre front · place on
 * fold".
 */
export function edgeText(piece: Piece, edge: Edge, unit: LengthUnit, style: Style): string {
  const title = edgeTitle(edge, piece);
  if (edge === foldOf(piece)) return TEXTS.onFold({ edge: title });
  const mate = edge.mate && pieceLabel(edge.mate.piece);
  const isPlainSeam = edge.role === 'seam' && !edge.isSideSeam;
  const first = !mate
    ? title
    : isPlainSeam
      ? TEXTS.to({ piece: mate })
      : TEXTS.namedTo({ edge: title, piece: mate });
  const allowance =
    edge.allowance > 0 ? formatLength(edge.allowance, unit, { withUnit: true }) : TEXTS.noAllowance;
  const ease = edge.ease ? TEXTS.ease({ length: formatLength(edge.ease, unit, { withUnit: true }) }) : null;
  return [first, allowance, ease, zipOn(piece, edge, style)].filter((part) => part !== null).join(' · ');
}
