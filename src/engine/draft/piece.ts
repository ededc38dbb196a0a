// A finished panel: a closed outline of named edges with everything that is written on cloth.

import { cutLineAround } from '../geometry/cutLine';
import type { Point } from '../geometry/point';
import { pointsDown } from '../geometry/polyline';
import { xAt } from '../geometry/smoothLine';
import type { EdgeLine } from './edgeLine';
import { edgePoints } from './edgePoints';
import type { Panel, Seam } from './panels';
import type { TruedLeg, TruedSeam } from './truing';
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
  /** Seam allowance, mm. */
  readonly allowance: number;
  /** The sew line, both ends in; the last point is the first of the next edge. */
  readonly points: readonly Point[];
}

export interface Mark {
  readonly kind: 'balance' | 'drill';
  readonly level: LevelName;
  readonly at: Point;
  /** Index of the edge it stands on. */
  readonly edge: number;
}

export interface Piece {
  readonly id: string;
  readonly block: Side;
  /** Counted from the centre line, from 1. */
  readonly number: number;
  readonly cut: { readonly count: number; readonly onFold: boolean };
  /** Edge towards the centre, hem, edge towards the side, top edge: counter-clockwise as seen on paper. */
  readonly edges: readonly Edge[];
  /** Closed ring, not repeated at its end. */
  readonly cutLine: readonly Point[];
  readonly grain: readonly [Point, Point];
  readonly marks: readonly Mark[];
}

/** Positions of the four edges of a panel. */
export const EDGE = { inner: 0, hem: 1, outer: 2, top: 3 } as const;

export interface TruedPanel {
  readonly panel: Panel;
  readonly inner: { readonly seam: TruedSeam; readonly leg: TruedLeg };
  readonly outer: { readonly seam: TruedSeam; readonly leg: TruedLeg };
  /** Top edge and hem as drafted on the panel's block. */
  readonly edges: { readonly top: EdgeLine; readonly hem: EdgeLine };
}

/**
 * Makes the piece of a trued panel. Null when its ends leave no closed, simple outline (a garment shorter than its
 * edges swing). `sure` is false when the cut line had to be left on the sew line.
 */
export function makePiece(
  { panel, inner, outer, edges }: TruedPanel,
  style: Style,
  waist: number,
  onFold: boolean,
): { piece: Piece; sure: boolean } | null {
  const innerPoints = pointsDown(panel.inner, inner.leg.top.y, inner.leg.hem.y);
  const outerPoints = pointsDown(panel.outer, outer.leg.top.y, outer.leg.hem.y);
  const hem = across(edges.hem, innerPoints.at(-1), inner.leg.hem, outerPoints.at(-1), outer.leg.hem);
  const top = across(edges.top, innerPoints[0], inner.leg.top, outerPoints[0], outer.leg.top);
  if (!isSimple(panel, inner.leg, outer.leg, top, hem)) return null;

  const outline: Edge[] = [
    legEdge(panel, 'inner', inner.seam.seam, style, onFold, innerPoints),
    { role: 'hem', side: false, mate: null, allowance: style.allowances.hem, points: hem },
    legEdge(panel, 'outer', outer.seam.seam, style, onFold, outerPoints.reverse()),
    { role: 'top', side: false, mate: null, allowance: style.allowances.top, points: top.reverse() },
  ];
  const cutLine = cutLineAround(outline);
  const marks = [
    ...(onFold ? [] : marksOn(panel, 'inner', inner.leg)),
    ...marksOn(panel, 'outer', outer.leg),
  ];
  const piece: Piece = {
    id: panel.id,
    block: panel.side,
    number: panel.number,
    cut: { count: onFold ? 1 : 2, onFold },
    edges: outline,
    cutLine: cutLine ?? outline.flatMap((edge) => edge.points.slice(0, -1)),
    grain: grainOf(panel, inner.leg, outer.leg, waist),
    marks,
  };
  return { piece, sure: cutLine !== null };
}

function across(
  line: EdgeLine,
  start: Point | undefined,
  inner: TruedLeg['top'],
  end: Point | undefined,
  outer: TruedLeg['top'],
): Point[] {
  return edgePoints(
    line,
    { point: start as Point, slope: inner.edgeSlope, closed: inner.closed },
    { point: end as Point, slope: outer.edgeSlope, closed: outer.closed },
  );
}

function legEdge(
  panel: Panel,
  which: 'inner' | 'outer',
  seam: Seam,
  style: Style,
  onFold: boolean,
  points: readonly Point[],
): Edge {
  if (seam.kind === 'centre')
    return {
      role: 'centre',
      side: false,
      mate: null,
      allowance: centreAllowance(style, onFold),
      points,
    };
  const mate = seam.a.panel === panel && seam.a.which === which ? seam.b : seam.a;
  return {
    role: 'seam',
    side: seam.kind === 'side',
    mate: mate ? { piece: mate.panel.id, edge: EDGE[mate.which] } : null,
    allowance: seam.kind === 'side' ? style.allowances.side : style.allowances.seam,
    points,
  };
}

function centreAllowance(style: Style, onFold: boolean): number {
  return onFold ? 0 : style.allowances.centre;
}

const marksOn = (panel: Panel, which: 'inner' | 'outer', leg: TruedLeg): Mark[] =>
  leg.marks.map(({ level, y }) => ({
    kind: 'balance',
    level,
    at: { x: xAt(panel[which], y), y },
    edge: EDGE[which],
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

/** A vertical line through the middle of the panel at the waist (or at the end nearest to it), kept clear of the edges. */
function grainOf(panel: Panel, inner: TruedLeg, outer: TruedLeg, waist: number): readonly [Point, Point] {
  const top = Math.max(inner.top.y, outer.top.y);
  const hem = Math.min(inner.hem.y, outer.hem.y);
  const clear = (hem - top) * 0.12;
  const middle = Math.min(hem - clear, Math.max(top + clear, waist));
  const x = (xAt(panel.inner, middle) + xAt(panel.outer, middle)) / 2;
  const reach = (limit: number): number => {
    let y = middle;
    for (let step = 1; step <= 24; step += 1) {
      const next = middle + ((limit - middle) * step) / 24;
      if (x - xAt(panel.inner, next) < GRAIN_CLEAR_MM || xAt(panel.outer, next) - x < GRAIN_CLEAR_MM) break;
      y = next;
    }
    return y;
  };
  return [
    { x, y: reach(top + clear) },
    { x, y: reach(hem - clear) },
  ];
}

const GRAIN_CLEAR_MM = 4;
