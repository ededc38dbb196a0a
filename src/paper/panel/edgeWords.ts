// What becomes of an edge, in the words that stand on it.

import { edgeName, formatLength, type LengthUnit, pieceLabel } from '../../document';
import type { Edge, Piece, Style } from '../../engine';
import { zipOn } from '../zips';
import { foldOf } from './panelLines';

/**
 * "To Front 2 · ½ in", "Side seam, to Back 3 · 1 in · zip on the left", "Hem · no allowance", "Centre front · place on fold".
 */
export function edgeWords(piece: Piece, edge: Edge, unit: LengthUnit, style: Style): string {
  const name = edgeName(edge, piece);
  if (edge === foldOf(piece)) return `${capital(name)} · place on fold`;
  const to = edge.mate ? `to ${pieceLabel(edge.mate.piece)}` : null;
  const called = edge.role === 'seam' && !edge.isSideSeam && to ? to : to ? `${name}, ${to}` : name;
  const allowance =
    edge.allowance > 0 ? formatLength(edge.allowance, unit, { withUnit: true }) : 'no allowance';
  return [capital(called), allowance, zipOn(piece, edge, style)].filter((part) => part !== null).join(' · ');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
