// The modesty panel behind a lacing: straight along the edges, which stand apart by the gap all the way down, and at its ends
// as top edge and hem are under which it lies.

import { at, first, last } from '../geometry/lists';
import { distance, type Point } from '../geometry/point';
import { polylineLength, withoutRepeats } from '../geometry/polyline';
import type { BesideCentre, LacedEdge, MarkOnEdge } from './lacedEdge';

export interface ModestyShape {
  /** Edges counter-clockwise as seen on paper: left, hem, right, top. */
  readonly left: readonly Point[];
  readonly hem: readonly Point[];
  readonly right: readonly Point[];
  readonly top: readonly Point[];
  readonly marks: readonly MarkOnEdge[];
}

/**
 * Its right side as seen lies under `right`, its left side under the mirror image of `left`; x from its left edge, y down from
 * where the laced edges begin. Null where top edge or hem turns down along the laced edge before the overlap ends, or the two
 * meet.
 *
 * @param gap between the laced edges, mm
 * @param overlap under each of them, mm
 */
export function modestyShape(
  left: LacedEdge,
  right: LacedEdge,
  gap: number,
  overlap: number,
): ModestyShape | null {
  const begin = first(right.centre).y;
  const endsOf = (edge: LacedEdge): Ends => ({
    top: endProfile(edge.centre, edge.top, overlap),
    hem: endProfile([...edge.centre].reverse(), edge.hem, overlap),
    length: polylineLength(edge.centre),
  });
  const [leftEnds, rightEnds] = [endsOf(left), endsOf(right)];
  if (!leftEnds.top || !leftEnds.hem || !rightEnds.top || !rightEnds.hem) return null;
  const middle = overlap + gap / 2;
  const place = (sign: 1 | -1, base: number, way: 1 | -1, { across, up }: Place): Point => ({
    x: middle + sign * (gap / 2 + across),
    y: begin + base - way * up,
  });
  // Both profiles begin at their laced edge; the gap between is crossed straight.
  const top = [
    ...[...rightEnds.top].reverse().map((each) => place(1, 0, 1, each)),
    ...leftEnds.top.map((each) => place(-1, 0, 1, each)),
  ];
  const hem = [
    ...[...leftEnds.hem].reverse().map((each) => place(-1, leftEnds.length, -1, each)),
    ...rightEnds.hem.map((each) => place(1, rightEnds.length, -1, each)),
  ];
  const [topRight, topLeft, footLeft, footRight] = [first(top), last(top), first(hem), last(hem)];
  if (topLeft.y >= footLeft.y || topRight.y >= footRight.y) return null;
  return {
    left: [topLeft, footLeft],
    hem: withoutRepeats(hem),
    right: [footRight, topRight],
    top: withoutRepeats(top),
    marks: [
      ...marksDown(left, begin, [topLeft, footLeft], 'inner'),
      ...marksDown(right, begin, [topRight, footRight], 'outer'),
    ],
  };
}

interface Ends {
  readonly top: readonly Place[] | null;
  readonly hem: readonly Place[] | null;
  readonly length: number;
}

/** A place of top edge or hem seen from the end of the laced edge: how far from it, and how far on past its end. */
interface Place {
  readonly across: number;
  readonly up: number;
}

/**
 * Top edge or hem over the overlap.
 *
 * @param centre the laced edge, from the end they meet it at
 */
function endProfile(
  centre: readonly Point[],
  runs: readonly BesideCentre[],
  overlap: number,
): readonly Place[] | null {
  const [end, next] = [at(centre, 0), at(centre, 1)];
  const length = distance(end, next) || 1;
  const on = { x: (end.x - next.x) / length, y: (end.y - next.y) / length };
  // Into the cloth, whichever end it is: the side is where x grows.
  const square = on.y < 0 ? { x: -on.y, y: on.x } : { x: on.y, y: -on.x };
  const places: Place[] = [{ across: 0, up: 0 }];
  for (const { points } of runs)
    for (const point of points.slice(1)) {
      const before = last(places);
      const [dx, dy] = [point.x - end.x, point.y - end.y];
      const [across, up] = [dx * square.x + dy * square.y, dx * on.x + dy * on.y];
      if (before.across >= overlap) return places;
      if (across <= before.across) return null;
      if (across < overlap) places.push({ across, up });
      else {
        const part = (overlap - before.across) / (across - before.across);
        places.push({ across: overlap, up: before.up + (up - before.up) * part });
      }
    }
  return last(places).across >= overlap ? places : null;
}

/** Balance marks of a laced edge as far down a long edge, where that is long enough. */
function marksDown(
  { centre, marks }: LacedEdge,
  begin: number,
  [top, foot]: readonly [Point, Point],
  edge: MarkOnEdge['edge'],
): MarkOnEdge[] {
  return marks
    .map((mark): MarkOnEdge => {
      const above = centre.filter(({ y }) => y < mark.at.y);
      const lowest = above.at(-1);
      const along = polylineLength(above) + (lowest ? distance(lowest, mark.at) : 0);
      return { ...mark, edge, at: { x: top.x, y: begin + along } };
    })
    .filter(({ at }) => at.y > top.y && at.y < foot.y);
}
