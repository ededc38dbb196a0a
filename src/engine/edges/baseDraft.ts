// What panels are cut from: the blocks, top edge and hem over them, and the shoulders where there are any.

import { type Amendments, NO_AMENDMENTS } from '../block/amendments';
import { type Block, draftBlock } from '../block/block';
import type { Level } from '../block/lines/levels';
import { topHeight } from '../block/lines/topHeight';
import type { ShoulderFrame } from '../block/shoulders/shoulderFrame';
import { shouldersOf } from '../block/shoulders/shoulders';
import type { Body } from '../body/body';
import type { EdgeShape, Style } from '../style/style';
import type { Issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { type DraftedEdge, draftEdge } from './edgeLine';

export interface BaseDraft {
  readonly levels: readonly Level[];
  readonly blocks: Readonly<Record<BlockName, Block>>;
  readonly edges: { readonly top: DraftedEdge; readonly hem: DraftedEdge };
  /** Shoulders that the panels run up to; null where the panels are strapless. */
  readonly shoulders: Readonly<Record<BlockName, ShoulderFrame>> | null;
  /** Shoulders that are cut off as a band. */
  readonly bands: Readonly<Record<BlockName, ShoulderFrame>> | null;
  readonly span: DraftSpan;
}

/** Heights of a draft, mm. */
export interface DraftSpan {
  /** The level edges that nodes are measured from. */
  readonly top: number;
  readonly hem: number;
  readonly waist: number;
  /** The highest place of the top edge and the lowest of the hem, as drafted. */
  readonly highest: number;
  readonly lowest: number;
}

/** Drafts blocks, top edge, hem and shoulders on the levels, which are not empty, and reports what is wrong with them. */
export function makeBaseDraft(
  body: Body,
  style: Style,
  levels: readonly Level[],
  amendments: Amendments = NO_AMENDMENTS,
): { baseDraft: BaseDraft; issues: Issue[] } {
  const top = topHeight(body, style);
  const hem = body.neckToWaist + style.hemBelow;
  const { shouldered, issues } = shouldersOf(body, style, levels, top);
  const asBand = style.shoulders?.bandAbove !== undefined;
  const frames = shouldered?.frames ?? null;
  const shoulders = asBand ? null : frames;
  const blockFrame = { levels, top, shouldered: asBand ? null : shouldered };
  const front = draftBlock('front', body, blockFrame, style, amendments);
  const back = draftBlock('back', body, blockFrame, style, amendments);
  const blocks = { front: front.block, back: back.block };
  const topShape = shoulders ? underShoulders(style.topShape, shoulders, top) : style.topShape;
  const edges = {
    top: draftEdge(blocks, topShape, top, -1),
    hem: draftEdge(blocks, style.hemShape, hem, 1),
  };
  return {
    baseDraft: {
      levels,
      blocks,
      edges,
      shoulders,
      bands: asBand ? frames : null,
      span: {
        top,
        hem,
        waist: body.neckToWaist,
        ...reachOf(edges, shoulders),
      },
    },
    issues: [...issues, ...front.issues, ...back.issues],
  };
}

/** The highest place of the top edge and the lowest of the hem, mm. */
export const reachOf = (
  edges: BaseDraft['edges'],
  shoulders: BaseDraft['shoulders'],
): Pick<DraftSpan, 'highest' | 'lowest'> => ({
  highest: shoulders ? Math.min(shoulders.front.neck.y, shoulders.back.neck.y) : knotSpan(edges.top).least,
  lowest: knotSpan(edges.hem).most,
});

/** With shoulders the neckline ends at the nape behind, and the armhole at its own base. */
const underShoulders = (
  shape: EdgeShape,
  { back }: Readonly<Record<BlockName, ShoulderFrame>>,
  top: number,
): EdgeShape => ({
  ...shape,
  underarm: { beyond: top - back.underarm.y, kind: 'smooth' },
  centreBack: { beyond: top - back.centre.point.y, kind: 'smooth' },
});

/** The least and the greatest height of the knots of an edge, mm. */
function knotSpan({ lines }: DraftedEdge): { least: number; most: number } {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const line of [...lines.front, ...lines.back])
    for (const height of line.xs) {
      least = Math.min(least, height);
      most = Math.max(most, height);
    }
  return { least, most };
}
