// Where top edge and hem, as drafted, cross each seam, before the mates are trued.

import { xAt } from '../geometry/smoothLine';
import type { Block } from './block';
import { type Crossing, closedAt, crossingAt, type EdgeLine } from './edgeLine';
import { lineOf, type Seam } from './panels';
import type { Side } from './types';

/** An edge over both blocks, and the height at which it would be level. */
export interface DraftedEdge {
  readonly base: number;
  readonly lines: Readonly<Record<Side, EdgeLine>>;
}

/** An edge where it meets a seam. Slopes are dy/dx in each mate's own block. */
export interface SeamCrossing {
  readonly y: number;
  readonly slopeA: number;
  /** 0 at a centre edge, where there is no other mate. */
  readonly slopeB: number;
  /** Distance from the centre line with the wedges sewn up, mm, on each mate's block. */
  readonly closedA: number;
  readonly closedB: number;
}

export function seamCrossing(
  seam: Seam,
  edge: DraftedEdge,
  blocks: Readonly<Record<Side, Block>>,
): SeamCrossing {
  const { a, b } = seam;
  const closedA = seam.kind === 'centre' && a.panel.number === 1 ? 0 : closedOf(seam.a, edge, blocks);
  const onA = crossingAt(edge.lines[a.panel.side], closedA);
  if (!b) return { y: onA.y, slopeA: towards(a.which, onA), slopeB: 0, closedA, closedB: closedA };
  const closedB = seam.kind === 'side' ? closedOf(b, edge, blocks) : closedA;
  const onB = crossingAt(edge.lines[b.panel.side], closedB);
  return { y: onA.y, slopeA: towards(a.which, onA), slopeB: towards(b.which, onB), closedA, closedB };
}

/** On the panel a leg belongs to, the edge runs from its inner leg towards the side, from its outer one towards the centre. */
const towards = (which: 'inner' | 'outer', crossing: Crossing): number =>
  which === 'inner' ? crossing.after : crossing.before;

function closedOf(leg: Seam['a'], { base }: DraftedEdge, blocks: Readonly<Record<Side, Block>>): number {
  return closedAt(blocks[leg.panel.side], xAt(lineOf(leg), base), base);
}

/** How far an edge turns where it crosses a seam as drafted, rad; positive towards the ground, going from front to back. */
export function turnAt(seam: Seam, { slopeA, slopeB }: SeamCrossing): number {
  if (seam.kind === 'centre' || !seam.b) return 2 * Math.atan(slopeA);
  const after = seam.kind === 'side' ? -slopeB : slopeB;
  return Math.atan(after) - Math.atan(slopeA);
}
