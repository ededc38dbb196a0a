// The sewn shape of a block above the bust: neck point, shoulder line, tip, and the lines that neckline and armhole keep to.

import type { Body } from '../../body/body';
import type { Cubic } from '../../geometry/cubic';
import type { Heading } from '../../geometry/cubicLength';
import type { Point } from '../../geometry/point';
import { halfOpenAt } from '../../style/openings';
import type { Shoulders, Style } from '../../style/style';
import type { UpperEdge } from '../../style/wedgeFields';
import type { BlockName } from '../../terms/names';
import { inches } from '../../terms/units';
import { easeOf, type FrontAndBack, shoulderLines } from './shoulderLine';

/** A block's shoulder with all wedges sewn up; x from the block's centre edge, y down from the shoulder level, mm. */
export interface ShoulderFrame {
  readonly block: BlockName;
  readonly neck: Point;
  readonly tip: Point;
  /** The shoulder line falls by this angle going outwards, rad. */
  readonly angle: number;
  /** How much longer it is than the other block's shoulder line, to which it is eased, mm: 0 in front. */
  readonly ease: number;
  /** Top of the centre line as drafted, and the angle at which the neckline leaves it, rad. */
  readonly centre: Heading;
  /** How far out the armhole lies at half its depth, where it lies farthest in. */
  readonly inward: number;
  /** The underarm point as drafted. */
  readonly underarm: Point;
}

/** A wedge that runs up to neckline, shoulder or armhole, as asked for. */
export interface AskedEnd {
  readonly wedge: string;
  /** Whether it is a dart within a panel; else it parts two panels. */
  readonly isDart: boolean;
  readonly edge: UpperEdge;
  /** Part of the sewn edge that lies between its start and the wedge, from the centre towards the side. */
  readonly part: number;
  /** Where it ends with all wedges sewn up, and how the edge runs on there. */
  readonly sewn: Heading;
  /** What it takes there, level, mm; null where it goes on as it comes up from the bust. */
  readonly intake: number | null;
}

/**
 * Neck width where it was not measured: from memory; with it the shoulder seam comes near the 125 mm that charts of sizes have. mm
 */
const USUAL_NECK_WIDTH_MM = inches(4.5);

/**
 * Chest and back width as a part of the bust girth: usual, from memory. A metric textbook draws a chest of 324 mm at a bust of 880.
 */
const USUAL_WIDTH = { front: 0.368, back: 0.386 } as const;
/** Where it is not measured, the armhole goes in from the tip by so much at the least and at the most. mm */
const USUAL_IN_MM = { front: [7, 24], back: [4, 18] } as const;

/** The armhole's base lies so far below the armpit, so that the arm can move. mm */
const BELOW_ARMPIT_MM = 12;
/** An estimated base lies at least so far above the bust line. mm */
const ABOVE_BUST_MM = 25;

/**
 * Underarm to waist from neck to waist, mm: the regression line of the 1988 survey's women (Gordon et al. 1989,
 * NATICK/TR-89/044: means 177.1 and 389.4, SDs 21.5 and 24.9, correlation .749).
 */
const estimatedUnderarm = (neckToWaist: number): number =>
  177.1 + 0.749 * (21.5 / 24.9) * (neckToWaist - 389.4);
/** Nineteen in twenty of them lie within so much of it: 1.96 of the SD that the correlation leaves. mm */
export const UNDERARM_WITHIN_MM = 1.96 * 21.5 * Math.sqrt(1 - 0.749 ** 2);

/** Usual height of the neck point above the nape. mm */
const USUAL_RISE_MM = 20;

/** Height of the back's neck point, mm below the front's; negative where the back is the longer. */
export const backNeckOf = ({ neckToWaist, backNeckToWaist }: Body, shoulders: Shoulders): number =>
  backNeckToWaist === null ? 0 : neckToWaist - (backNeckToWaist + riseOf(shoulders));

const riseOf = ({ rise }: Shoulders): number => rise ?? USUAL_RISE_MM;

/** Height of the nape at centre back, mm below the shoulder level. */
export const napeOf = (body: Body, shoulders: Shoulders): number =>
  backNeckOf(body, shoulders) + riseOf(shoulders);

/** Height of the armhole's base, mm: below the measured or estimated armpit, raised as the style asks. */
export function armholeBase(body: Body, { topAbove, topShape }: Style): number {
  const { neckToWaist, neckToBust, underarmToWaist } = body;
  const base =
    underarmToWaist === null
      ? Math.min(neckToWaist - estimatedUnderarm(neckToWaist) + BELOW_ARMPIT_MM, neckToBust - ABOVE_BUST_MM)
      : neckToWaist - underarmToWaist + BELOW_ARMPIT_MM;
  return base - topAbove - topShape.underarm.beyond;
}

/** What the frames hang from. */
interface FrameBase {
  /** Heights at which the centre lines begin, mm. */
  readonly centres: FrontAndBack<number>;
  /** Underarm points with all wedges sewn up. */
  readonly underarms: FrontAndBack<Point>;
}

/** The frames of both blocks, or null where nothing tells how long the shoulder is. */
export function framesOf(
  body: Body,
  style: Style,
  shoulders: Shoulders,
  { centres, underarms }: FrameBase,
): FrontAndBack<ShoulderFrame> | null {
  const neckX = (body.neckWidth ?? USUAL_NECK_WIDTH_MM) / 2;
  const lines = shoulderLines(body, neckX, shoulders);
  if (!lines) return null;
  const frameOf = (block: BlockName): ShoulderFrame => {
    const open = halfOpenAt(block, style.closure);
    const { length, angle } = lines[block];
    const neck = { x: neckX - open, y: block === 'front' ? 0 : backNeckOf(body, shoulders) };
    const tip = { x: neck.x + length * Math.cos(angle), y: neck.y + length * Math.sin(angle) };
    const y = centres[block];
    const pointed = block === 'front' && style.topShape.centreFront.kind === 'corner';
    return {
      block,
      neck,
      tip,
      angle,
      ease: block === 'back' ? easeOf(shoulders) : 0,
      centre: {
        point: { x: 0, y },
        angle: pointed ? Math.atan2(neck.y - y, neck.x) : 0,
      },
      inward: inwardOf(block, body, shoulders, tip.x, open),
      underarm: underarms[block],
    };
  };
  return { front: frameOf('front'), back: frameOf('back') };
}

/** How far out the armhole lies at half its depth: as the style asks, as measured, or as usual near the tip. */
function inwardOf(block: BlockName, body: Body, { armholeIn }: Shoulders, tip: number, open: number): number {
  if (armholeIn !== undefined) return tip - armholeIn;
  const measured = block === 'front' ? body.chestWidth : body.backWidth;
  if (measured !== null) return measured / 2 - open;
  const [least, most] = USUAL_IN_MM[block];
  return Math.min(tip - least, Math.max(tip - most, (USUAL_WIDTH[block] * body.bust) / 2 - open));
}

/** Length of a curve's handles as a part of the way between its ends: with .55 it is nearly a quarter of an ellipse. */
const ROUND = 0.55;
/** Below its inward point the armhole is fuller in front than behind. */
const LOWER_ROUND = { front: 0.66, back: 0.52 } as const;

/** A neckline that leaves the centre steeper than this is pointed: slope. */
const POINTED = 0.5;

/** Square to a sloping shoulder a neckline heads inwards; it does so for this part of its width at the most. */
const MOST_SQUARE = 0.6;

/**
 * Neckline from the centre line, which it leaves as `centre` says, up to the neck point, where it meets the shoulder square. A deep
 * round one keeps most of its width down to half its depth.
 */
export function necklineCurve({ point, angle }: Heading, neck: Point, shoulderAngle: number): Cubic {
  const [across, up] = [neck.x - point.x, point.y - neck.y];
  const slope = Math.tan(angle);
  // A round neckline lies flat at the centre for most of its width; a pointed one runs straight for the neck.
  const pointed = Math.abs(slope) > POINTED;
  const [flat, down] = pointed ? [1 / 3, up / 4] : [0.9, Math.min(ROUND * up, MOST_SQUARE * across)];
  return {
    start: point,
    startHandle: { x: point.x + flat * across, y: point.y + flat * across * slope },
    // Square to the shoulder, pointing down from it.
    endHandle: {
      x: neck.x - down * Math.sin(shoulderAngle),
      y: neck.y + down * Math.cos(shoulderAngle),
    },
    end: neck,
  };
}

/** Armhole from the shoulder's tip, which it leaves square, through its inward point, upright there, down to the underarm. */
export function armholeCurve(
  block: BlockName,
  tip: Heading,
  inward: Point,
  underarm: Point,
  /** Slope dy/dx at which it reaches the underarm. */
  slope: number,
): [Cubic, Cubic] {
  return [armholeAbove(tip, inward), armholeBelow(block, inward, underarm, slope)];
}

/** Its part from the tip to the inward point. */
export function armholeAbove({ point, angle }: Heading, inward: Point): Cubic {
  const reach = (inward.y - point.y) / 3;
  return {
    start: point,
    startHandle: { x: point.x - reach * Math.sin(angle), y: point.y + reach * Math.cos(angle) },
    endHandle: { x: inward.x, y: inward.y - reach },
    end: inward,
  };
}

function armholeBelow(block: BlockName, inward: Point, underarm: Point, slope: number): Cubic {
  const round = LOWER_ROUND[block];
  const across = underarm.x - inward.x;
  return {
    start: inward,
    startHandle: { x: inward.x, y: inward.y + round * (underarm.y - inward.y) },
    endHandle: { x: underarm.x - round * across, y: underarm.y - round * across * slope },
    end: underarm,
  };
}
