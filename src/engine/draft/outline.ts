// The sewn outline of a panel: its legs, and top edge and hem between them, parted where a dart is open.

import type { Point } from '../geometry/point';
import { pointsDown } from '../geometry/polyline';
import type { PanelDart } from './darts';
import type { EdgeLine } from './edgeLine';
import { type EdgeEnd, edgePoints } from './edgePoints';
import type { Panel } from './panels';
import type { TruedLeg, TruedSeam } from './truing';

/** One of a panel's own edges with the seam it belongs to. */
export interface PanelLeg {
  readonly seam: TruedSeam;
  readonly leg: TruedLeg;
}

/** A panel whose seams are trued. */
export interface TruedPanel {
  readonly panel: Panel;
  readonly inner: PanelLeg;
  readonly outer: PanelLeg;
  /** The seams of its open darts. */
  readonly darts: readonly TruedSeam[];
  /** Top edge and hem as drafted on the panel's block. */
  readonly edges: { readonly top: EdgeLine; readonly hem: EdgeLine };
}

/** An open dart on the outline: both legs from its point to the edge. */
export interface DartLegs {
  readonly dart: PanelDart;
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
}

/** Rows of points, all from the centre towards the side and from the top down. */
export interface Outline {
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  /** The top edge from leg to leg, and the darts between its parts: one fewer than there are parts. */
  readonly top: { readonly parts: readonly (readonly Point[])[]; readonly darts: readonly DartLegs[] };
  readonly hem: { readonly parts: readonly (readonly Point[])[]; readonly darts: readonly DartLegs[] };
}

export function outlineOf({ panel, inner, outer, darts, edges }: TruedPanel): Outline {
  const innerPoints = pointsDown(panel.inner, inner.leg.top.y, inner.leg.hem.y);
  const outerPoints = pointsDown(panel.outer, outer.leg.top.y, outer.leg.hem.y);
  const along = (edge: 'top' | 'hem'): Outline['top'] => {
    const open = darts.flatMap(({ seam, a, b }) => {
      const dart = seam.a.dart;
      return dart && b && dart[edge === 'top' ? 'upper' : 'lower'] === null ? [{ dart, a, b }] : [];
    });
    const legs = open.map(({ dart, a, b }) => ({
      dart,
      inner: pointsDown(dart.innerLeg, a.top.y, a.hem.y),
      outer: pointsDown(dart.outerLeg, b.top.y, b.hem.y),
    }));
    const last = (points: readonly Point[]): Point => (edge === 'top' ? points[0] : points.at(-1)) as Point;
    const ends: EdgeEnd[] = [
      endOf(last(innerPoints), inner.leg[edge]),
      ...open.flatMap(({ a, b }, i) => [
        endOf(last(legs[i]?.inner ?? []), a[edge]),
        endOf(last(legs[i]?.outer ?? []), b[edge]),
      ]),
      endOf(last(outerPoints), outer.leg[edge]),
    ];
    const parts: Point[][] = [];
    for (let i = 0; i < ends.length; i += 2)
      parts.push(edgePoints(edges[edge], ends[i] as EdgeEnd, ends[i + 1] as EdgeEnd));
    return { parts, darts: legs };
  };
  return { inner: innerPoints, outer: outerPoints, top: along('top'), hem: along('hem') };
}

const endOf = (point: Point, { edgeSlope, closed }: TruedLeg['top']): EdgeEnd => ({
  point,
  slope: edgeSlope,
  closed,
});
