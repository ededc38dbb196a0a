// Alterations of edges: top edge and hem raised or lowered, and ends of seams in neckline and armhole.

import type { UpperEnd } from '../../block/shoulders/upperEdges';
import type { BaseDraft } from '../../edges/baseDraft';
import { changeEdge, crossingAt, type DraftedEdge } from '../../edges/edgeLine';
import { type SmoothLine, smoothLine, xAt } from '../../geometry/smoothLine';
import { raisedHeight } from '../../panels/raise';
import { type BodyLine, type ClosedHalf, distancesAt, lineAt } from '../closed/closedHalf';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type EdgeAlteration,
  type PlacedAmount,
  type RefusalCode,
  refused,
} from '../terms/alteration';
import { keyOf } from '../terms/alterationsOfSide';
import { changeLine, changeRun, lessChange, sumOfChanges } from './changeLine';
import type { PlannedLengths } from './lengths';

/** An edge changes over at least this distance: a stop nearer to a place is passed over. mm */
const CLEAR_MM = 10;

export interface AlteredEdges {
  readonly edges: BaseDraft['edges'];
  /** How far the end of a wedge in neckline or armhole is raised, mm by the wedge's id. */
  readonly endsRaised: ReadonlyMap<string, number>;
  readonly outcomes: readonly (AlterationOutcome | null)[];
}

/** Top edge and hem with the alterations of edges, and with what alterations of length move them by. */
export function alterEdges(
  alterations: readonly (Alteration | null)[],
  base: BaseDraft,
  closedHalf: ClosedHalf,
  lengths: PlannedLengths,
): AlteredEdges {
  const outcomes: (AlterationOutcome | null)[] = alterations.map(() => null);
  const endsRaised = new Map<string, number>();
  const own: { each: EdgeAlteration; index: number; key: string }[] = [];
  for (const [index, each] of alterations.entries())
    if (each?.kind === 'edge') own.push({ each, index, key: keyOf(each) });
  own.sort((a, b) => (a.key < b.key ? -1 : 1));
  const raised: Record<'top' | 'hem', PlacedOnEdge[][]> = { top: [], hem: [] };
  for (const { each, index } of own) {
    const placed = placesOf(each, base, closedHalf);
    outcomes[index] = typeof placed === 'string' ? refused(placed) : APPLIED;
    if (typeof placed === 'string') continue;
    const along = placed.filter(({ end }) => !end);
    for (const { end, by } of placed)
      if (end) endsRaised.set(end.wedge, (endsRaised.get(end.wedge) ?? 0) + by);
    if (along.length > 0) addTo(raised[each.edge === 'hem' ? 'hem' : 'top'], along);
  }
  const altered = (which: 'top' | 'hem'): DraftedEdge => {
    const edge = base.edges[which];
    const isShifted = lowestOf(edge) > lengths.from;
    if (raised[which].length === 0 && !isShifted) return edge;
    const distanceOf = distancesAt(closedHalf, edge.base, edge.whole);
    const changes: SmoothLine[] = [];
    if (raised[which].length > 0) {
      const stops = closedHalf.lines.map(distanceOf).sort((a, b) => a - b);
      // What is taken back by another adds no knots.
      for (const placed of raised[which])
        if (placed.some(({ by }) => by !== 0)) changes.push(changeAlong(placed, distanceOf, stops));
    }
    const shift = isShifted ? shiftByLengths(which, edge, distanceOf, closedHalf, lengths) : null;
    if (shift) changes.push(shift);
    const sum = sumOfChanges(changes);
    if (!sum) return edge;
    return changeEdge(
      edge,
      (stretch) => lessChange(stretch, sum),
      (distance) => xAt(sum, distance),
    );
  };
  return { edges: { top: altered('top'), hem: altered('hem') }, endsRaised, outcomes };
}

interface PlacedOnEdge {
  readonly line: BodyLine;
  readonly by: number;
  /** The end of a wedge in neckline or armhole; null where the edge itself is raised. */
  readonly end: UpperEnd | null;
}

/** The lowest height of an edge, mm: it never runs below its knots. */
function lowestOf({ lines }: DraftedEdge): number {
  let lowest = Number.NEGATIVE_INFINITY;
  for (const { xs } of lines.wholeEdge) for (const y of xs) lowest = Math.max(lowest, y);
  return lowest;
}

/** Adds where one alteration raises an edge; what is raised at the same one place as by another is raised by both. */
function addTo(raised: PlacedOnEdge[][], along: PlacedOnEdge[]): void {
  const [only] = along;
  const same = along.length === 1 && raised.find((each) => each.length === 1 && each[0]?.line === only?.line);
  const [before] = same || [];
  if (same && before && only) same[0] = { ...before, by: before.by + only.by };
  else raised.push(along);
}

/** Where an edge is raised, or why it cannot be. */
function placesOf(
  { edge, at }: EdgeAlteration,
  { shoulders }: BaseDraft,
  closedHalf: ClosedHalf,
): PlacedOnEdge[] | RefusalCode {
  const isAbove = edge === 'neckline' || edge === 'armhole';
  if (edge !== 'hem' && isAbove !== (shoulders !== null)) return 'edgeGone';
  const placed: PlacedOnEdge[] = [];
  for (const each of at) {
    const found = placeOn(edge, each, closedHalf);
    if (!found) return 'placeGone';
    placed.push(found);
  }
  return placed;
}

function placeOn(
  edge: EdgeAlteration['edge'],
  { place, by }: PlacedAmount,
  closedHalf: ClosedHalf,
): PlacedOnEdge | null {
  const line = lineAt(closedHalf, place);
  if (!line) return null;
  const onEdge = { line, by, end: null };
  if (edge === 'top' || edge === 'hem') return onEdge;
  if (line.kind === 'centre') return edge === 'neckline' ? onEdge : null;
  if (line.kind === 'sideSeam') return edge === 'armhole' ? onEdge : null;
  if (line.kind !== 'wedge') return null;
  const end = closedHalf.blocks[line.block].upper?.ends.find((each) => each.wedge === line.wedge.id);
  return end?.edge === edge ? { line, by, end } : null;
}

/** How far an edge is raised along it, mm: by the given amounts at their places, by 0 at the next seam on either side. */
function changeAlong(
  placed: readonly PlacedOnEdge[],
  distanceOf: (line: BodyLine) => number,
  stops: readonly number[],
): SmoothLine {
  const inOrder = placed.map(({ line, by }) => ({ at: distanceOf(line), by })).sort((a, b) => a.at - b.at);
  const run = changeRun(
    inOrder.map(({ at }) => at),
    stops,
    CLEAR_MM,
  );
  return changeLine(
    run,
    inOrder.map(({ by }) => by),
  );
}

/** How far an edge is raised along it because seams above it were shortened, mm; null where it is not. */
function shiftByLengths(
  which: 'top' | 'hem',
  edge: DraftedEdge,
  distanceOf: (line: BodyLine) => number,
  closedHalf: ClosedHalf,
  lengths: PlannedLengths,
): SmoothLine | null {
  const knots: { at: number; by: number }[] = [];
  for (const line of closedHalf.lines) {
    const at = distanceOf(line);
    if (at <= (knots.at(-1)?.at ?? Number.NEGATIVE_INFINITY) + CLEAR_MM) continue;
    const { y } = crossingAt(edge.lines.wholeEdge, at);
    const lowered = which === 'top' ? lengths.topLoweredAt(line) : 0;
    knots.push({ at, by: y - raisedHeight(lengths.raiseAt(line), y) - lowered });
  }
  // A knot within a stretch that is raised alike would part the edge there and change nothing.
  const isAlike = (i: number, other: number): boolean => (knots[other] ?? knots[i])?.by === knots[i]?.by;
  const kept = knots.filter((_, i) => !(isAlike(i, i - 1) && isAlike(i, i + 1)));
  const [first] = knots;
  if (kept.length === 0) return first && first.by !== 0 ? smoothLine([first.at], [first.by]) : null;
  return smoothLine(
    kept.map(({ at }) => at),
    kept.map(({ by }) => by),
  );
}
