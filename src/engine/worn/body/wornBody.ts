// The body a garment is sewn on: its levels at their heights, its surface, and how it yields.

import type { Body } from '../../body/body';
import { LEVEL_NAMES, type LevelName } from '../../terms/names';
import { type BodyLevel, type Shape, shapeOf, zOf } from './shape';
import { type Skin, skinOf } from './skin';
import { frontAt, makeSurface, type Surface } from './surface';
import { tissueOf } from './tissue';

/**
 * A body alike on both sides, standing upright: x to its left, y forwards, z up, mm, from the axis at the shoulder level. The
 * other half is its mirror image in x.
 */
export interface WornBody {
  /** From the top down. */
  readonly levels: readonly BodyLevel[];
  readonly surface: Surface;
  /** Pressure per depth at each place of the surface, N/mm³; an estimate. */
  readonly ground: Float64Array;
  /** Half the distance of the bust points, mm. */
  readonly bustPointX: number;
  /** How far the waist lies in front of the plumb line of upper back and buttocks, mm. */
  readonly hollow: number;
  /** Height on the body of a height on paper: mm below the shoulder level along the front of the body, to mm above it upright. */
  readonly heightOf: (y: number) => number;
}

/** Rows of the surface while the heights are sought, and of the finished one, mm. */
const COARSE_MM = 8;
const FINE_MM = 3;

/** A tape to the bust point is so much longer than the way straight down (mean of the survey's women 46, SD 13), mm. */
const BUST_SLOPE_MM = 46;
/** The over-bust above the bust where the armpit was not measured, and the part of it that is upright. */
const OVER_BUST_UP_MM = 50.8;
const UPRIGHT = 0.93;
const LEAST_APART_MM = 15;
const USUAL_ACROSS_SHOULDER_MM = 380;
/** Paper starts a little above the body's shoulder, where the tape starts at the neck. */
const PAPER_START_MM = -8;

/** Heights on paper, mm below the shoulder level. */
type Tapes = Readonly<Partial<Record<LevelName, number>>>;

/**
 * The body of checked measurements. Heights are found by laying the tape: its length down the front of the surface, over the
 * bust point and across the hollow below it, is what was measured.
 */
export function makeWornBody(body: Body): WornBody {
  const shape = shapeOf(body);
  const tapes = tapesOf(body);
  const bustPointX = Math.min(body.bustPointWidth / 2, 0.8 * (shape.sections.bust?.a ?? 0));
  const shoulder = body.acrossShoulder ?? USUAL_ACROSS_SHOULDER_MM;
  const taken = {
    underBust: (tapes.underBust ?? 0) - (tapes.bust ?? 0),
    waist: (tapes.waist ?? 0) - (tapes.bust ?? 0),
    hip: (tapes.hip ?? 0) - (tapes.waist ?? 0),
  };
  let drops = { ...taken };
  for (let round = 0; round < 4; round += 1) {
    const levels = levelsAt(body, tapes, drops);
    const skin = skinOf(shape, levels, bustPointX, shoulder);
    const surface = makeSurface(shape, skin, levels, COARSE_MM, false);
    drops = corrected(drops, taken, surface, levels, bustPointX);
  }
  const levels = levelsAt(body, tapes, drops);
  return { ...finished(shape, levels, bustPointX, shoulder), heightOf: heightsOnBody(levels, tapes) };
}

function finished(shape: Shape, levels: readonly BodyLevel[], bustPointX: number, shoulder: number) {
  const skin: Skin = skinOf(shape, levels, bustPointX, shoulder);
  const surface = makeSurface(shape, skin, levels, FINE_MM, true);
  return { levels, surface, ground: tissueOf(surface, skin, levels), bustPointX, hollow: shape.hollow };
}

function tapesOf(body: Body): Tapes {
  const { neckToBust: bust, neckToWaist, neckToUnderBust, neckToHip, underarmToWaist } = body;
  const waist = Math.max(neckToWaist, bust + 3 * LEAST_APART_MM);
  const hip = Math.max(neckToHip, waist + 2 * LEAST_APART_MM);
  const armpit = underarmToWaist === null ? bust - OVER_BUST_UP_MM : neckToWaist - underarmToWaist;
  return {
    overBust: Math.min(bust - 25, Math.max(bust - 100, armpit)),
    bust,
    underBust: Math.min(waist - LEAST_APART_MM, Math.max(bust + LEAST_APART_MM, neckToUnderBust)),
    waist,
    ...(body.highHip === null ? {} : { highHip: highHipOf(body, waist, hip) }),
    hip,
  };
}

function highHipOf({ waistToHighHip }: Body, waist: number, hip: number): number {
  const below = waistToHighHip ?? (hip - waist) / 2;
  return waist + Math.min(hip - waist - LEAST_APART_MM, Math.max(LEAST_APART_MM, below));
}

interface Drops {
  readonly underBust: number;
  readonly waist: number;
  readonly hip: number;
}

/** Levels for heights below the bust (under-bust, waist) and below the waist (hip) on the body, mm. */
function levelsAt(body: Body, tapes: Tapes, drops: Drops): BodyLevel[] {
  const { neckToBust } = body;
  const bust = -(neckToBust - Math.min(BUST_SLOPE_MM, neckToBust * 0.2));
  const waist = bust - drops.waist;
  const part =
    tapes.highHip === undefined
      ? 0
      : (tapes.highHip - (tapes.waist ?? 0)) / ((tapes.hip ?? 1) - (tapes.waist ?? 0));
  const z: Record<LevelName, number> = {
    overBust: bust + ((tapes.bust ?? 0) - (tapes.overBust ?? 0)) * UPRIGHT,
    bust,
    underBust: bust - drops.underBust,
    waist,
    highHip: waist - part * drops.hip,
    hip: waist - drops.hip,
  };
  return LEVEL_NAMES.flatMap((name) => {
    const girth = body[name];
    return girth === null ? [] : [{ name, z: z[name], girth }];
  });
}

/** Heights that make the tape down the surface nearer to what was measured; a tape spans from the bust point to the waist. */
function corrected(
  drops: Drops,
  taken: Drops,
  surface: Surface,
  levels: readonly BodyLevel[],
  x: number,
): Drops {
  const z = (name: LevelName): number => zOf(levels, name);
  const within = (value: number, tape: number): number => Math.max(0.55 * tape, Math.min(tape, value));
  const [bust, waist] = [z('bust'), z('waist')];
  const span = Math.hypot(frontAt(surface, x, bust) - frontAt(surface, x, waist), bust - waist);
  const toWaist = within((drops.waist * taken.waist) / span, taken.waist);
  const followed = profileLength(surface, x, bust, z('underBust'));
  const toUnderBust = Math.min(
    within((drops.underBust * taken.underBust) / followed, taken.underBust),
    0.75 * toWaist,
  );
  const toHip = within((drops.hip * taken.hip) / profileLength(surface, x, waist, z('hip')), taken.hip);
  return { underBust: toUnderBust, waist: toWaist, hip: toHip };
}

/** Length down the front of the surface between two heights, mm. */
function profileLength(surface: Surface, x: number, from: number, to: number): number {
  const STEPS = 40;
  let [length, py, pz] = [0, frontAt(surface, x, from), from];
  for (let i = 1; i <= STEPS; i += 1) {
    const z = from + ((to - from) * i) / STEPS;
    const y = frontAt(surface, x, z);
    length += Math.sqrt((y - py) ** 2 + (z - pz) ** 2);
    [py, pz] = [y, z];
  }
  return length;
}

function heightsOnBody(levels: readonly BodyLevel[], tapes: Tapes): (y: number) => number {
  const rows = [
    { y: 0, z: PAPER_START_MM },
    ...levels.map(({ name, z }) => ({ y: tapes[name] ?? 0, z })),
  ].filter(({ y }, i, all) => i === 0 || y > (all[i - 1]?.y ?? 0));
  return (y) => {
    let i = 0;
    while (i < rows.length - 2 && y > rows[i + 1]!.y) i += 1;
    const [a, b] = [rows[i]!, rows[i + 1]!];
    return a.z + ((y - a.y) * (b.z - a.z)) / (b.y - a.y);
  };
}
