// Top edge and hem as drafted: one curve from centre front round to centre back, over the body closed up, so that a
// wedge's intake does not bend it.

import type { Block } from '../block/block';
import { stationX } from '../block/lines/station';
import { at as elementAt, first, last, numberAt } from '../geometry/lists';
import { type SmoothLine, slopeAt, smoothLine, within, xAt } from '../geometry/smoothLine';
import type { EdgeNodeName, EdgeShape } from '../style/style';
import type { BlockName } from '../terms/names';

/**
 * One block's part of an edge: height y over the closed distance from the centre line, both mm. Smooth lines laid on
 * their side (their `ys` are distances, their `xs` heights), parted where the edge has a corner.
 */
export type EdgeLine = readonly SmoothLine[];

/** Where an edge crosses a place: its height, and its slope dy/dx towards the centre and towards the side. */
export interface Crossing {
  readonly y: number;
  readonly before: number;
  readonly after: number;
}

/** Closer than this to a corner a place is at the corner. mm */
const AT_CORNER_MM = 2;

/** Nearer than this to a leg a smooth node would leave the edge no room to turn into its direction at the leg. mm */
const CLEAR_OF_LEG_MM = 15;

/** The least distance between the ends of an edge, on a block that has no width left. mm */
const LEAST_STRETCH_MM = 5;

/** Which nodes stand on which block, from its centre line to the side, with their stations. */
const NODES: Readonly<Record<BlockName, readonly { name: EdgeNodeName; station: number }[]>> = {
  front: [
    { name: 'centreFront', station: -1 },
    { name: 'bustLine', station: 0 },
    { name: 'sideFront', station: 0.5 },
    { name: 'underarm', station: 1 },
  ],
  back: [
    { name: 'centreBack', station: -1 },
    { name: 'sideBack', station: 0.5 },
    { name: 'underarm', station: 1 },
  ],
};

/** An edge over both blocks, and the height at which it would be level. */
export interface DraftedEdge {
  /** mm */
  readonly base: number;
  /** Each block's part from its own centre line; `wholeEdge`: all of it from centre front to centre back. */
  readonly lines: Readonly<Record<BlockName | 'wholeEdge', EdgeLine>>;
  /** From centre front to centre back, mm. */
  readonly whole: number;
  /** The nodes on each block, from its centre line; the underarm is on both. */
  readonly nodes: Readonly<Record<BlockName, readonly DraftedNode[]>>;
}

/** A node with its distance from the centre line, wedges sewn up, and its height; mm. */
interface DraftedNode {
  readonly name: EdgeNodeName;
  readonly at: number;
  readonly y: number;
  readonly corner: boolean;
}

/**
 * Drafts an edge over both blocks.
 *
 * @param base height of the level edge, mm
 * @param way −1 where `beyond` raises the edge (top), +1 where it lowers it (hem)
 */
export function draftEdge(
  blocks: Readonly<Record<BlockName, Block>>,
  shape: EdgeShape,
  base: number,
  way: 1 | -1,
): DraftedEdge {
  const height = (name: EdgeNodeName): number => base + way * shape[name].beyond;
  const nodes = (block: BlockName): DraftedNode[] =>
    NODES[block].map(({ name, station }) => ({
      name,
      at: station <= -1 ? 0 : nodeDistance(blocks[block], stationOnBlock(blocks[block], station, base), base),
      y: height(name),
      corner: shape[name].kind === 'corner',
    }));
  const all = { front: nodes('front'), back: nodes('back') };
  const front = inOrder(all.front);
  const back = inOrder(all.back);
  const whole = (front.at(-1)?.at ?? 0) + (back.at(-1)?.at ?? 0);
  // Round the body from centre front to centre back; the back is met from the side.
  const wholeNodes = [
    ...front,
    ...back
      .slice(0, -1)
      .reverse()
      .map((node) => ({ ...node, at: whole - node.at })),
  ];
  const lines = linesOf(partedAtCorners(wholeNodes), front.at(-1)?.at ?? 0, whole);
  return { base, lines, whole, nodes: all };
}

/** An edge from centre front to centre back, and each block's part of it, parted at the side, which is one of its knots. */
const linesOf = (stretches: EdgeLine, sideAt: number, whole: number): DraftedEdge['lines'] => ({
  wholeEdge: stretches,
  front: stretches.flatMap((line) => cutOut(line, 0, sideAt)),
  back: stretches
    .flatMap((line) => cutOut(line, sideAt, whole))
    .map((line) => seenFrom(line, whole))
    .reverse(),
});

/**
 * An edge with each of its stretches changed; the knots that a change adds are kept.
 *
 * @param raisedAt how far its nodes are raised by that, mm, at a distance from centre front
 */
export function changeEdge(
  { base, lines, whole, nodes }: DraftedEdge,
  change: (stretch: SmoothLine) => SmoothLine,
  raisedAt: (distance: number) => number,
): DraftedEdge {
  const sideAt = last(last(lines.front).ys);
  return {
    base,
    lines: linesOf(lines.wholeEdge.map(change), sideAt, whole),
    whole,
    nodes: {
      front: nodes.front.map((node) => ({ ...node, y: node.y - raisedAt(node.at) })),
      back: nodes.back.map((node) => ({ ...node, y: node.y - raisedAt(whole - node.at) })),
    },
  };
}

/** Where an edge crosses a closed distance from the centre line. */
export function crossingAt(edge: EdgeLine, at: number): Crossing {
  for (let i = 0; i < edge.length - 1; i += 1) {
    const corner = edge[i]?.ys.at(-1) ?? 0;
    if (Math.abs(at - corner) > AT_CORNER_MM) continue;
    const before = elementAt(edge, i);
    const after = elementAt(edge, i + 1);
    return {
      y: last(before.xs),
      before: held(last(before.slopes)),
      after: held(first(after.slopes)),
    };
  }
  const line = edge.find((each) => at <= last(each.ys)) ?? last(edge);
  const inside = Math.min(last(line.ys), Math.max(first(line.ys), at));
  const slope = held(slopeAt(line, inside));
  return { y: xAt(line, inside), before: slope, after: slope };
}

/** The greatest slope dy/dx of an edge, about 70°: a steeper edge would run along the seam that it crosses. */
const STEEPEST = 2.75;

const held = (slope: number): number => Math.min(STEEPEST, Math.max(-STEEPEST, slope));

/**
 * The nodes of an edge between two legs, by their distance from the centre line with the wedges sewn up, mm. A smooth node that is
 * too near a leg for the edge to turn is moved along the edge, away from the leg.
 */
export function knotsBetween(edge: EdgeLine, from: number, to: number): { at: number; crossing: Crossing }[] {
  const corners = edge.slice(1).map((line) => first(line.ys));
  const clear = Math.min(CLEAR_OF_LEG_MM, (to - from) / 3);
  const isInside = (at: number): boolean => at > from + AT_CORNER_MM && at < to - AT_CORNER_MM;
  const knots = new Set(corners.filter(isInside));
  for (const { ys } of edge)
    for (const at of ys) {
      if (!isInside(at) || corners.includes(at)) continue;
      const moved = Math.min(to - clear, Math.max(from + clear, at));
      if (corners.every((corner) => Math.abs(corner - moved) > AT_CORNER_MM)) knots.add(moved);
    }
  return [...knots].sort((a, b) => a - b).map((at) => ({ at, crossing: crossingAt(edge, at) }));
}

/** Distance from the centre line with the wedges between sewn up, of a place `x` on the block at height `y`; mm. */
export function sewnDistanceAt(block: Block, x: number, y: number): number {
  let taken = 0;
  for (const { innerLeg, outerLeg } of block.wedges)
    taken += takenBefore(x, xAt(innerLeg, y), xAt(outerLeg, y));
  return x - taken;
}

/** Distances as {@link sewnDistanceAt} has them, of several places at one height. */
export function sewnDistancesAt({ wedges }: Block, y: number): (x: number) => number {
  const inners = wedges.map(({ innerLeg }) => xAt(innerLeg, y));
  const outers = wedges.map(({ outerLeg }) => xAt(outerLeg, y));
  return (x) => {
    let taken = 0;
    for (let i = 0; i < inners.length; i += 1)
      taken += takenBefore(x, numberAt(inners, i), numberAt(outers, i));
    return x - taken;
  };
}

/**
 * How much of a wedge between two legs lies before a place `x`, mm. In a gore the legs lie over each other; what is beyond its
 * inner leg has the added cloth inside it.
 */
function takenBefore(x: number, inner: number, outer: number): number {
  if (outer >= inner) return Math.min(outer - inner, Math.max(0, x - inner));
  return x > inner ? outer - inner : 0;
}

/**
 * The same of a node. Where the legs of a gore lie over each other, the node passes from the one panel to the other at their
 * seam, which is half way across.
 */
function nodeDistance(block: Block, x: number, y: number): number {
  for (const { innerLeg, outerLeg } of block.wedges) {
    const inner = xAt(innerLeg, y);
    const outer = xAt(outerLeg, y);
    if (x > outer && x < inner) return sewnDistanceAt(block, outer, y) + 2 * (x - outer);
  }
  return sewnDistanceAt(block, x, y);
}

function stationOnBlock(block: Block, station: number, y: number): number {
  return stationX(station, block.bustLine, xAt(block.sideSeam, y));
}

/**
 * One block's nodes from its centre line to the side. Its two ends are always among them, at least {@link LEAST_STRETCH_MM} apart.
 * A node that does not lie between them is left out, and so is one through which the edge runs level in any case.
 */
function inOrder(nodes: readonly DraftedNode[]): DraftedNode[] {
  const centre = first(nodes);
  const end = last(nodes);
  const sideAt = { ...end, at: Math.max(end.at, centre.at + LEAST_STRETCH_MM) };
  const kept = [centre];
  for (const [i, node] of nodes.entries()) {
    if (i === 0 || i === nodes.length - 1) continue;
    const apart = node.at - (kept.at(-1)?.at ?? 0) > AT_CORNER_MM && sideAt.at - node.at > AT_CORNER_MM;
    const level = !node.corner && node.y === nodes[i - 1]?.y && node.y === nodes[i + 1]?.y;
    if (apart && !level) kept.push(node);
  }
  return [...kept, sideAt];
}

/** Nodes in order as smooth stretches that meet at the corners. */
function partedAtCorners(kept: readonly DraftedNode[]): SmoothLine[] {
  const stretches: SmoothLine[] = [];
  let start = 0;
  for (let i = 1; i < kept.length; i += 1) {
    const end = elementAt(kept, i);
    if (!end.corner && i < kept.length - 1) continue;
    const part = kept.slice(start, i + 1);
    stretches.push(
      smoothLine(
        part.map(({ at }) => at),
        part.map(({ y }) => y),
        { start: part[0]?.corner ? 'free' : 'flat', end: end.corner ? 'free' : 'flat' },
      ),
    );
    start = i;
  }
  return stretches;
}

/** The part of a stretch between two distances that are its knots or lie outside it; nothing where they do not meet. */
function cutOut(line: SmoothLine, from: number, to: number): SmoothLine[] {
  const part = within(line, from - 1e-9, to + 1e-9);
  return part.ys.length < 2 ? [] : [part];
}

/** A stretch measured from its other end: of the back, from centre back. */
function seenFrom({ ys, xs, slopes }: SmoothLine, whole: number): SmoothLine {
  const turned: { ys: number[]; xs: number[]; slopes: number[] } = { ys: [], xs: [], slopes: [] };
  for (let i = ys.length - 1; i >= 0; i -= 1) {
    turned.ys.push(whole - numberAt(ys, i));
    turned.xs.push(numberAt(xs, i));
    turned.slopes.push(-numberAt(slopes, i));
  }
  return turned;
}
