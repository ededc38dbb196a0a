// What a style asks for.

import type { BlockName, PerLevel } from '../terms/names';

/** The levels every draft has; a dart's point is placed from one of them. */
export const DART_LEVELS = ['bust', 'waist', 'hip'] as const;

/** Where a dart ends within its panel: so far below (+) or above (−) a level, mm. */
export interface DartPoint {
  readonly from: (typeof DART_LEVELS)[number];
  readonly below: number;
}

/**
 * Cloth taken out between two legs. From top edge to hem it parts two panels; with a point at one end it is an open dart,
 * with a point at both a closed one. On the centre line it always runs through.
 */
export interface Wedge {
  readonly id: string;
  readonly block: BlockName;
  /**
   * Where its axis stands: −1 on the centre line, 0 on the bust-point line, +1 at the side seam.
   * One number for all levels keeps the axis on one line of the body; `stationAt` bends it at single levels.
   */
  readonly station: number;
  readonly stationAt: Partial<PerLevel>;
  /** `balanced`: the engine sizes it from the girths. `hand`: `intake` holds, and the balanced ones work round it. */
  readonly sizing: 'balanced' | 'manual';
  /** Intake per level in mm, never negative; read when sized by hand, a level left out has none. */
  readonly intake: Partial<PerLevel>;
  /**
   * Fullness of the cup: what the wedge takes `below` mm under the bust line, instead of what the levels on both sides
   * would make it. Less leaves more room under the bust point. Left out where it does not lie between two levels.
   */
  readonly cup?: { readonly below: number; readonly intake: number };
  /** The dart's point towards the top edge; left out, the wedge reaches it. */
  readonly upper?: DartPoint;
  /** The dart's point towards the hem; left out, the wedge reaches it. */
  readonly lower?: DartPoint;
  /** Its part of what balancing has to place on this block, against the other wedges' weights. */
  readonly weight: number;
}

/** Where top edge and hem are given a height, from centre front round to centre back. */
export const EDGE_NODES = [
  'centreFront',
  'bustLine',
  'sideFront',
  'underarm',
  'sideBack',
  'centreBack',
] as const;
export type EdgeNodeName = (typeof EDGE_NODES)[number];

export interface EdgeNode {
  /** Beyond the level edge, mm: upwards at the top, downwards at the hem; negative the other way. */
  readonly beyond: number;
  /** `smooth`: the edge runs on, and meets a centre line square. `corner`: it may turn there. */
  readonly kind: 'smooth' | 'corner';
}

export type EdgeShape = Readonly<Record<EdgeNodeName, EdgeNode>>;

export const FRONT_CLOSURES = ['seam', 'fold', 'busk', 'lacing', 'hooks', 'zip'] as const;
export const BACK_CLOSURES = ['lacing', 'hooks', 'zip', 'seam', 'fold'] as const;

export interface Closure {
  /**
   * What is at centre front and at centre back. `fold`: cut on the fold. `seam`: joined. `busk`: opens along two straight
   * steels. `lacing`, `hooks`, `zip`: opens so; only a lacing is left open by a gap.
   */
  readonly front: (typeof FRONT_CLOSURES)[number];
  readonly back: (typeof BACK_CLOSURES)[number];
  /** Width left open at each laced centre, mm. */
  readonly lacingGap: number;
  /** One side seam opens with a zip. */
  readonly sideZip?: boolean;
}

/** Seam allowance per kind of edge, mm. */
export interface Allowances {
  readonly seam: number;
  /** The front and back side seam. */
  readonly side: number;
  readonly top: number;
  readonly hem: number;
  /** Centre front (where not on a fold) and centre back. */
  readonly centre: number;
}

/** Pieces beside the panels; what is left out is not cut. Lengths in mm. */
export interface Extras {
  /** Behind the gap of each lacing, lying under the garment by `overlap` on either side. */
  readonly modesty?: { readonly overlap: number };
  /** A strip behind each laced edge. */
  readonly facing?: { readonly width: number };
  /** A pair, doubled; `width` is the finished one. */
  readonly straps?: { readonly length: number; readonly width: number };
}

/** The lines a top edge may be measured from: a bodice's, an under-bust corset's, a cincher's. */
export const TOP_LEVELS = ['overBust', 'underBust', 'waist'] as const;
export type TopLevel = (typeof TOP_LEVELS)[number];

/** What a shouldered block has above the over-bust line. */
export interface Shoulders {
  /** The shoulder's tip lies so far below the neck point, mm. */
  readonly drop: number;
  /** The armhole goes in by so much at half its depth, mm. */
  readonly armholeIn: number;
  /** What the wedge that ends at mid-shoulder takes there, mm. */
  readonly intake: Readonly<Record<BlockName, number>>;
  /**
   * The block is cut off along its strapless top edge, and what lies above is an off-shoulder band. At centre front and
   * centre back it stands so far above that edge, mm. Left out, the panels run up to the shoulder.
   */
  readonly bandAbove?: number;
}

/** What is drafted, whoever wears it. Lengths in mm, shares as fractions. */
export interface Style {
  /** What the sewn garment measures more (+) or less (−) than the body, whole girth. */
  readonly ease: PerLevel;
  /** The front's part of each girth. */
  readonly frontShare: PerLevel;
  /** Over-bust line above the bust line. */
  readonly overBustAbove: number;
  /** The line the top edge is measured from. */
  readonly topFrom: TopLevel;
  /** Level top edge above (+) or below (−) that line. */
  readonly topAbove: number;
  /** Level hem below (+) or above (−) the waist line. */
  readonly hemBelow: number;
  /** How top edge and hem leave the level. */
  readonly topShape: EdgeShape;
  readonly hemShape: EdgeShape;
  readonly closure: Closure;
  /** The outermost front and back panel are cut in one; the seams beside them take the shaping of the side seam. */
  readonly joinedSide?: boolean;
  /** Neckline, shoulders and armhole instead of a strapless top edge; left out, there are none. */
  readonly shoulders?: Shoulders;
  readonly wedges: readonly Wedge[];
  readonly balance: {
    /** Part of the suppression the side seam takes. */
    readonly sideShare: number;
    /** The most one balanced wedge takes at a level. */
    readonly cap: number;
  };
  readonly allowances: Allowances;
  /** The hem is turned up: at its ends the allowance is cut to lie on the seam allowances. Left out, it is bound or faced. */
  readonly turnedHem?: boolean;
  readonly extras?: Extras;
  /** The wedges of the right half, where they are not those of the left; ids are told apart from `wedges`. */
  readonly rightWedges?: readonly Wedge[];
}

/** The most wedges a block may have. */
export const MOST_WEDGES = 6;

/** A panel narrower than this anywhere cannot be sewn and boned; drafts with one are refused. mm */
export const LEAST_PANEL_MM = 20;
