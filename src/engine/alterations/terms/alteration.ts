// Alterations after a fitting: each names one place of a draft and what is done there. Amounts in mm; + takes in, shortens, raises.

import type { BlockName, LevelName, Side } from '../../terms/names';

/** A panel by where it is counted; the side panel in one has no number. */
export type PanelName =
  | { readonly kind: 'panel'; readonly block: BlockName; readonly number: number }
  | { readonly kind: 'sidePanel' };

/**
 * A seam by the two panels that it joins, a dart by its wedge. The side seam joins the outermost two. A centre seam joins a panel
 * to itself: its first amount is the left half's, its second the right half's.
 */
export type SeamName =
  | { readonly kind: 'seam'; readonly pieces: readonly [PanelName, PanelName] }
  | { readonly kind: 'dart'; readonly wedge: string };

/** The half or halves that an alteration is made on. */
export type AlteredSide = Side | 'both';

/** A height on a seam: a level, its end in the top edge or the hem wherever that lies, or mm below the waist (negative above it). */
export type SeamHeight =
  | { readonly kind: 'level'; readonly level: LevelName }
  | { readonly kind: 'end'; readonly end: SeamEnd }
  | { readonly kind: 'belowWaist'; readonly mm: number };

export const SEAM_ENDS = ['top', 'hem'] as const;

export type SeamEnd = (typeof SEAM_ENDS)[number];

export const LANDMARKS = ['centreFront', 'bustLine', 'side', 'centreBack'] as const;

/** A place round the body. */
export type AlteredPlace =
  | { readonly kind: 'landmark'; readonly name: (typeof LANDMARKS)[number] }
  | SeamName;

type AlteredEdge = 'top' | 'hem' | 'neckline' | 'armhole';

/** From where to where a garment is shortened: two levels, or above the first the top edge, below the last the hem. */
export type LengthBound = LevelName | 'top' | 'hem';

/** Takes in or lets out: `a` at the edge of the first panel (the dart's leg towards the centre), `b` at its mate. */
export interface SeamAlteration {
  readonly kind: 'seam';
  readonly seam: SeamName;
  readonly side: AlteredSide;
  readonly at: readonly { readonly height: SeamHeight; readonly a: number; readonly b: number }[];
}

/** Shortens or lengthens between two levels, by amounts that run straight from place to place round the closed body. */
export interface LengthAlteration {
  readonly kind: 'length';
  readonly between: readonly [LengthBound, LengthBound];
  readonly side: AlteredSide;
  readonly at: readonly PlacedAmount[];
}

/** Raises or lowers an edge. */
export interface EdgeAlteration {
  readonly kind: 'edge';
  readonly edge: AlteredEdge;
  readonly side: AlteredSide;
  readonly at: readonly PlacedAmount[];
}

/** Corrects where the bust point was measured: farther out from the centre, farther down. */
export interface BustPointAlteration {
  readonly kind: 'bustPoint';
  readonly side: AlteredSide;
  readonly out: number;
  readonly down: number;
}

export interface PlacedAmount {
  readonly place: AlteredPlace;
  readonly by: number;
}

export type Alteration = SeamAlteration | LengthAlteration | EdgeAlteration | BustPointAlteration;

/** Why an alteration could not be made; it is kept, and made again where the reason is gone. */
export type RefusalCode =
  /** The style has no such seam or dart. */
  | 'seamGone'
  /** The draft has no such level, or the bounds are not in order. */
  | 'levelGone'
  /** The place does not stand on this edge or this style. */
  | 'placeGone'
  /** The garment has no such edge. */
  | 'edgeGone'
  /** The height lies past the end of the dart or seam, or at it. */
  | 'beyondSeam'
  /** The centre lies on a fold or takes a busk, and stays straight. */
  | 'centreStraight'
  /** The edges of a panel would meet or cross. */
  | 'panelCrossed'
  /** A dart is let out past its own intake. */
  | 'dartClosed'
  /** The dart was turned into the side seam; its width is the style's. */
  | 'dartTurned'
  /** Too little would be left between two levels. */
  | 'lengthUsedUp'
  /** The corrected bust point cannot be drafted. */
  | 'bustPointOutOfSpan'
  /** An amount or height beyond every span. */
  | 'amountOutOfSpan'
  /** The draft did not come as far. */
  | 'notDrafted';

/** What became of an alteration. */
export interface AlterationOutcome {
  readonly applied: boolean;
  /** Null where it was applied. */
  readonly code: RefusalCode | null;
}

export const APPLIED: AlterationOutcome = { applied: true, code: null };

/** The outcome of an alteration that was not made. */
export const refused = (code: RefusalCode): AlterationOutcome => ({ applied: false, code });
