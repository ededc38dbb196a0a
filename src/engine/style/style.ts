// What a style asks for: the one description that its type, its check, its stored form, style files and the limits of
// form fields and handles come from. Lengths are in mm, from the least to the most a draft can carry; what is usual is common
// practice without a source, each an editable default; front shares are from memory.

import { inches } from '../terms/units';
import {
  choice,
  type DataOf,
  everyLevel,
  type Fields,
  flag,
  group,
  length,
  main,
  optional,
  type Span,
  share,
  someLevels,
} from './fields';
import { wedgeList } from './wedgeFields';

/** The lines a top edge may be measured from: a bodice's, an under-bust corset's, the waist. */
export const TOP_LEVELS = ['overBust', 'underBust', 'waist'] as const;
export type TopLevel = (typeof TOP_LEVELS)[number];

export const FRONT_CLOSURES = ['seam', 'fold', 'busk', 'lacing', 'hooks', 'zip'] as const;
export const BACK_CLOSURES = ['lacing', 'hooks', 'zip', 'seam', 'fold'] as const;

const edgeNode = group({
  /** Beyond the level edge: upwards at the top, downwards at the hem; negative the other way. */
  beyond: main(length([-400, 400], 0)),
  /** `smooth`: the edge runs on, and meets a centre line square. `corner`: it may turn there. */
  kind: choice(['smooth', 'corner']),
});

/** How an edge leaves the level, at its places from centre front round to centre back. */
const edgeShape = group({
  centreFront: edgeNode,
  bustLine: edgeNode,
  sideFront: edgeNode,
  underarm: edgeNode,
  sideBack: edgeNode,
  centreBack: edgeNode,
});

const closure = group({
  /**
   * What is at centre front and at centre back. `fold`: cut on the fold. `seam`: joined. `busk`: opens along two straight
   * steels. `lacing`, `hooks`, `zip`: opens so; only a lacing is left open by a gap.
   */
  front: choice(FRONT_CLOSURES),
  back: choice(BACK_CLOSURES),
  /** Width left open at each laced centre. */
  lacingGap: length([0, 300], inches(2)),
  /** One side seam opens with a zip. */
  sideZip: optional(flag()),
});

/** What a shouldered block has above the over-bust line. */
const shoulders = group({
  /** The shoulder's tip lies so far below the neck point on both blocks. Left out, as measured, or 45 mm before and 35 behind. */
  drop: optional(length([0, 80], 40)),
  /** The armhole goes in by so much at half its depth. Left out, to the chest width and the back width. */
  armholeIn: optional(length([0, 40], inches(0.5))),
  /** The back shoulder is so much longer than the front's, and eased to it. Left out, 6 mm. */
  ease: optional(length([0, 25], 6)),
  /** The back's neck point lies so far above the nape. Left out, 20 mm. */
  rise: optional(length([0, 60], 20)),
  /**
   * What the wedge nearest to the bust-point line takes where it ends in neckline, shoulder or armhole. Left out, the front's
   * is as wide as its bust dart, and the back's 1/4 in.
   */
  intake: optional(
    group({ front: optional(length([0, 160], inches(0.5))), back: optional(length([0, 60], inches(0.25))) }),
  ),
  /**
   * The block is cut off along its strapless top edge, and what lies above is an off-shoulder band. At centre front and
   * centre back it stands so far above that edge. Left out, the panels run up to the shoulder.
   */
  bandAbove: optional(length([10, 150], inches(1.5))),
});

const ALLOWANCE: Span = [0, 100];

/** Seam allowance per kind of edge. */
const allowances = group({
  seam: length(ALLOWANCE, inches(0.5)),
  /** The front and back side seam. */
  side: length(ALLOWANCE, inches(1)),
  top: length(ALLOWANCE, inches(0.5)),
  hem: length(ALLOWANCE, inches(0.5)),
  /** Left out, these two are the top edge's. */
  armhole: optional(length(ALLOWANCE, inches(0.5))),
  neckline: optional(length(ALLOWANCE, inches(0.5))),
  /** Centre front (where not on a fold) and centre back. */
  centre: length(ALLOWANCE, inches(1)),
});

/** Pieces beside the panels; what is left out is not cut. */
const extras = group({
  /** Behind the gap of each lacing, lying under the garment by `overlap` on either side. */
  modesty: optional(group({ overlap: length([0, 150], inches(2)) })),
  /** A strip behind each laced edge. */
  facing: optional(group({ width: length([10, 200], inches(2)) })),
  /**
   * A pair of off-shoulder sleeves, each a ring round the upper arm: `depth` from its upper edge to its hem, `ease` over the arm,
   * `gathered` so much wider and drawn in, `joined` sewn to the top edge so far on either side of the side seam.
   */
  sleeve: optional(
    group({
      depth: length([20, 400], inches(3)),
      ease: length([-40, 200], inches(1.5)),
      gathered: length([0, 1000], 0),
      joined: length([0, 150], inches(1.75)),
    }),
  ),
  /** A pair, doubled; `width` is the finished one. */
  straps: optional(group({ length: length([50, 1500], inches(16)), width: length([5, 150], inches(1)) })),
});

/** What is drafted, whoever wears it. */
export const STYLE = group({
  /** What the sewn garment measures more (+) or less (−) than the body, whole girth. */
  ease: everyLevel('length', [-600, 600], {
    overBust: 0,
    bust: 0,
    underBust: 0,
    waist: -inches(2),
    highHip: 0,
    hip: 0,
  }),
  /** The front's part of a girth. A level left out has the usual share, the bust what the back leaves. */
  frontShare: someLevels('share', [0.2, 0.8]),
  /** Over-bust line above the bust line; left out, it lies at the armpit, or at the usual height where that is not known. */
  overBustAbove: optional(length([15, 150], inches(2))),
  /** The line the top edge is measured from. */
  topFrom: choice(TOP_LEVELS),
  /** Level top edge above (+) or below (−) the line it is measured from. */
  topAbove: length([-600, 200], 0),
  /** Level hem below (+) or above (−) the waist line. */
  hemBelow: length([-400, 800], inches(4)),
  topShape: edgeShape,
  hemShape: edgeShape,
  closure,
  /** The outermost front and back panel are cut in one; the seams beside them take the shaping of the side seam. */
  joinedSide: optional(flag()),
  /** The hem is turned up: at its ends the allowance is cut to lie on the seam allowances. Left out, it is bound or faced. */
  turnedHem: optional(flag()),
  /** Neckline, shoulders and armhole instead of a strapless top edge; left out, there are none. */
  shoulders: optional(shoulders),
  wedges: wedgeList,
  /** The wedges of the right half, where they are not those of the left; ids are told apart from `wedges`. */
  rightWedges: optional(wedgeList),
  balance: group({
    /** Part of the suppression the side seam takes. */
    sideShare: share([0, 1], 0.22),
    /** The most one balanced wedge takes at a level. */
    cap: length([0, 300], inches(2.25)),
  }),
  allowances,
  extras: optional(extras),
});

export type Style = DataOf<typeof STYLE>;
export type EdgeShape = DataOf<typeof edgeShape>;
export type EdgeNode = DataOf<typeof edgeNode>;
export type EdgeNodeName = keyof EdgeShape;
export type Closure = DataOf<typeof closure>;
export type Allowances = DataOf<typeof allowances>;
export type Shoulders = DataOf<typeof shoulders>;
export type Extras = DataOf<typeof extras>;

const namesOf = <Parts extends Fields>(of: { readonly fields: Parts }): (keyof Parts)[] =>
  Object.keys(of.fields);

/** Where top edge and hem are given a height, from centre front round to centre back. */
export const EDGE_NODES: readonly EdgeNodeName[] = namesOf(edgeShape);

/** The most wedges a block may have. */
export const MOST_WEDGES = 6;

/** A panel narrower than this anywhere cannot be sewn and boned; drafts with one are refused. mm */
export const LEAST_PANEL_MM = 20;
