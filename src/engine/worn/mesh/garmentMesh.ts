// The panels of one half as triangles, sewn: a place of a seam is one vertex for both its mates, so no seam can gape.

import type { Point } from '../../geometry/point';
import { polylineLength } from '../../geometry/polyline';
import type { Edge, Piece } from '../../pieces/piece';
import { identityOf, type PieceIdentity } from '../../terms/identity';
import { type Facing, layersAt } from './layers';
import { sampledEvenly } from './sampled';
import { latticeInside, trianglesOf } from './triangulate';

/** A panel of the mesh. */
export interface MeshPanel {
  readonly piece: PieceIdentity;
  /** Outline as meshed, mm on paper. */
  readonly ring: readonly Point[];
  /** Angle of the grain from upright, rad; growing towards the side going down. */
  readonly grain: number;
}

/** A line of the cloth by its vertices: a seam once, from its one mate; a centre; an edge. */
export interface MeshLine {
  readonly kind: 'seam' | 'dart' | 'centre' | 'top' | 'hem' | 'armhole';
  readonly panel: MeshPanel;
  readonly onFold: boolean;
  /** Vertices on paper, and as sewn. */
  readonly cut: readonly number[];
  readonly sewn: readonly number[];
}

/** Triangles of one half garment. A vertex on paper belongs to one panel; as sewn, vertices of mates are one. */
export interface GarmentMesh {
  /** How many sewn vertices there are. */
  readonly count: number;
  /** x, y of each vertex on paper, mm. */
  readonly flat: Float64Array;
  readonly sewnAs: Int32Array;
  /** Index of the panel of each vertex on paper, and of each triangle. */
  readonly panelOfVertex: Int32Array;
  readonly panelOfTriangle: Int32Array;
  /** Layers of cloth of each triangle: 1, more where a facing lies behind it. */
  readonly layers: Float64Array;
  /** Three vertices on paper for each triangle. */
  readonly triangles: Int32Array;
  readonly panels: readonly MeshPanel[];
  readonly lines: readonly MeshLine[];
}

const LEAST_DART_STEPS = 4;

const keyOf = (piece: string, edge: number): string => `${piece} ${edge}`;

/**
 * Meshes the panels of a half draft.
 *
 * @param pieces the panels, each with the edges its edges are sewn to
 * @param width of the mesh, mm
 * @param facings what lies behind the panels
 */
export function meshGarment(
  pieces: readonly Piece[],
  width: number,
  facings: readonly Facing[] = [],
): GarmentMesh {
  const steps = stepsOf(pieces, width);
  const flat: Point[] = [];
  const panelOfVertex: number[] = [];
  const parents: number[] = [];
  const triangles: number[] = [];
  const panelOfTriangle: number[] = [];
  const layers: number[] = [];
  const panels: MeshPanel[] = [];
  const edges = new Map<string, number[]>();
  const darts: { readonly inner: number[]; readonly outer: number[]; readonly panel: number }[] = [];

  for (const [p, piece] of pieces.entries()) {
    const base = flat.length;
    const put = (point: Point): number => {
      panelOfVertex.push(p);
      parents.push(flat.length);
      return flat.push(point) - 1;
    };
    const around = outlineVertices(piece, steps, put, edges);
    const ring = around.map((i) => flat[i]!);
    const holes = piece.darts
      .filter(({ open }) => !open)
      .map(({ inner, outer }) => {
        const count = Math.max(LEAST_DART_STEPS, Math.round(polylineLength(inner) / width));
        const own = sampledEvenly(inner, count).map(put);
        const other = sampledEvenly(outer, count).map((point, k) =>
          k === 0 || k === count ? own[k]! : put(point),
        );
        darts.push({ inner: own, outer: other, panel: p });
        return [...own, ...other.slice(1, -1).reverse()].map((i) => flat[i]!);
      });
    for (const point of latticeInside(ring, holes, width)) put(point);
    const found = trianglesOf(flat.slice(base), ring, holes, width);
    for (const i of found) triangles.push(base + i);
    const behind = facings.filter(({ panel }) => panel === piece.id).map(({ ring: outline }) => outline);
    for (let t = 0; t < found.length; t += 3) {
      panelOfTriangle.push(p);
      const corner = (k: number): Point => flat[base + found[t + k]!]!;
      layers.push(layersAt([corner(0), corner(1), corner(2)], behind));
    }
    const [{ x: x0, y: y0 }, { x: x1, y: y1 }] = piece.grain;
    const grain = y1 >= y0 ? Math.atan2(x1 - x0, y1 - y0) : Math.atan2(x0 - x1, y0 - y1);
    panels.push({ piece: identityOf(piece), ring, grain });
  }

  const sewn = sewnLines(pieces, edges, panels, parents);
  for (const { inner, outer, panel } of darts) {
    join(parents, inner, outer);
    sewn.push({ kind: 'dart', panel: panels[panel]!, onFold: false, cut: inner });
  }
  const { sewnAs, count } = numbered(parents);
  const coordinates = new Float64Array(2 * flat.length);
  for (const [i, { x, y }] of flat.entries()) coordinates.set([x, y], 2 * i);
  return {
    count,
    flat: coordinates,
    sewnAs,
    panelOfVertex: Int32Array.from(panelOfVertex),
    panelOfTriangle: Int32Array.from(panelOfTriangle),
    layers: Float64Array.from(layers),
    triangles: Int32Array.from(triangles),
    panels,
    lines: sewn.map((line) => ({ ...line, sewn: line.cut.map((i) => sewnAs[i]!) })),
  };
}

/** How many steps each edge is cut into; mates have the same number. */
function stepsOf(pieces: readonly Piece[], width: number): Map<string, number> {
  const lengths = new Map<string, number>();
  for (const piece of pieces)
    for (const [i, { points }] of piece.edges.entries())
      lengths.set(keyOf(piece.id, i), polylineLength(points));
  const steps = new Map<string, number>();
  for (const piece of pieces)
    for (const [i, { mate }] of piece.edges.entries()) {
      const key = keyOf(piece.id, i);
      const other = mate ? (lengths.get(keyOf(mate.piece.id, mate.edge)) ?? 0) : 0;
      steps.set(key, Math.max(1, Math.round(Math.max(lengths.get(key) ?? 0, other) / width)));
    }
  return steps;
}

/** Puts the vertices of a piece's outline, keeps them by edge, and returns them once round. */
function outlineVertices(
  piece: Piece,
  steps: ReadonlyMap<string, number>,
  put: (point: Point) => number,
  edges: Map<string, number[]>,
): number[] {
  const around: number[] = [];
  let before: number | null = null;
  for (const [i, { points }] of piece.edges.entries()) {
    const key = keyOf(piece.id, i);
    const samples = sampledEvenly(points, steps.get(key) ?? 1);
    const closes = i + 1 === piece.edges.length;
    const own: number[] = [];
    for (const [k, point] of samples.entries()) {
      const isLast = k === samples.length - 1;
      if (k === 0 && before !== null) own.push(before);
      else if (isLast && closes) own.push(around[0]!);
      else own.push(put(point));
    }
    around.push(...own.slice(0, -1));
    before = own[own.length - 1]!;
    edges.set(key, own);
  }
  return around;
}

type UnsewnLine = Omit<MeshLine, 'sewn'>;

/** Joins the vertices of mates, and lists the lines of the cloth. */
function sewnLines(
  pieces: readonly Piece[],
  edges: ReadonlyMap<string, number[]>,
  panels: readonly MeshPanel[],
  parents: number[],
): UnsewnLine[] {
  const lines: UnsewnLine[] = [];
  const done = new Set<string>();
  for (const [p, piece] of pieces.entries())
    for (const [i, edge] of piece.edges.entries()) {
      const key = keyOf(piece.id, i);
      const cut = edges.get(key) ?? [];
      const common = { panel: panels[p]!, onFold: piece.cut.onFold, cut };
      const mateKey = edge.mate && keyOf(edge.mate.piece.id, edge.mate.edge);
      const mate = mateKey === null ? undefined : edges.get(mateKey);
      if (mate && mateKey !== null) {
        if (done.has(mateKey)) continue;
        done.add(key);
        const other = pieces.find(({ id }) => id === edge.mate?.piece.id)?.edges[edge.mate?.edge ?? -1];
        join(parents, cut, runsAlong(edge, other) ? mate : [...mate].reverse());
        lines.push({ kind: edge.dart ? 'dart' : 'seam', ...common });
      } else if (edge.role !== 'seam' && edge.role !== 'shoulder') lines.push({ kind: edge.role, ...common });
    }
  return lines;
}

/** Whether two mates run the same way as their outlines go round: two outer edges, or two of the shoulder. */
const runsAlong = (edge: Edge, mate: Edge | undefined): boolean => !edge.dart && edge.at === mate?.at;

/** Makes vertices of two lines one, pair by pair. */
function join(parents: number[], a: readonly number[], b: readonly number[]): void {
  for (const [k, i] of a.entries())
    if (b[k] !== undefined) parents[rootOf(parents, i)] = rootOf(parents, b[k]);
}

function rootOf(parents: number[], i: number): number {
  let root = i;
  while (parents[root]! !== root) root = parents[root]!;
  return root;
}

function numbered(parents: number[]): { sewnAs: Int32Array; count: number } {
  const numbers = new Map<number, number>();
  const sewnAs = Int32Array.from(parents, (_, i) => {
    const root = rootOf(parents, i);
    const number = numbers.get(root) ?? numbers.size;
    numbers.set(root, number);
    return number;
  });
  return { sewnAs, count: numbers.size };
}
