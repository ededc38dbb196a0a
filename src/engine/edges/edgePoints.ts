// Top edge or hem of one panel: the drafted edge between two legs, ended and turned there as truing asks.

import { type Cubic, cubicAcross } from '../geometry/cubic';
import { between, distance, type Point } from '../geometry/point';
import { isSamePoint, pointsAlong } from '../geometry/polyline';
import { crossingAt, type EdgeLine, knotsBetween } from './edgeLine';

/** Where the edge ends on a leg: the trued point, the slope dy/dx there, and the leg's closed distance from the centre. */
export interface EdgeEnd {
  readonly point: Point;
  readonly slope: number;
  /** The same as an angle, rad, where the edge may run upright or back. */
  readonly angle?: number | undefined;
  readonly sewnDistance: number;
}

/**
 * Points from the inner to the outer leg. What truing moved at the ends is let out evenly over the panel, so that
 * smooth nodes stay smooth and corners keep their turn.
 */
export function edgePoints(edge: EdgeLine, inner: EdgeEnd, outer: EdgeEnd): Point[] {
  const from = inner.sewnDistance;
  const to = outer.sewnDistance;
  const stretch = (to - from) / (outer.point.x - inner.point.x);
  const [moveIn, moveOut] = [
    inner.point.y - crossingAt(edge, from).y,
    outer.point.y - crossingAt(edge, to).y,
  ];
  const lean = (moveOut - moveIn) / (outer.point.x - inner.point.x);
  const stations = [
    { point: inner.point, before: inner.slope, after: inner.slope },
    ...knotsBetween(edge, from, to).map(({ at, crossing }) => {
      const part = (at - from) / (to - from);
      return {
        point: {
          x: inner.point.x + part * (outer.point.x - inner.point.x),
          y: crossing.y + moveIn + part * (moveOut - moveIn),
        },
        before: crossing.before * stretch + lean,
        after: crossing.after * stretch + lean,
      };
    }),
    { point: outer.point, before: outer.slope, after: outer.slope },
  ];
  const points: Point[] = [inner.point];
  let [start, after] = [inner.point, inner.slope];
  for (const station of stations.slice(1)) {
    if (station.point !== outer.point) {
      // Two knots may come to lie in one place, or one at the end: between them there is no line.
      if (isSamePoint(station.point, outer.point)) continue;
      if (isSamePoint(start, station.point)) {
        after = station.after;
        continue;
      }
    }
    points.push(...pointsAlong(heldBack(cubicAcross(start, after, station.point, station.before))).slice(1));
    [start, after] = [station.point, station.after];
  }
  return points;
}

/** A longer handle than this part of its chord, as where an edge arrives steeply, would swing the edge past its nodes. */
const LONGEST_HANDLE = 0.5;

function heldBack({ start, startHandle, endHandle, end }: Cubic): Cubic {
  const most = LONGEST_HANDLE * distance(start, end);
  const shortened = (from: Point, handle: Point): Point => {
    const length = distance(from, handle);
    return length > most ? between(from, handle, most / length) : handle;
  };
  return { start, startHandle: shortened(start, startHandle), endHandle: shortened(end, endHandle), end };
}
