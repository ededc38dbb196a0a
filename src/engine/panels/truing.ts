// Truing: mates made equal in length by construction, and edges that run straight across a sewn seam.

import type { Level } from '../block/lines/levels';
import { heightAtLength, seamLength } from '../geometry/seamLength';
import { slopeAt } from '../geometry/smoothLine';
import type { LevelName } from '../terms/names';
import type { SeamCrossings } from './crossings';
import { heightOn } from './raisedSeam';
import type { SeamCrossing } from './seamCrossing';
import { isFacing, type Seam, type SeamEdge } from './seamEdge';

/** Where a leg ends, and how the top edge or hem leaves it there. */
interface TruedEnd {
  /** Height, mm. */
  readonly y: number;
  /** Slope dy/dx of the edge where it meets this leg. */
  readonly edgeSlope: number;
  /** The same as an angle, rad, where neckline, shoulder or armhole may run upright or back towards the centre. */
  readonly edgeAngle?: number;
  /** The leg's distance from the centre line with the wedges sewn up, mm. */
  readonly sewnDistance: number;
}

/** A balance mark on a leg. */
interface TruedMark {
  readonly level: LevelName;
  readonly y: number;
}

export interface TruedEdge {
  readonly top: TruedEnd;
  readonly hem: TruedEnd;
  readonly marks: readonly TruedMark[];
}

export interface TruedSeam {
  readonly seam: Seam;
  readonly edges: SeamCrossings;
  readonly a: TruedEdge;
  /** Null at a centre edge. */
  readonly b: TruedEdge | null;
  /** How far the mates' lengths differed before truing, mm, a − b; 0 at a centre edge. */
  readonly lengthDifference: number;
  /** The farthest a balance mark had to leave its level line, mm along the seam. */
  readonly markDrift: number;
  /** An edge had to be held back from running along the seam, so that it cannot cross as asked. */
  readonly steep: boolean;
}

/** An edge steeper than this at a leg would run along it; it is held there. */
const STEEPEST_RAD = (80 * Math.PI) / 180;

/** Marks nearer an end than this are of no use at the machine. mm */
const MARK_CLEAR_MM = 6;

/**
 * Trues one seam. Both mates are measured from the waist line (a dart from its point); top edge, hem and balance marks are set at the mean of
 * the two distances, so mates are equal to the mark. Where the edges cross, the kink that the legs' lean would
 * make is shared between the panels; at a centre edge they meet it square, but for a corner that is wanted.
 *
 * @param from height that both mates are measured from, mm, as it lies on this seam
 * @param edges top edge and hem as drafted where they cross this seam
 */
export function trueSeam(
  seam: Seam,
  levels: readonly Level[],
  from: number,
  edges: SeamCrossings,
): TruedSeam {
  const { top, hem } = edges;
  const mates = seam.b ? [seam.a, seam.b] : [seam.a];
  const along = (y: number): readonly number[] => mates.map((seamEdge) => seamLength(seamEdge.line, from, y));
  const [topLengths, hemLengths] = [along(top.y), along(hem.y)];
  const follows = top.end?.kind === 'follows' ? top.end : null;
  const topLength = follows ? (topLengths[0] as number) : mean(topLengths);
  const hemLength = mean(hemLengths);
  const inside = levels
    .map(({ name, y }) => ({ name, y: heightOn(seam, y) }))
    .map((level) => ({ level, lengths: along(level.y) }))
    .filter(({ lengths }) => {
      const length = mean(lengths);
      return length > topLength + MARK_CLEAR_MM && length < hemLength - MARK_CLEAR_MM;
    });
  const markDrift = inside.reduce(
    (most, { lengths }) => Math.max(most, ...lengths.map((own) => Math.abs(own - mean(lengths)))),
    0,
  );
  const placed = mates.map((seamEdge, i) => {
    // Looked for from where it would be without its mate, so that there is little way to go.
    const even = (y: number, lengths: readonly number[], length = mean(lengths)): number =>
      heightAtLength(seamEdge.line, y, length - (lengths[i] as number));
    return {
      leg: seamEdge,
      topY: follows && i === 0 ? top.y : even(top.y, topLengths, topLength),
      hemY: even(hem.y, hemLengths),
      marks: inside.map(({ level, lengths }) => ({ level: level.name, y: even(level.y, lengths) })),
    };
  });
  let steepest = 0;
  const trued = placed.map(({ leg: seamEdge, topY, hemY, marks }, i) => {
    const mate = placed[1 - i];
    const end = (crossing: SeamCrossing, y: number, mateY: number | undefined): TruedEnd => {
      const own = tilt(seamEdge, y);
      const sewnDistance = i === 0 ? crossing.sewnDistanceA : crossing.sewnDistanceB;
      if (crossing.end?.kind === 'follows') {
        const isSecond = i === 1 && mate && mateY !== undefined;
        const edgeAngle = crossing.end.angle + (isSecond ? tilt(mate.leg, mateY) - own : 0);
        return { y, edgeSlope: Math.tan(edgeAngle), edgeAngle, sewnDistance };
      }
      if (crossing.end?.kind === 'square') {
        const other = mate && mateY !== undefined ? tilt(mate.leg, mateY) : own;
        return { y, edgeSlope: Math.tan(squareTurn(own, other)), sewnDistance };
      }
      const turn = edgeTurn(seam, own, mate && mateY !== undefined ? tilt(mate.leg, mateY) : null);
      const drafted = Math.atan(i === 0 ? crossing.slopeA : crossing.slopeB);
      steepest = Math.max(steepest, Math.abs(drafted + turn));
      return {
        y,
        edgeSlope: Math.tan(Math.min(STEEPEST_RAD, Math.max(-STEEPEST_RAD, drafted + turn))),
        sewnDistance,
      };
    };
    return { top: end(top, topY, mate?.topY), hem: end(hem, hemY, mate?.hemY), marks };
  });
  // Edges that follow the first mate are turned with the second, which ends there by its length.
  const [a = 0, b = a] = mates.map(
    (_, i) => (hemLengths[i] as number) - (follows ? topLength : (topLengths[i] as number)),
  );
  return {
    seam,
    edges,
    a: trued[0] as TruedEdge,
    b: trued[1] ?? null,
    lengthDifference: a - b,
    markDrift,
    steep: steepest > STEEPEST_RAD,
  };
}

const mean = (lengths: readonly number[]): number =>
  lengths.reduce((sum, length) => sum + length, 0) / lengths.length;

/** Trues an open dart: both legs are measured from its point, where they meet as they are. */
export function trueDart(seam: Seam, levels: readonly Level[], edges: SeamCrossings): TruedSeam {
  const point = seam.a.dart?.upper ?? seam.a.dart?.lower ?? 0;
  const shut: SeamCrossing = { y: point, slopeA: 0, slopeB: 0, sewnDistanceA: 0, sewnDistanceB: 0 };
  const open = seam.a.dart?.lower === null ? { top: shut, hem: edges.hem } : { top: edges.top, hem: shut };
  return trueSeam(seam, levels, point, open);
}

/** Where mates lean farther apart than twice this, an edge square to both would dip before one and rise before the other. */
const MOST_APART_RAD = (14 * Math.PI) / 180;

/** The angle at which an edge meets a leg square, rad; the turns of both mates together let it run straight on. */
const squareTurn = (own: number, other: number): number => {
  const apart = (own - other) / 2;
  return -(own + other) / 2 - Math.min(MOST_APART_RAD, Math.max(-MOST_APART_RAD, apart));
};

/** How far a leg leans from the vertical at height `y`, rad, positive when it runs outwards going down. */
const tilt = (seamEdge: SeamEdge, y: number): number => Math.atan(slopeAt(seamEdge.line, y));

/**
 * The angle by which a drafted edge is turned where it meets a leg, rad. Sewn, the two edges make
 * 180° when turn + tilt is the same on both mates; where one lies mirrored, as at the side seam, it is the opposite.
 */
function edgeTurn(seam: Seam, own: number, mate: number | null): number {
  if (mate === null) return -own;
  return isFacing(seam) ? -(own + mate) / 2 : (mate - own) / 2;
}
