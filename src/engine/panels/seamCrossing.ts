// Where top edge and hem, as drafted, cross each seam, before the mates are trued.

import type { Block } from '../block/block';
import {
  type Crossing,
  crossingAt,
  type DraftedEdge,
  type EdgeLine,
  sewnDistanceAt,
} from '../edges/edgeLine';
import { xAt } from '../geometry/smoothLine';
import type { BlockName } from '../terms/names';
import type { Panel } from './panel';
import { isFacing, type Seam, type SeamEdge } from './seamEdge';

/** An edge where it meets a seam. Slopes are dy/dx on each mate's own panel. */
export interface SeamCrossing {
  readonly y: number;
  readonly slopeA: number;
  /** 0 at a centre edge, where there is no other mate. */
  readonly slopeB: number;
  /** Distance along the edge with the wedges sewn up, mm, as each mate's panel counts it. */
  readonly sewnDistanceA: number;
  readonly sewnDistanceB: number;
  /**
   * `follows`: the first mate ends at `y`, where the edge runs on at this angle, rad; the second is as long, and its edge takes all
   * of the turn. `square`: the edge meets both mates at a right angle, or near one where they lean far apart. Left out, mates share
   * what they differ by.
   */
  readonly end?: { readonly kind: 'follows'; readonly angle: number } | { readonly kind: 'square' };
}

/** Where a drafted edge crosses a seam; each mate counts it on its own panel. */
export function seamCrossing(
  seam: Seam,
  edge: DraftedEdge,
  blocks: Readonly<Record<BlockName, Block>>,
): SeamCrossing {
  const { a, b } = seam;
  const sewnDistanceA =
    seam.identity.kind === 'centre' && a.panel.number === 1 ? 0 : sewnDistanceOf(a, edge, blocks);
  const onA = crossingAt(edgeOver(a.panel, edge), sewnDistanceA);
  if (!b)
    return { y: onA.y, slopeA: towards(a, onA), slopeB: 0, sewnDistanceA, sewnDistanceB: sewnDistanceA };
  // Sewn, nothing lies between mates; only those that face each other are counted from different ends.
  const sewnDistanceB = isFacing(seam) ? sewnDistanceOf(b, edge, blocks) : sewnDistanceA;
  const onB = crossingAt(edgeOver(b.panel, edge), sewnDistanceB);
  return { y: onA.y, slopeA: towards(a, onA), slopeB: towards(b, onB), sewnDistanceA, sewnDistanceB };
}

/** The part of an edge that a panel is cut along. */
export const edgeOver = (panel: Panel, { lines }: DraftedEdge): EdgeLine =>
  lines[panel.kind === 'sidePanel' ? 'wholeEdge' : panel.block];

/** On the panel a leg belongs to, the edge runs from its inner leg towards the side, from its outer one towards the centre. */
const towards = ({ which }: SeamEdge, crossing: Crossing): number =>
  which === 'inner' ? crossing.after : crossing.before;

function sewnDistanceOf(
  seamEdge: SeamEdge,
  { base, whole }: DraftedEdge,
  blocks: Readonly<Record<BlockName, Block>>,
): number {
  const { block, line } = seamEdge.drafted;
  // Both legs of a wedge are the same distance away once it is sewn up. It is measured on the inner one, because in a gore the
  // outer leg lies on the panel before it.
  const wedge = blocks[block].wedges.find(({ outerLeg }) => outerLeg === line);
  const sewnDistance = sewnDistanceAt(blocks[block], xAt(wedge?.innerLeg ?? line, base), base);
  return seamEdge.panel.kind === 'sidePanel' && block === 'back' ? whole - sewnDistance : sewnDistance;
}

/** How far an edge turns where it crosses a seam as drafted, rad; positive towards the ground, going from front to back. */
export function turnAt(seam: Seam, { slopeA, slopeB }: SeamCrossing): number {
  if (seam.identity.kind === 'centre' || !seam.b) return 2 * Math.atan(slopeA);
  const after = isFacing(seam) ? -slopeB : slopeB;
  return Math.atan(after) - Math.atan(slopeA);
}
