// A plan of a cloth as data, and what keeps a piece off a cloth.

import type { Piece, Point } from '../../engine';
import type { Affine } from './affine';
import type { Cloth } from './cloth';

/** An outline on the cloth. */
export interface Placed {
  readonly piece: Piece;
  /** What its draft is called; null where all pieces are of one draft. */
  readonly of: string | null;
  readonly copy: number;
  readonly mirrored: boolean;
  readonly onFold: boolean;
  /** Degrees from its grain lying along the cloth with its head first. */
  readonly turn: number;
  /** The cut line on the cloth, its end not repeated: x along from the start, y across from the selvedge or the fold. mm */
  readonly outline: readonly Point[];
  /** From the coordinates of the piece to the cloth. */
  readonly onto: Affine;
}

export interface LayPlan {
  readonly cloth: Cloth;
  /** What is used along the cloth, mm. */
  readonly lengthMm: number;
  /** The outlines' area as a part of what is used. */
  readonly density: number;
  readonly placed: readonly Placed[];
}

export type LayFault =
  /** It is wider than the cloth in every way that it may lie. */
  | { readonly code: 'widerThanCloth'; readonly piece: Piece; readonly needsMm: number }
  /** It cannot lie on the fold, because its fold does not run along its grain. */
  | { readonly code: 'foldAcrossGrain'; readonly piece: Piece }
  /** It is asked for on the bias, and is cut on the fold of folded cloth. */
  | { readonly code: 'foldOnBias'; readonly piece: Piece };
