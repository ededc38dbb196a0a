// The layers of cloth that a piece is cut from.

import type { Piece } from '../../engine';
import type { MakingSettings } from './settings';

export type LayerName = 'fashion' | 'strength' | 'lining';

export interface Layer {
  readonly layer: LayerName;
  /** How many of it the garment has. */
  readonly count: number;
}

const LAYER_NAMES: readonly LayerName[] = ['fashion', 'strength', 'lining'];

/** Pieces that are cut of the outer layer only; panels and modesty panel are cut of every layer. Common practice, no source. */
const ONCE: readonly Piece['kind'][] = ['facing', 'strap', 'sleeve'];

/** True of a piece that is cut from one layer only, not from each. */
export const isCutOnce = ({ kind }: Pick<Piece, 'kind'>): boolean => ONCE.includes(kind);

/** The layers of the garment, outermost first; empty where all counts are 0. */
export const layersOf = (counts: Pick<MakingSettings, LayerName>): Layer[] =>
  LAYER_NAMES.map((layer) => ({ layer, count: counts[layer] })).filter(({ count }) => count > 0);

/** The layers that a piece is cut from: all of them, or one of the outermost. */
export function layersOfPiece(
  piece: Pick<Piece, 'kind'>,
  counts: Pick<MakingSettings, LayerName>,
): readonly Layer[] {
  const all = layersOf(counts);
  return isCutOnce(piece) ? all.slice(0, 1).map(({ layer }) => ({ layer, count: 1 })) : all;
}
