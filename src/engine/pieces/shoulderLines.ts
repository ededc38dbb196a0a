// What a panel of a shouldered block has instead of a top edge: its parts of neckline, shoulder line and armhole, from the centre
// to the side.

import type { Block } from '../block/block';
import {
  edgesFrom,
  endOfDart,
  partingEnds,
  type RestOfEdges,
  type UpperEdges,
  type UpperEnd,
} from '../block/shoulders/upperEdges';
import type { EdgeEnd } from '../edges/edgePoints';
import type { Cubic } from '../geometry/cubic';
import { cubicsLength, cutCubics, type Heading, laidBetween } from '../geometry/cubicLength';
import { at as elementAt } from '../geometry/lists';
import { between, type Point } from '../geometry/point';
import { pointsAlong } from '../geometry/polyline';
import { xAt } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import type { ShoulderPart } from '../terms/identity';
import type { BlockName } from '../terms/names';
import type { DartLegs, EdgeRow } from './edgeRow';

/** How a panel meets the edges above. */
export interface PanelShoulder {
  readonly upper: UpperEdges;
  /** The ends of the wedges before and behind it; null at the centre line and at the side. */
  readonly before: UpperEnd | null;
  readonly behind: UpperEnd | null;
  /** Its inward point of the armhole. */
  readonly inward: Point;
  /** Where wedges of either block part the shoulder seam, from the neck point: parts of its length, ascending. */
  readonly partings: readonly number[];
}

/** How each panel meets the edges above, by its id. */
export function panelShoulders(
  panels: readonly Panel[],
  blocks: Readonly<Record<BlockName, Block>>,
): Map<string, PanelShoulder> {
  const parts = (['front', 'back'] as const).flatMap((block) =>
    (blocks[block].upper?.ends ?? []).filter(({ edge }) => edge === 'shoulder').map(({ part }) => part),
  );
  const partings = [...new Set(parts)].sort((a, b) => a - b);
  return new Map(
    panels.flatMap(({ id, block, number }): [string, PanelShoulder][] => {
      const { upper } = blocks[block];
      if (!upper) return [];
      const ends = partingEnds(upper);
      const before = ends[number - 2] ?? null;
      const behind = ends[number - 1] ?? null;
      return [[id, { upper, before, behind, inward: inwardBeyond(upper, before), partings }]];
    }),
  );
}

/** The armhole's inward point as what lies beyond an end has it; null stands for the centre line. */
const inwardBeyond = ({ ends, inward }: UpperEdges, end: UpperEnd | null): Point =>
  inward[end ? ends.indexOf(end) + 1 : 0] ?? (inward.at(-1) as Point);

/** A dart that opens in the edges above, and where its legs end, as trued. */
interface TruedLegs {
  readonly legs: DartLegs;
  readonly inner: EdgeEnd;
  readonly outer: EdgeEnd;
}

/** Rows from the panel's inner edge to its outer, parted by the darts that open there; `ends` are where its legs end, as trued. */
export function shoulderRows(
  panel: Panel,
  shoulder: PanelShoulder,
  [inner, outer]: readonly [EdgeEnd, EdgeEnd],
  darts: readonly TruedLegs[],
): (EdgeRow | DartLegs)[] {
  const { upper, behind } = shoulder;
  const rows: (EdgeRow | DartLegs)[] = [];
  let [from, before, inward] = [inner, shoulder.before, shoulder.inward];
  for (const dart of darts) {
    const end = endOfDart(upper, dart.legs.dart.wedge);
    if (!end) continue;
    rows.push(...rowsBetween(panel, { ...shoulder, before, behind: end, inward }, [from, dart.inner]));
    rows.push(dart.legs);
    [from, before, inward] = [dart.outer, end, inwardBeyond(upper, end)];
  }
  return [...rows, ...rowsBetween(panel, { ...shoulder, before, behind, inward }, [from, outer])];
}

/** Rows from one end of a wedge, or an edge of the panel, to the next. */
function rowsBetween(
  panel: Panel,
  { upper, before, behind, inward, partings }: PanelShoulder,
  [inner, outer]: readonly [EdgeEnd, EdgeEnd],
): EdgeRow[] {
  const underarm = behind ? { point: upper.frame.underarm, slope: 0 } : outer;
  const shift = before ? 0 : xAt(panel.inner, upper.frame.neck.y);
  const rest = edgesFrom(upper.frame, before, headingOf(inner), shift, inward, underarm);
  const until = behind?.edge ?? 'armhole';
  const rows: EdgeRow[] = [];
  if (rest.neckline) rows.push(necklinePart(rest.neckline, before, behind, inner, outer));
  if (rest.tip && until !== 'neckline')
    rows.push(...shoulderParts(rest, before, behind, [inner.point, outer.point], partings, upper.frame.ease));
  if (until === 'armhole') rows.push(armholePart(rest.armhole, before, behind, outer));
  return rows;
}

const headingOf = ({ point, slope, angle }: EdgeEnd): Heading => ({
  point,
  angle: angle ?? Math.atan(slope),
});

/** The part of an edge up to a wedge, of what is left of it past another. */
const partOfRest = (before: UpperEnd | null, { edge, part }: UpperEnd): number =>
  before?.edge === edge ? (part - before.part) / (1 - before.part) : part;

function necklinePart(
  curve: Cubic,
  before: UpperEnd | null,
  behind: UpperEnd | null,
  inner: EdgeEnd,
  outer: EdgeEnd,
): EdgeRow {
  const endsHere = behind?.edge === 'neckline';
  const cubic = endsHere
    ? laidBetween(
        elementAt(cutCubics([curve], partOfRest(before, behind)).before, 0),
        headingOf(inner),
        headingOf(outer),
      )
    : curve;
  return { role: 'top', points: pointsAlong(cubic), sewnDistance: before ? null : [0, 0] };
}

/** The shoulder line from the neck point or a wedge to the tip or a wedge, parted where the seam is. */
function shoulderParts(
  { neck, tip }: RestOfEdges,
  before: UpperEnd | null,
  behind: UpperEnd | null,
  [inner, outer]: readonly [Point, Point],
  partings: readonly number[],
  ease: number,
): EdgeRow[] {
  const [start, from] = before?.edge === 'shoulder' ? [inner, before.part] : [neck, 0];
  const [end, to] = behind?.edge === 'shoulder' ? [outer, behind.part] : [tip?.point, 1];
  if (!start || !end) return [];
  const stops = [from, ...partings.filter((part) => part > from && part < to), to];
  const points = stops.map((part, i) => {
    if (i === 0) return start;
    return i === stops.length - 1 ? end : between(start, end, (part - from) / (to - from));
  });
  return stops.slice(1).map((stop, i) => ({
    role: 'shoulder',
    shoulder: partName(stop, partings),
    ...(ease > 0 ? { ease: ease * (stop - elementAt(stops, i)) } : {}),
    points: [elementAt(points, i), elementAt(points, i + 1)],
    sewnDistance: null,
  }));
}

/** The part of the shoulder seam that ends at a part of its length. */
function partName(end: number, partings: readonly number[]): ShoulderPart {
  if (partings.length === 0) return 'whole';
  if (end === partings[0]) return 'neck';
  return end === 1 ? 'tip' : 'middle';
}

/** The least length of a curve that is turned at its end, mm. Our own bound, no source. */
const LEAST_CURVE_MM = 6;

function armholePart(
  curve: readonly Cubic[],
  before: UpperEnd | null,
  behind: UpperEnd | null,
  outer: EdgeEnd,
): EdgeRow {
  if (!behind)
    return {
      role: 'armhole',
      points: pointsThrough(curve),
      sewnDistance: [outer.sewnDistance, outer.sewnDistance],
    };
  const { before: cut } = cutCubics(curve, partOfRest(before, behind));
  const tail = cut.at(-1);
  // Just past the inward point there is no room for a curve of its own.
  const cubics = tail && cut.length > 1 && cubicsLength([tail]) < LEAST_CURVE_MM ? cut.slice(0, -1) : cut;
  const last = elementAt(cubics, cubics.length - 1);
  const first = cubics[0] ?? last;
  const leaving: Heading = {
    point: last.start,
    angle: Math.atan2(last.startHandle.y - last.start.y, last.startHandle.x - last.start.x),
  };
  const closing = laidBetween(last, leaving, headingOf(outer));
  return {
    role: 'armhole',
    points: pointsThrough(cubics.length > 1 ? [first, closing] : [closing]),
    sewnDistance: null,
  };
}

/** Points along cubics that follow one another. */
export const pointsThrough = (cubics: readonly Cubic[]): Point[] =>
  cubics.flatMap((cubic, i) => (i === 0 ? pointsAlong(cubic) : pointsAlong(cubic).slice(1)));
