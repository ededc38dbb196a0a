// A finished panel: a closed outline of named edges with everything that is written on cloth.

import { cutLineAround } from '../geometry/cutLine';
import type { Point } from '../geometry/point';
import { xAt } from '../geometry/smoothLine';
import { dartLines, drillMarks } from './dartMarks';
import { grainOf } from './grain';
import { edgeIndex, type Leg, legOf } from './leg';
import type { Level } from './levels';
import { isDartLegs, type Outline, outlineOf, type TruedPanel } from './outline';
import type { Panel } from './panels';
import { pieceEdges } from './pieceEdges';
import type { TruedLeg } from './truing';
import type { LevelName, Side, Style } from './types';

type EdgeRole = 'seam' | 'top' | 'hem' | 'centre' | 'armhole' | 'shoulder';

/** Which edge an edge is sewn to. */
export interface EdgeReference {
  readonly piece: string;
  readonly edge: number;
}

export interface Edge {
  readonly role: EdgeRole;
  /** The side seam is a seam with an allowance and a name of its own. */
  readonly side: boolean;
  readonly mate: EdgeReference | null;
  /** Id of the wedge whose leg it is, where it is the leg of a dart. */
  readonly dart?: string;
  /** Seam allowance, mm. */
  readonly allowance: number;
  /** The sew line, both ends in; the last point is the first of the next edge. */
  readonly points: readonly Point[];
}

/** Where something is set on the cloth: a balance mark on an edge, or a drill mark inside the panel. */
export interface Mark {
  readonly kind: 'balance' | 'drill';
  /** The level it marks; for a drill mark, the nearest one. */
  readonly level: LevelName;
  readonly at: Point;
  /** Index of the edge it stands on; null for a drill mark. */
  readonly edge: number | null;
}

/** A dart to be stitched: both legs, from the top down. */
export interface DartLines {
  readonly wedge: string;
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  /** Whether it opens at an edge, so that its legs are edges of the outline as well. */
  readonly open: boolean;
}

export interface Piece {
  readonly id: string;
  readonly block: Side;
  /** Counted from the centre line, from 1; 0 for a piece beside the panels. */
  readonly number: number;
  readonly cut: { readonly count: number; readonly onFold: boolean };
  /**
   * Counter-clockwise as seen on paper: edge towards the centre, hem, edge towards the side, top edge. An open dart parts
   * hem or top edge with its legs.
   */
  readonly edges: readonly Edge[];
  /** Index of the edge towards the side; the edge towards the centre is the first. */
  readonly outer: number;
  readonly darts: readonly DartLines[];
  /** Closed ring, not repeated at its end. */
  readonly cutLine: readonly Point[];
  readonly grain: readonly [Point, Point];
  readonly marks: readonly Mark[];
}

/**
 * Makes the piece of a trued panel. Null when its ends leave no closed, simple outline (a garment shorter than its
 * edges swing). `sure` is false when the cut line had to be left on the sew line.
 */
export function makePiece(
  trued: TruedPanel,
  style: Style,
  levels: readonly Level[],
  waist: number,
  onFold: boolean,
): { piece: Piece; outline: Outline; sure: boolean } | null {
  const { panel, inner, outer } = trued;
  const outline = outlineOf(trued);
  if (!isSimple(panel, inner.leg, outer.leg, pointsOf(outline.top), pointsOf(outline.hem))) return null;
  const { edges, outerEdge, toCut } = pieceEdges(trued, outline, style, onFold);
  const cutLine = cutLineAround(toCut);
  const piece: Piece = {
    id: panel.id,
    block: panel.side,
    number: panel.number,
    cut: { count: onFold ? 1 : 2, onFold },
    edges,
    outer: outerEdge,
    darts: dartLines(panel, outline),
    cutLine: cutLine ?? edges.flatMap((edge) => edge.points.slice(0, -1)),
    grain: grainOf(panel, inner.leg, outer.leg, waist),
    marks: [
      ...(onFold ? [] : marksOn(legOf(panel, 'inner'), inner.leg)),
      ...marksOn(legOf(panel, 'outer'), outer.leg),
      ...trued.darts.flatMap(({ seam, a, b }) => [
        ...marksOn(seam.a, a),
        ...(seam.b && b ? marksOn(seam.b, b) : []),
      ]),
      ...drillMarks(panel, levels),
    ],
  };
  return { piece, outline, sure: cutLine !== null };
}

const pointsOf = (rows: Outline['top']): Point[] =>
  rows.flatMap((row) => (isDartLegs(row) ? [] : row.points));

const marksOn = (leg: Leg, { marks }: TruedLeg): Mark[] =>
  marks.map(({ level, y }) => ({
    kind: 'balance',
    level,
    at: { x: xAt(leg.line, y), y },
    edge: edgeIndex(leg),
  }));

/** The legs never cross (the panel was made), so only a top edge or hem that swings too far can spoil the outline. */
function isSimple(
  panel: Panel,
  inner: TruedLeg,
  outer: TruedLeg,
  top: readonly Point[],
  hem: readonly Point[],
): boolean {
  if (!liesAbove(top, hem)) return false;
  const within = (
    points: readonly Point[],
    innerReached: (y: number) => boolean,
    outerReached: (y: number) => boolean,
  ) =>
    points
      .slice(1, -1)
      .every(
        ({ x, y }) =>
          (!innerReached(y) || x > xAt(panel.inner, y)) && (!outerReached(y) || x < xAt(panel.outer, y)),
      );
  return (
    within(
      top,
      (y) => y > inner.top.y,
      (y) => y > outer.top.y,
    ) &&
    within(
      hem,
      (y) => y < inner.hem.y,
      (y) => y < outer.hem.y,
    )
  );
}

/** Whether one row of points, from the inner to the outer leg, lies above another over the width that both have. */
function liesAbove(upper: readonly Point[], lower: readonly Point[]): boolean {
  const heights = (points: readonly Point[]): number[] => points.map((point) => point.y);
  if (Math.max(...heights(upper)) < Math.min(...heights(lower))) return true;
  return (
    upper.every(({ x, y }) => y < (heightOver(lower, x) ?? Number.POSITIVE_INFINITY)) &&
    lower.every(({ x, y }) => y > (heightOver(upper, x) ?? Number.NEGATIVE_INFINITY))
  );
}

/** Height of a row of points at `x`; null beyond its ends. */
function heightOver(points: readonly Point[], x: number): number | null {
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    if (x >= a.x && x <= b.x) return b.x === a.x ? a.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
  }
  return null;
}
