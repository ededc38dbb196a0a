// The sewn outline of a panel: its legs, and top edge and hem between them, parted where a dart is open.

import type { EdgeLine } from '../edges/edgeLine';
import { type EdgeEnd, edgePoints } from '../edges/edgePoints';
import { first, last } from '../geometry/lists';
import type { Point } from '../geometry/point';
import { pointsDown } from '../geometry/polyline';
import type { Panel } from '../panels/panel';
import type { TruedEdge, TruedSeam } from '../panels/truing';
import type { DartLegs, EdgeRow, Outline } from './edgeRow';
import { type PanelShoulder, shoulderRows } from './shoulderLines';

/** One of a panel's own edges with the seam it belongs to. */
export interface PanelEdge {
  readonly seam: TruedSeam;
  readonly trued: TruedEdge;
}

/** A panel whose seams are trued. */
export interface TruedPanel {
  readonly panel: Panel;
  readonly inner: PanelEdge;
  readonly outer: PanelEdge;
  /** The seams of its open darts. */
  readonly darts: readonly TruedSeam[];
  /** Top edge and hem as drafted on the panel's block. */
  readonly edges: { readonly top: EdgeLine; readonly hem: EdgeLine };
  /** The shoulders of a shouldered block; null where the top edge is strapless. */
  readonly shoulder: PanelShoulder | null;
}

/** The outline of a trued panel: between its long edges top edge and hem, or neckline, shoulder and armhole, and its open darts. */
export function outlineOf({ panel, inner, outer, darts, edges, shoulder }: TruedPanel): Outline {
  const innerPoints = pointsDown(panel.inner, inner.trued.top.y, inner.trued.hem.y);
  const outerPoints = pointsDown(panel.outer, outer.trued.top.y, outer.trued.hem.y);
  const endPoint = (edge: 'top' | 'hem', points: readonly Point[]): Point =>
    edge === 'top' ? first(points) : last(points);
  const ends = (edge: 'top' | 'hem'): [EdgeEnd, EdgeEnd] => [
    endOf(endPoint(edge, innerPoints), inner.trued[edge]),
    endOf(endPoint(edge, outerPoints), outer.trued[edge]),
  ];
  const opening = (edge: 'top' | 'hem') =>
    darts.flatMap(({ seam, a, b }) => {
      const dart = seam.a.dart;
      if (!dart || !b || dart[edge === 'top' ? 'upper' : 'lower'] !== null) return [];
      const legs: DartLegs = {
        dart,
        inner: pointsDown(dart.innerLeg, a.top.y, a.hem.y),
        outer: pointsDown(dart.outerLeg, b.top.y, b.hem.y),
      };
      return [
        {
          legs,
          inner: endOf(endPoint(edge, legs.inner), a[edge]),
          outer: endOf(endPoint(edge, legs.outer), b[edge]),
        },
      ];
    });
  const along = (edge: 'top' | 'hem'): (EdgeRow | DartLegs)[] => {
    const [start, to] = ends(edge);
    let from = start;
    const rows: (EdgeRow | DartLegs)[] = [];
    for (const dart of opening(edge)) {
      rows.push(rowBetween(edge, edges[edge], from, dart.inner), dart.legs);
      from = dart.outer;
    }
    return [...rows, rowBetween(edge, edges[edge], from, to)];
  };
  return {
    inner: innerPoints,
    outer: outerPoints,
    top: shoulder ? shoulderRows(panel, shoulder, ends('top'), opening('top')) : along('top'),
    hem: along('hem'),
  };
}

const rowBetween = (role: 'top' | 'hem', line: EdgeLine, from: EdgeEnd, to: EdgeEnd): EdgeRow => ({
  role,
  points: edgePoints(line, from, to),
  sewnDistance: [from.sewnDistance, to.sewnDistance],
});

const endOf = (point: Point, { edgeSlope, edgeAngle, sewnDistance }: TruedEdge['top']): EdgeEnd => ({
  point,
  slope: edgeSlope,
  angle: edgeAngle,
  sewnDistance,
});
