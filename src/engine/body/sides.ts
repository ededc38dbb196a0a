// How a body differs left to right: the left's part of each girth, and levels that lie lower on the right. Each half is drafted for
// a body of its own that is alike on both sides.

import { type Issue, issue } from '../terms/issue';
import type { LevelName, PerLevel, Side } from '../terms/names';
import type { Body } from './body';
import type { Measurements } from './measurements';

/** Levels that are measured down from the neck; over-bust and high hip go with their neighbours. */
export const SIDE_LEVELS = ['bust', 'underBust', 'waist', 'hip'] as const;
type SideLevel = (typeof SIDE_LEVELS)[number];

export interface BodySides {
  /** The part of each girth from centre front round the left to centre back; a level left out has half. */
  readonly leftShare: Partial<PerLevel>;
  /** How much lower a level sits on the right, mm; negative where it sits higher. */
  readonly rightLower: { readonly [level in SideLevel]?: number };
}

/** Values outside these are more likely mistakes in measuring; our own bounds. Shares as fractions, lengths in mm. */
export const SIDES_SPANS = { leftShare: [0.4, 0.6], rightLower: [-60, 60] } as const;

const GIRTHS = ['overBust', 'bust', 'underBust', 'waist', 'highHip', 'hip'] as const satisfies LevelName[];

const LENGTHS = {
  bust: 'neckToBust',
  underBust: 'neckToUnderBust',
  waist: 'neckToWaist',
  hip: 'neckToHip',
} as const;

const ARCS = {
  overBust: 'frontOverBustArc',
  bust: 'frontBustArc',
  underBust: 'frontUnderBustArc',
  waist: 'frontWaistArc',
  hip: 'frontHipArc',
} as const;

/** Whatever came in as sides, with both its parts there; null is a body alike on both sides. */
export function wholeSides(sides: BodySides | null): BodySides {
  const { leftShare, rightLower }: Partial<BodySides> = Object(sides);
  return { leftShare: Object(leftShare), rightLower: Object(rightLower) };
}

/** Blocking issues at what cannot be drafted: `leftShare.waist` and the like, with the span. */
export function checkSides(sides: BodySides): Issue[] {
  return (['leftShare', 'rightLower'] as const).flatMap((part) => {
    const [least, most] = SIDES_SPANS[part];
    return Object.entries(sides[part] as Readonly<Record<string, unknown>>)
      .filter(([, value]) => typeof value !== 'number' || !(value >= least && value <= most))
      .map(([level]) => issue('sidesOutOfRange', { least, most }, { field: `${part}.${level}` }));
  });
}

/** Whether the two sides differ at all. */
export const differs = ({ leftShare, rightLower }: BodySides): boolean =>
  Object.values(leftShare).some((share) => share !== 0.5) ||
  Object.values(rightLower).some((lower) => lower !== 0);

/**
 * The measurements of a body that is alike on both sides and has one side's parts: girths are twice that side's part, levels lie
 * where that side has them. The girths of the left and the right body add up to twice the measured ones. Lengths are those of the
 * left; the right's are longer by `rightLower`.
 */
export function bodyOfSide(
  measurements: Measurements,
  body: Body,
  { leftShare, rightLower }: BodySides,
  side: Side,
): Measurements {
  const twice = (level: LevelName): number => {
    const left = 2 * (leftShare[level] ?? 0.5);
    return side === 'left' ? left : 2 - left;
  };
  const changed: { -readonly [name in keyof Measurements]?: number } = {};
  for (const level of GIRTHS) {
    const girth = body[level];
    if (girth !== null) changed[level] = girth * twice(level);
  }
  for (const level of ['overBust', 'bust', 'underBust', 'waist', 'hip'] as const) {
    const arc = body.frontArc[level];
    if (arc !== undefined) changed[ARCS[level]] = arc * twice(level);
  }
  if (side === 'right')
    for (const level of SIDE_LEVELS)
      changed[LENGTHS[level]] = body[LENGTHS[level]] + (rightLower[level] ?? 0);
  return { ...measurements, ...changed };
}
