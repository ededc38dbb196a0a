// What the body's sections are at its levels, and where the back lies: girths as measured, the rest from statistics or estimated.

import type { Body } from '../../body/body';
import type { LevelName } from '../../terms/names';
import { type Superellipse, withBreadth, withRatio } from './superellipse';

/** A level of the body, from the top down. */
export interface BodyLevel {
  readonly name: LevelName;
  /** mm above the shoulder level, so below zero. */
  readonly z: number;
  readonly girth: number;
}

/** Height of a level on the body, mm above the shoulder level; 0 for a level the body lacks. */
export const zOf = (levels: readonly BodyLevel[], name: LevelName): number =>
  levels.find((level) => level.name === name)?.z ?? 0;

/** Sections and back line by level. */
export interface Shape {
  /** The body's own section; at the bust, the chest without breasts. */
  readonly sections: Readonly<Partial<Record<LevelName, Superellipse>>>;
  /** y of the hindmost place, mm in front of the axis, so below zero. */
  readonly back: Readonly<Record<LevelName, number>>;
  /** Girth of the chest at the bust without breasts, mm. */
  readonly ribs: number;
  /** How far the waist lies in front of the plumb line through upper back and buttocks, mm. */
  readonly hollow: number;
}

/** Roundness of the sections by level. Estimates: waist, high hip and exponents are not measured on anyone. */
const EXPONENTS: Readonly<Record<LevelName, number>> = {
  overBust: 2.65,
  bust: 2.65,
  underBust: 2.35,
  waist: 2.25,
  highHip: 2.3,
  hip: 2.75,
};
const RATIOS = { underBust: 1.4, waist: 1.36, highHip: 1.42 } as const;
const CHEST_RATIO = [1.1, 1.75] as const;

/** The hollow of the back at the waist of a body with the usual length from neck to hip (from memory: 30–45 mm), mm. */
const USUAL_HOLLOW_MM = 35;
const USUAL_NECK_TO_HIP_MM = 610;
/** How much of the hollow each level but the under-bust lies in front of the plumb line. Estimates. */
const HOLLOWED: Readonly<Record<Exclude<LevelName, 'underBust'>, number>> = {
  overBust: 0.06,
  bust: 0,
  waist: 1,
  highHip: 0.45,
  hip: 0,
};

/** Where the under-bust lies from bust to waist, at the least and at the most, as a part. */
const UNDER_BUST_AT = [0.2, 0.8] as const;

/**
 * The same at the under-bust, 0 to 1. Between the bust, where the back is fullest, and the waist, where it is most hollow, it runs as
 * a cubic that is level at both ends, so it is steepest half way. The spine turns over at about that height, where the ribs end: it
 * is straight from the last thoracic to the first lumbar vertebra, fullest near the seventh thoracic one and most hollow near the
 * third or fourth lumbar one (X-rays of 102 people standing: Bernhardt and Bridwell, Spine 14, 1989, from memory). That the skin
 * follows it is an estimate.
 */
function hollowedAtUnderBust({ neckToBust, neckToUnderBust, neckToWaist }: Body): number {
  const part = (neckToUnderBust - neckToBust) / Math.max(1, neckToWaist - neckToBust);
  const [least, most] = UNDER_BUST_AT;
  const at = Math.max(least, Math.min(most, part));
  return at * at * (3 - 2 * at);
}

/**
 * How far the plumb line lies behind the axis, as a part of the half depth at the under-bust: 116 mm for 92 mm. An estimate with
 * no source; it sets where the axis stands in the body, from which distances to the skin are counted.
 */
const PLUMB_BEHIND = 116.1 / 92;

/** The chest is so much broader than the regression has it. An estimate with no source. */
const BROADER = 1.05;

/**
 * The shape of a body. Chest breadth is the regression line on under-bust and over-bust, and the hip's ratio that on hip and
 * waist, of women of the 1988 US Army survey (Gordon et al. 1989, NATICK/TR-89/044).
 */
export function shapeOf(body: Body): Shape {
  const { overBust, underBust, waist, hip, highHip } = body;
  const ribs = Math.max(0.6 * underBust, underBust + 0.6 * (overBust - underBust));
  const breadth = Math.max(0.2 * underBust, -4.9 + 0.2078 * underBust + 0.1402 * overBust) * BROADER;
  const wider = Math.min(1.04, Math.sqrt(overBust / ribs));
  const hipRatio = Math.min(1.75, Math.max(1.3, 1.879 + 0.0003 * hip - 0.0009 * waist));
  const sections = {
    overBust: withBreadth(overBust, (breadth / 2) * wider, EXPONENTS.overBust, CHEST_RATIO),
    bust: withBreadth(ribs, breadth / 2, EXPONENTS.bust, CHEST_RATIO),
    underBust: withRatio(underBust, RATIOS.underBust, EXPONENTS.underBust),
    waist: withRatio(waist, RATIOS.waist, EXPONENTS.waist),
    ...(highHip === null ? {} : { highHip: withRatio(highHip, RATIOS.highHip, EXPONENTS.highHip) }),
    hip: withRatio(hip, hipRatio, EXPONENTS.hip),
  };
  const scale = Math.max(0.7, Math.min(1.3, body.neckToHip / USUAL_NECK_TO_HIP_MM));
  const depth = body.hollowOfBack ?? USUAL_HOLLOW_MM * scale;
  const plumb = -PLUMB_BEHIND * sections.underBust.b;
  const back = Object.fromEntries(
    Object.entries({ ...HOLLOWED, underBust: hollowedAtUnderBust(body) }).map(([level, part]) => [
      level,
      plumb + part * depth,
    ]),
  ) as Record<LevelName, number>;
  return { sections, back, ribs, hollow: depth };
}
