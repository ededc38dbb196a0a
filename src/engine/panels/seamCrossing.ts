// Where top edge and hem, as drafted, cross each seam, before the mates are trued.

import type { Block } from '../block/block';
import { type Crossing, closedAt, crossingAt, type DraftedEdge, type EdgeLine } from '../edges/edgeLine';
import { xAt } from '../geometry/smoothLine';
import type { Side } from '../terms/names';
import type { Panel } from './panel';
import { isFacing, type Leg, type Seam } from './seamEdge';

/** An edge where it meets a seam. Slopes are dy/dx on each mate's own panel. */
export interface SeamCrossing {
  readonly y: number;
  readonly slopeA: number;
  /** 0 at a centre edge, where there is no other mate. */
  readonly slopeB: number;
  /** Distance along the edge with the wedges sewn up, mm, as each mate's panel counts it. */
  readonly closedA: number;
  readonly closedB: number;
}

export function seamCrossing(
  seam: Seam,
  edge: DraftedEdge,
  blocks: Readonly<Record<Side, Block>>,
): SeamCrossing {
  const { a, b } = seam;
  const closedA = seam.kind === 'centre' && a.panel.number === 1 ? 0 : closedOf(a, edge, blocks);
  const onA = crossingAt(edgeOver(a.panel, edge), closedA);
  if (!b) return { y: onA.y, slopeA: towards(a, onA), slopeB: 0, closedA, closedB: closedA };
  // Sewn, nothing lies between mates; only those that face each other are counted from different ends.
  const closedB = isFacing(seam) ? closedOf(b, edge, blocks) : closedA;
  const onB = crossingAt(edgeOver(b.panel, edge), closedB);
  return { y: onA.y, slopeA: towards(a, onA), slopeB: towards(b, onB), closedA, closedB };
}

/** The part of an edge that a panel is cut along. */
export const edgeOver = (panel: Panel, { lines }: DraftedEdge): EdgeLine =>
  lines[panel.joined ? 'round' : panel.side];

/** On the panel a leg belongs to, the edge runs from its inner leg towards the side, from its outer one towards the centre. */
const towards = ({ which }: Leg, crossing: Crossing): number =>
  which === 'inner' ? crossing.after : crossing.before;

function closedOf(leg: Leg, { base, whole }: DraftedEdge, blocks: Readonly<Record<Side, Block>>): number {
  const { side, line } = leg.drafted;
  const closed = closedAt(blocks[side], xAt(line, base), base);
  return leg.panel.joined && side === 'back' ? whole - closed : closed;
}

/** How far an edge turns where it crosses a seam as drafted, rad; positive towards the ground, going from front to back. */
export function turnAt(seam: Seam, { slopeA, slopeB }: SeamCrossing): number {
  if (seam.kind === 'centre' || !seam.b) return 2 * Math.atan(slopeA);
  const after = isFacing(seam) ? -slopeB : slopeB;
  return Math.atan(after) - Math.atan(slopeA);
}
