// What is cut from a cloth: the pieces of the drafts that lie on it.

import type { LayCloth, LayLayer, PieceOnCloth } from '../../../document';
import type { Piece } from '../../../engine';
import { isCutOnce, type PieceToLay } from '../../../paper';

/** A draft whose pieces lie on a cloth. */
export interface ClothDraft {
  readonly name: string;
  readonly pieces: readonly Piece[];
}

/** The pieces of a draft that are cut from a layer. */
export const piecesOf = ({ pieces }: ClothDraft, layer: LayLayer): readonly Piece[] =>
  pieces.filter((piece) => layer === 'fashion' || !isCutOnce(piece));

/** The pieces of the drafts on a cloth, each as it is asked for; the first draft is the one the plan is kept with. */
export const askedOn = (
  drafts: readonly ClothDraft[],
  { layers, bias }: Pick<LayCloth, 'layers' | 'bias'>,
  layer: LayLayer,
): PieceToLay[] =>
  drafts.flatMap((draft, of) =>
    piecesOf(draft, layer).map((piece) => ({
      piece,
      of: drafts.length > 1 ? draft.name : null,
      layers: isCutOnce(piece) ? 1 : layers,
      bias: isOnBias(bias, { of, piece: piece.id }),
    })),
  );

export const isOnBias = (bias: readonly PieceOnCloth[], { of, piece }: PieceOnCloth): boolean =>
  bias.some((each) => each.of === of && each.piece === piece);

/** The pieces on the bias with one put there or taken away. */
export const withBias = (
  bias: readonly PieceOnCloth[],
  asked: PieceOnCloth,
  on: boolean,
): readonly PieceOnCloth[] => [
  ...bias.filter((each) => each.of !== asked.of || each.piece !== asked.piece),
  ...(on ? [asked] : []),
];

/** The cloth without one of the other drafts, counted from 0, and what was asked of its pieces. */
export const withoutOther = (cloth: LayCloth, index: number): LayCloth => ({
  ...cloth,
  others: cloth.others.filter((_, i) => i !== index),
  bias: cloth.bias
    .filter(({ of }) => of !== index + 1)
    .map(({ of, piece }) => ({ of: of > index + 1 ? of - 1 : of, piece })),
});
