// A top edge or hem of finished panels beside the edge as it was asked for: nodes, blocks and the drafted edge's heights in,
// angles, misses and drifts out. What truing made is only measured.

import {
  type Block,
  type BlockName,
  type Draft,
  type EdgeNode,
  type EdgeNodeName,
  type Piece,
  type Point,
  type Style,
  stationX,
  xAt,
} from '../../../src/engine';
import { draftEdge, type EdgeLine } from '../../../src/engine/edges/edgeLine';
import { cornerAngle } from './outline';

export type EdgeName = 'top' | 'hem';

interface Node {
  readonly name: EdgeNodeName;
  readonly kind: EdgeNode['kind'];
  /** On the flat block. */
  readonly flat: Point;
  /** Distance from the centre line with the wedges sewn up, mm. */
  readonly at: number;
}

interface PanelEdge {
  readonly piece: Piece;
  /** Closed distances from the centre line between which the panel lies, mm. */
  readonly from: number;
  readonly to: number;
  /** From the inner to the outer leg. */
  readonly points: readonly Point[];
}

interface HalfEdge {
  readonly line: EdgeLine;
  readonly nodes: readonly Node[];
  readonly panels: readonly PanelEdge[];
}

/** An edge of a draft, by block. */
export interface DrawnEdge {
  readonly edge: EdgeName;
  readonly front: HalfEdge;
  readonly back: HalfEdge;
}

const STATIONS: Readonly<Record<BlockName, readonly (readonly [EdgeNodeName, number])[]>> = {
  front: [
    ['centreFront', -1],
    ['bustLine', 0],
    ['sideFront', 0.5],
    ['underarm', 1],
  ],
  back: [
    ['centreBack', -1],
    ['sideBack', 0.5],
    ['underarm', 1],
  ],
};

/** Null where the draft has no blocks or lacks a panel. */
export function drawnEdge(made: Draft, style: Style, edge: EdgeName): DrawnEdge | null {
  const { blocks, span, pieces } = made;
  if (!blocks || !span) return null;
  const [base, way, shape] =
    edge === 'top' ? [span.top, -1 as const, style.topShape] : [span.hem, 1 as const, style.hemShape];
  const { lines } = draftEdge(blocks, shape, base, way);
  const half = (block: BlockName): HalfEdge => {
    const widths = panelsOf(blocks[block], base);
    let at = 0;
    const panels = widths.flatMap(({ inner, outer }, i): PanelEdge[] => {
      const from = at;
      at += outer - inner;
      const piece = pieces.find((each) => each.block === block && each.number === i + 1);
      const points = piece?.edges.find(({ role }) => role === edge)?.points ?? [];
      return piece ? [{ piece, from, to: at, points: edge === 'top' ? [...points].reverse() : points }] : [];
    });
    const nodes = STATIONS[block].map(([name, station]): Node => {
      const x =
        station === -1 ? 0 : stationX(station, blocks[block].bustLine, xAt(blocks[block].sideSeam, base));
      const { beyond, kind } = shape[name];
      const closed = widths.reduce(
        (sum, { inner, outer }) => sum + Math.min(Math.max(0, x - inner), outer - inner),
        0,
      );
      return { name, kind, flat: { x, y: base + way * beyond }, at: closed };
    });
    return { line: lines[block], nodes, panels: panels.length === widths.length ? panels : [] };
  };
  const [front, back] = [half('front'), half('back')];
  return front.panels.length > 0 && back.panels.length > 0 ? { edge, front, back } : null;
}

/** Where each panel of a block begins and ends at a height, from the centre line. */
function panelsOf({ wedges, sideSeam }: Block, y: number): { inner: number; outer: number }[] {
  const centre = wedges.find(({ onCentre }) => onCentre);
  const cuts = wedges.filter((wedge) => wedge !== centre);
  const inners = [centre ? xAt(centre.outerLeg, y) : 0, ...cuts.map(({ outerLeg }) => xAt(outerLeg, y))];
  const outers = [...cuts.map(({ innerLeg }) => xAt(innerLeg, y)), xAt(sideSeam, y)];
  return inners.map((inner, i) => ({ inner, outer: outers[i] as number }));
}

/** How far beside a corner a seam may stand and still be the corner's. mm */
const AT_CORNER_MM = 2;

/** Between two samples of the drafted edge. mm */
const SAMPLE_MM = 1e-3;

/** A drafted edge steeper than this is held back where it crosses a seam, and then asks for less. */
const STEEPEST = 2.7;

/** The drafted edge's height at a closed distance. mm */
function heightAt(line: EdgeLine, at: number): number {
  const stretch = line.find(({ ys }) => at <= (ys.at(-1) as number)) ?? (line.at(-1) as EdgeLine[number]);
  return xAt(stretch, Math.min(stretch.ys.at(-1) as number, Math.max(stretch.ys[0] as number, at)));
}

/** Slopes of the drafted edge on both sides of a place, from samples; at a corner those of the corner. */
function slopesAt({ line, nodes }: HalfEdge, at: number): { before: number; after: number } {
  const corner = nodes.find((node) => node.kind === 'corner' && Math.abs(node.at - at) <= AT_CORNER_MM);
  const place = corner?.at ?? at;
  const rise = (from: number, to: number): number =>
    (heightAt(line, to) - heightAt(line, from)) / (to - from);
  return {
    before: rise(place - 2 * SAMPLE_MM, place - SAMPLE_MM),
    after: rise(place + SAMPLE_MM, place + 2 * SAMPLE_MM),
  };
}

/** The angle that an edge with these slopes has on the garment's side, degrees: 180 where it runs straight. */
const asked = (edge: EdgeName, before: number, after: number): number =>
  180 + ((edge === 'top' ? -1 : 1) * (Math.atan(after) - Math.atan(before)) * 180) / Math.PI;

export interface SeamTurn {
  readonly seam: string;
  /** Across the sewn seam, degrees: measured on the panels, and asked for by the drafted edge. */
  readonly angle: number;
  readonly asked: number;
}

/** Every seam and both centres, without those where the drafted edge is too steep to be crossed as it is. */
export function seamTurns({ edge, front, back }: DrawnEdge): SeamTurn[] {
  const turns: SeamTurn[] = [];
  const add = (seam: string, angle: number, before: number, after: number): void => {
    if (Math.max(Math.abs(before), Math.abs(after)) < STEEPEST)
      turns.push({ seam, angle, asked: asked(edge, before, after) });
  };
  for (const [block, half] of [
    ['front', front],
    ['back', back],
  ] as const) {
    for (const [i, panel] of half.panels.entries()) {
      const inner = angleAt(panel.piece, edge, 'inner');
      const { before, after } = slopesAt(half, panel.from);
      const last = half.panels[i - 1];
      if (last)
        add(`${last.piece.id}/${panel.piece.id}`, angleAt(last.piece, edge, 'outer') + inner, before, after);
      else add(`${block} centre`, 2 * inner, -after, after);
    }
  }
  const [onFront, onBack] = [front.panels.at(-1) as PanelEdge, back.panels.at(-1) as PanelEdge];
  add(
    'side',
    angleAt(onFront.piece, edge, 'outer') + angleAt(onBack.piece, edge, 'outer'),
    slopesAt(front, onFront.to).before,
    -slopesAt(back, onBack.to).before,
  );
  return turns;
}

/** Interior angle of a panel between a leg and the edge, degrees. Edges run inner leg, hem, outer leg, top. */
function angleAt(piece: Piece, edge: EdgeName, leg: 'inner' | 'outer'): number {
  if (edge === 'hem') return cornerAngle(piece, leg === 'inner' ? 0 : 1);
  return cornerAngle(piece, leg === 'inner' ? 3 : 2);
}

export interface NodeInside {
  readonly node: string;
  readonly kind: EdgeNode['kind'];
  /** How far the panel's edge passes the node on the flat block, mm. */
  readonly off: number;
  /** How far above or below the node the edge is at the node's part of the panel's width, mm. */
  readonly height: number;
  /** How far truing moved the ends of the panel's edge, at most; mm. */
  readonly moved: number;
  /** The panel's edge turns by this at the node, degrees; no number where it has no point there. */
  readonly turn: number;
  /** The drafted edge turns by this. */
  readonly asked: number;
}

/** Nearer to a leg a node does not lie well inside. mm */
const INSIDE_MM = 20;

/** Nodes well inside a panel. */
export function nodesInside({ front, back }: DrawnEdge): NodeInside[] {
  return [front, back].flatMap((half) =>
    half.panels.flatMap((panel) =>
      half.nodes
        .filter(({ at }) => at > panel.from + INSIDE_MM && at < panel.to - INSIDE_MM)
        .map(({ name, kind, flat, at }) => {
          const [first, last] = [panel.points[0] as Point, panel.points.at(-1) as Point];
          const x = first.x + ((at - panel.from) / (panel.to - panel.from)) * (last.x - first.x);
          const i = panel.points.findIndex((point) => Math.abs(point.x - x) < 1e-6);
          const [p, q, r] = [panel.points[i - 1], panel.points[i], panel.points[i + 1]];
          const { before, after } = slopesAt(half, at);
          return {
            node: `${panel.piece.id} ${name}`,
            kind,
            off: Math.min(
              ...panel.points.slice(1).map((b, k) => fromChord(panel.points[k] as Point, b, flat)),
            ),
            height: Math.abs(heightOver(panel.points, x) - flat.y),
            moved: movedBy(half, panel),
            turn: p && q && r ? lean(q, r) - lean(p, q) : Number.NaN,
            asked: ((Math.atan(after) - Math.atan(before)) * 180) / Math.PI,
          };
        }),
    ),
  );
}

/** Height of a row of points at `x`, mm. */
function heightOver(points: readonly Point[], x: number): number {
  const i = Math.max(
    1,
    points.findIndex((point) => point.x >= x),
  );
  const [a, b] = [points[i - 1] as Point, points[i] as Point];
  return a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y);
}

const lean = (a: Point, b: Point): number => (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;

function fromChord(a: Point, b: Point, point: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = ((point.x - a.x) * dx + (point.y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const within = Math.min(1, Math.max(0, t));
  return Math.hypot(a.x + within * dx - point.x, a.y + within * dy - point.y);
}

function movedBy({ line }: HalfEdge, { from, to, points }: PanelEdge): number {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  return Math.max(Math.abs(first.y - heightAt(line, from)), Math.abs(last.y - heightAt(line, to)));
}

/** How far each panel's edge leaves the drafted edge in height, and how far truing moved its ends; mm. */
export function drifts({ front, back }: DrawnEdge): { piece: string; off: number; moved: number }[] {
  return [front, back].flatMap((half) =>
    half.panels.map((panel) => {
      const { piece, from, to, points } = panel;
      const [first, last] = [points[0] as Point, points.at(-1) as Point];
      const off = points.map(({ x, y }) =>
        Math.abs(y - heightAt(half.line, from + ((x - first.x) / (last.x - first.x)) * (to - from))),
      );
      return { piece: piece.id, off: Math.max(...off), moved: movedBy(half, panel) };
    }),
  );
}
