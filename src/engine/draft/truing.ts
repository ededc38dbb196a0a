// Truing: mates made equal in length by construction, and edges that run straight across a sewn seam.

import { heightAtLength, seamLength } from '../geometry/seamLength';
import { slopeAt } from '../geometry/smoothLine';
import type { Level } from './levels';
import { type Leg, lineOf, type Seam } from './panels';
import type { LevelName } from './types';

/** Where a leg ends, and how the top edge or hem leaves it there. */
interface LegEnd {
  /** Height, mm. */
  readonly y: number;
  /** Slope dy/dx of the edge where it meets this leg. */
  readonly edgeSlope: number;
}

/** A balance mark on a leg. */
interface LegMark {
  readonly level: LevelName;
  readonly y: number;
}

export interface TruedLeg {
  readonly top: LegEnd;
  readonly hem: LegEnd;
  readonly marks: readonly LegMark[];
}

export interface TruedSeam {
  readonly seam: Seam;
  readonly a: TruedLeg;
  /** Null at a centre edge. */
  readonly b: TruedLeg | null;
  /** How far the mates' lengths differed before truing, mm, a − b; 0 at a centre edge. */
  readonly natural: number;
  /** The farthest a balance mark had to leave its level line, mm along the seam. */
  readonly markDrift: number;
}

/** Marks nearer an end than this are of no use at the machine. mm */
const MARK_CLEAR_MM = 6;

/**
 * Trues one seam. Both mates are measured from the waist line; top edge, hem and balance marks are set at the mean of
 * the two distances, so mates are equal to the mark. Where the edges cross, the kink that two level edges would
 * make is shared between the panels; at a centre edge they meet it square.
 *
 * @param top height of the top edge as drafted, mm
 * @param hem height of the hem as drafted, mm
 */
export function trueSeam(
  seam: Seam,
  levels: readonly Level[],
  waist: number,
  top: number,
  hem: number,
): TruedSeam {
  const legs = seam.b ? [seam.a, seam.b] : [seam.a];
  const mean = (y: number): number =>
    legs.reduce((sum, leg) => sum + seamLength(lineOf(leg), waist, y), 0) / legs.length;
  const [topLength, hemLength] = [mean(top), mean(hem)];
  const inside = levels
    .map((level) => ({ level, length: mean(level.y) }))
    .filter(({ length }) => length > topLength + MARK_CLEAR_MM && length < hemLength - MARK_CLEAR_MM);
  let markDrift = 0;
  for (const { level, length } of inside)
    for (const leg of legs)
      markDrift = Math.max(markDrift, Math.abs(seamLength(lineOf(leg), waist, level.y) - length));

  const placed = legs.map((leg) => ({
    leg,
    topY: heightAtLength(lineOf(leg), waist, topLength),
    hemY: heightAtLength(lineOf(leg), waist, hemLength),
    marks: inside.map(({ level, length }) => ({
      level: level.name,
      y: heightAtLength(lineOf(leg), waist, length),
    })),
  }));
  const trued = placed.map(({ leg, topY, hemY, marks }, i) => {
    const mate = placed[1 - i];
    const slope = (y: number, mateY: number | undefined): number =>
      Math.tan(edgeTurn(seam, tilt(leg, y), mate && mateY !== undefined ? tilt(mate.leg, mateY) : null));
    return {
      top: { y: topY, edgeSlope: slope(topY, mate?.topY) },
      hem: { y: hemY, edgeSlope: slope(hemY, mate?.hemY) },
      marks,
    };
  });
  const natural = seam.b ? seamLength(lineOf(seam.a), top, hem) - seamLength(lineOf(seam.b), top, hem) : 0;
  return { seam, a: trued[0] as TruedLeg, b: trued[1] ?? null, natural, markDrift };
}

/** How far a leg leans from the vertical at height `y`, rad, positive when it runs outwards going down. */
const tilt = (leg: Leg, y: number): number => Math.atan(slopeAt(lineOf(leg), y));

/**
 * The angle by which a level edge is turned where it meets a leg, rad. Sewn, the two edges make
 * 180° when turn + tilt is the same on both mates; at the side seam the back lies mirrored, so it is the opposite.
 */
function edgeTurn(seam: Seam, own: number, mate: number | null): number {
  if (mate === null) return -own;
  return seam.kind === 'side' ? -(own + mate) / 2 : (mate - own) / 2;
}
