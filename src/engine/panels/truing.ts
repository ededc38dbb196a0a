// Truing: mates made equal in length by construction, and edges that run straight across a sewn seam.

import type { Level } from '../block/lines/levels';
import { first, numberAt } from '../geometry/lists';
import { heightAtLength, seamLength } from '../geometry/seamLength';
import { slopeAt } from '../geometry/smoothLine';
import type { LevelName } from '../terms/names';
import type { SeamCrossings } from './crossings';
import { heightOn } from './raisedSeam';
import type { SeamCrossing } from './seamCrossing';
import { isFacing, type Seam, type SeamEdge } from './seamEdge';

/** Where a mate of a seam ends, and how top edge or hem leaves it there. */
interface TruedEnd {
  /** Height, mm. */
  readonly y: number;
  /** Slope dy/dx of the edge where it meets this mate, on this mate's panel. */
  readonly edgeSlope: number;
  /** The same as an angle, rad, where neckline, shoulder or armhole may run upright or back towards the centre. */
  readonly edgeAngle?: number;
  /** The mate's distance from the centre line with the wedges sewn up, mm. */
  readonly sewnDistance: number;
}

/** A balance mark on a mate, at its height, mm. */
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
  /** True where an edge is so steep that it cannot cross the seam in the direction asked for. */
  readonly steep: boolean;
}

/** The steepest that an edge leaves a mate: a steeper one would run along the seam. */
const STEEPEST_RAD = (80 * Math.PI) / 180;

/** A mark nearer than this to an end of its seam is left out: it does not help in sewing. mm */
const MARK_CLEAR_MM = 6;

/**
 * Trues one seam. Both mates are measured from the waist line (a dart from its point), along the seam. Their ends at top edge and
 * hem, and their balance marks, are set at the mean of the two lengths, so that mates are equal from mark to mark. Where top edge
 * and hem cross the seam, each panel's edge is turned by half of the kink that the lean of the two mates would make; at a centre
 * edge they meet it at a right angle, unless the style has a corner there.
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
  const topLengths = along(top.y);
  const hemLengths = along(hem.y);
  const follows = top.end?.kind === 'follows' ? top.end : null;
  const topLength = follows ? first(topLengths) : mean(topLengths);
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
      heightAtLength(seamEdge.line, y, length - numberAt(lengths, i));
    return {
      seamEdge,
      topY: follows && i === 0 ? top.y : even(top.y, topLengths, topLength),
      hemY: even(hem.y, hemLengths),
      marks: inside.map(({ level, lengths }) => ({ level: level.name, y: even(level.y, lengths) })),
    };
  });
  const trued = placed.map(({ seamEdge, topY, hemY, marks }, i) => {
    const mate = placed[1 - i];
    const end = (crossing: SeamCrossing, y: number, mateY: number | undefined) =>
      trueEnd(seam, crossing, {
        y,
        isSecond: i === 1,
        tilt: tilt(seamEdge, y),
        mateTilt: mate && mateY !== undefined ? tilt(mate.seamEdge, mateY) : null,
      });
    return { top: end(top, topY, mate?.topY), hem: end(hem, hemY, mate?.hemY), marks };
  });
  const edgeOf = ({ top: upper, hem: lower, marks }: (typeof trued)[number]): TruedEdge => ({
    top: upper.end,
    hem: lower.end,
    marks,
  });
  // Edges that follow the first mate are turned with the second, which ends there by its length.
  const [a = 0, b = a] = mates.map(
    (_, i) => numberAt(hemLengths, i) - (follows ? topLength : numberAt(topLengths, i)),
  );
  const second = trued[1];
  return {
    seam,
    edges,
    a: edgeOf(first(trued)),
    b: second ? edgeOf(second) : null,
    lengthDifference: a - b,
    markDrift,
    steep: trued.some(({ top: upper, hem: lower }) => upper.isSteep || lower.isSteep),
  };
}

/** Where an edge meets one mate of a seam. */
interface Meeting {
  /** Height on that mate, mm. */
  readonly y: number;
  readonly isSecond: boolean;
  /** How far that mate leans there, and how far the other one does where the edge meets it, rad; null at a centre edge. */
  readonly tilt: number;
  readonly mateTilt: number | null;
}

/**
 * The end of a mate, with the direction in which the edge leaves it; `isSteep` where it had to be held back at {@link
 * STEEPEST_RAD}.
 */
function trueEnd(
  seam: Seam,
  { end, slopeA, slopeB, sewnDistanceA, sewnDistanceB }: SeamCrossing,
  { y, isSecond, tilt: own, mateTilt }: Meeting,
): { end: TruedEnd; isSteep: boolean } {
  const sewnDistance = isSecond ? sewnDistanceB : sewnDistanceA;
  if (end?.kind === 'follows') {
    const edgeAngle = end.angle + (isSecond && mateTilt !== null ? mateTilt - own : 0);
    return { end: { y, edgeSlope: Math.tan(edgeAngle), edgeAngle, sewnDistance }, isSteep: false };
  }
  if (end?.kind === 'square')
    return {
      end: { y, edgeSlope: Math.tan(squareTurn(own, mateTilt ?? own)), sewnDistance },
      isSteep: false,
    };
  const angle = Math.atan(isSecond ? slopeB : slopeA) + edgeTurn(seam, own, mateTilt);
  const edgeSlope = Math.tan(Math.min(STEEPEST_RAD, Math.max(-STEEPEST_RAD, angle)));
  return { end: { y, edgeSlope, sewnDistance }, isSteep: Math.abs(angle) > STEEPEST_RAD };
}

const mean = (lengths: readonly number[]): number =>
  lengths.reduce((sum, length) => sum + length, 0) / lengths.length;

/** Trues an open dart: both legs are measured from its point, where they meet untrued. */
export function trueDart(seam: Seam, levels: readonly Level[], edges: SeamCrossings): TruedSeam {
  const point = seam.a.dart?.upper ?? seam.a.dart?.lower ?? 0;
  const shut: SeamCrossing = { y: point, slopeA: 0, slopeB: 0, sewnDistanceA: 0, sewnDistanceB: 0 };
  const open = seam.a.dart?.lower === null ? { top: shut, hem: edges.hem } : { top: edges.top, hem: shut };
  return trueSeam(seam, levels, point, open);
}

/** Where mates lean farther apart than twice this, an edge square to both would dip before one and rise before the other. */
const MOST_APART_RAD = (14 * Math.PI) / 180;

/** The angle of an edge that meets a mate at a right angle, rad, turned so that it runs straight on across the sewn seam. */
const squareTurn = (own: number, other: number): number => {
  const apart = (own - other) / 2;
  return -(own + other) / 2 - Math.min(MOST_APART_RAD, Math.max(-MOST_APART_RAD, apart));
};

/** How far a mate leans from the vertical at height `y`, rad, positive when it runs outwards going down. */
const tilt = (seamEdge: SeamEdge, y: number): number => Math.atan(slopeAt(seamEdge.line, y));

/**
 * The angle by which a drafted edge is turned where it meets a mate, rad. Sewn, the two edges make
 * 180° when turn + tilt is the same on both mates; where one lies mirrored, as at the side seam, it is the opposite.
 */
function edgeTurn(seam: Seam, own: number, mate: number | null): number {
  if (mate === null) return -own;
  return isFacing(seam) ? -(own + mate) / 2 : (mate - own) / 2;
}
