// A lay plan as it is kept with the draft: its settings and where each outline lies. Outlines are not kept; they follow from the draft.

/** The layers of a garment that are cut from cloths of their own. */
export const LAY_LAYERS = ['fashion', 'strength', 'lining'] as const;

export type LayLayer = (typeof LAY_LAYERS)[number];

/** A piece of one of the drafts on a cloth: 0 is the draft the plan is kept with, the others follow in their order. */
export interface PieceOnCloth {
  readonly of: number;
  /** The piece's id. */
  readonly piece: string;
}

/** Another draft that lies on the same cloth, by the ids of its client and its own. */
export interface DraftOnCloth {
  readonly client: string;
  readonly draft: string;
}

/** The cloth of one layer, and what is asked of the lay. Lengths in mm. */
export interface LayCloth {
  /** From selvedge to selvedge, the selvedges left out. */
  readonly widthMm: number;
  /** Folded along its length, selvedge on selvedge: half as wide, and each outline cuts two. */
  readonly folded: boolean;
  /** A nap or a one-way print: all heads lie towards the start of the cloth. */
  readonly nap: boolean;
  /** How far the grain may lie off the length of the cloth, degrees to either side; 0 where it must not. */
  readonly grainDegrees: number;
  /** Between two cut lines. */
  readonly gapMm: number;
  /** What the cloth will shrink by along and across, as parts of it; pieces are laid so much larger. */
  readonly shrinkAlong: number;
  readonly shrinkAcross: number;
  /** How many layers of the garment are cut from it. */
  readonly layers: number;
  /** Of a yard or a metre, by the client's unit; null where none was given. */
  readonly price: number | null;
  /** Pieces that lie at 45° to the length of the cloth. */
  readonly bias: readonly PieceOnCloth[];
  readonly others: readonly DraftOnCloth[];
}

/** Where an outline lies: its least x along the cloth and its least y across, mm, and how it is turned and mirrored. */
export interface KeptPlace {
  readonly x: number;
  readonly y: number;
  /** Degrees from its grain lying along the cloth with its head first. */
  readonly turn: number;
  readonly mirrored: boolean;
}

export interface KeptLay {
  readonly layer: LayLayer;
  readonly cloth: LayCloth;
  /** A sum over the outlines it was made of, which tells whether they are still the same. */
  readonly madeOf: string;
  readonly lengthMm: number;
  /** The outlines' area as a part of what is used. */
  readonly density: number;
  /** In the order in which the pieces are cut. */
  readonly placed: readonly KeptPlace[];
}
