// A wedge as it is drawn on its block: its axis, what it takes at every height, and so its legs.

import {
  combine,
  type LineEnd,
  type SmoothLine,
  smoothLine,
  straightDown,
  xAt,
} from '../../geometry/smoothLine';
import type { Wedge } from '../../style/wedgeFields';
import type { LevelName } from '../../terms/names';
import { closedLegs, foldBetween } from './closedDart';
import { dartLeg, type Extent, isThrough, reaches } from './extent';
import type { Level } from './levels';
import { type Cone, lineDown, PAST_BUST_ROUND_MM } from './lineDown';
import { axisX, onCentre, stationX } from './station';

/** A wedge as drawn on the block. */
export interface DraftedWedge {
  readonly id: string;
  readonly station: number;
  readonly sizing: Wedge['sizing'];
  readonly onCentre: boolean;
  /** Where it ends within a panel; null at both ends of a wedge that runs through. */
  readonly extent: Extent;
  readonly axis: SmoothLine;
  /** Where the axis would stand at each level if it were not bent there, mm. */
  readonly unbent: ReadonlyMap<LevelName, number>;
  /** The leg nearer the centre line. */
  readonly innerLeg: SmoothLine;
  /** The leg nearer the side. */
  readonly outerLeg: SmoothLine;
  /** Intake in mm at each level of the draft. */
  readonly intake: ReadonlyMap<LevelName, number>;
}

/** What a wedge is drawn on. */
interface WedgeBase {
  readonly levels: readonly Level[];
  readonly bustLine: number;
  /** Half of what the centre leaves open, mm. */
  readonly open: number;
  /** Flat width of the block at each level, mm. */
  readonly width: ReadonlyMap<LevelName, number>;
  /**
   * Where the wedge ends in neckline, shoulder or armhole, what it takes there, mm, and the level from which its axis bends
   * towards it; null where it ends at the top edge.
   */
  readonly shoulder: {
    readonly x: number;
    readonly y: number;
    readonly intake: number;
    readonly bendsFrom: LevelName;
  } | null;
}

/** Draws a wedge with its intake at each level, mm. */
export function draftWedge(
  wedge: Wedge,
  extent: Extent,
  intake: ReadonlyMap<LevelName, number>,
  base: WedgeBase,
): DraftedWedge {
  const taken = intakeLine(wedge, extent, intake, base);
  const { axis, innerLeg, outerLeg } = linesOf(wedge, extent, taken, base);
  return {
    id: wedge.id,
    station: wedge.station,
    sizing: wedge.sizing,
    onCentre: onCentre(wedge),
    extent,
    axis,
    unbent: unbentOf(wedge, extent, base),
    innerLeg,
    outerLeg,
    intake,
  };
}

function linesOf(
  wedge: Wedge,
  extent: Extent,
  taken: SmoothLine,
  base: WedgeBase,
): Pick<DraftedWedge, 'axis' | 'innerLeg' | 'outerLeg'> {
  if (onCentre(wedge)) {
    const axis = combine(taken, 0.5, taken, 0);
    return { axis, innerLeg: straightDown(0), outerLeg: dartLeg(axis, taken, 0.5, extent) };
  }
  const { upper, lower } = extent;
  const axis =
    base.shoulder && upper === null && lower !== null
      ? foldFromBust(wedge, lower, base.shoulder, base)
      : axisLine(wedge, extent, base);
  if (upper === null || lower === null)
    return {
      axis,
      innerLeg: dartLeg(axis, taken, -0.5, extent),
      outerLeg: dartLeg(axis, taken, 0.5, extent),
    };
  const fold = foldBetween({ x: xAt(axis, upper), y: upper }, { x: xAt(axis, lower), y: lower });
  return { axis: fold, ...closedLegs(fold, taken) };
}

/** The fold of a dart that opens in neckline, shoulder or armhole: straight from its end there towards the bust point. */
function foldFromBust(
  wedge: Wedge,
  lower: number,
  end: { readonly x: number; readonly y: number },
  { levels, bustLine, open, width }: WedgeBase,
): SmoothLine {
  const bust = levels.find(({ name }) => name === 'bust') as Level;
  const x = axisX(wedge, 'bust', bustLine, width.get('bust') as number, open);
  const lean = (end.x - x) / (end.y - bust.y);
  const xOn = (y: number): number => x + lean * (y - bust.y);
  const [top, foot] = [end.y - BEYOND_MM, Math.max(lower, end.y + 1)];
  return foldBetween({ x: xOn(top), y: top }, { x: xOn(foot), y: foot });
}

function unbentOf(wedge: Wedge, extent: Extent, base: WedgeBase): Map<LevelName, number> {
  const { levels, shoulder } = base;
  return new Map(
    levels.map((level) => {
      const { name, y } = level;
      if (!shoulder) return [name, stationXAt(wedge, uprightAt(extent, levels) ?? level, base)];
      const { [name]: _, ...stationAt } = wedge.stationAt;
      const { [name]: __, ...fromCentre } = wedge.fromCentre ?? {};
      return [name, xAt(axisLine({ ...wedge, stationAt, fromCentre }, extent, base), y)];
    }),
  );
}

const stationXAt = ({ station }: Wedge, { name }: Level, { bustLine, width }: WedgeBase): number =>
  stationX(station, bustLine, width.get(name) as number);

/**
 * The level at which a dart's station places it: the waist, or of the levels that it crosses the one nearest to the waist. From there
 * its axis runs upright, along the grain, for its legs are sewn to each other (common practice, no source). Null for a wedge that
 * parts two panels, whose axis stands at its station at every level.
 */
function uprightAt(extent: Extent, levels: readonly Level[]): Level | null {
  if (isThrough(extent)) return null;
  const waist = levels.find(({ name }) => name === 'waist')?.y ?? 0;
  let nearest: Level | null = null;
  for (const level of levels) {
    if (!reaches(extent, level.y)) continue;
    if (!nearest || Math.abs(level.y - waist) < Math.abs(nearest.y - waist)) nearest = level;
  }
  return nearest;
}

/**
 * From level to level where its stations stand, of a dart upright where it was not put by hand; on to a shoulder it bends from a
 * level up, unless it is held above.
 */
function axisLine(wedge: Wedge, extent: Extent, base: WedgeBase): SmoothLine {
  const { levels, bustLine, open, width, shoulder } = base;
  const bust = levels.find(({ name }) => name === 'bust');
  const bend = levels.find(({ name }) => name === shoulder?.bendsFrom);
  const upright = shoulder ? null : uprightAt(extent, levels);
  const isHeld = ({ name, y }: Level): boolean =>
    !shoulder || (isBelow(y, shoulder) && (!bend || y >= bend.y || isPut(wedge, name)));
  const knots = levels.filter(isHeld).map(({ name, y }) => ({
    y,
    value:
      upright && !isPut(wedge, name)
        ? stationXAt(wedge, upright, base)
        : axisX(wedge, name, bustLine, width.get(name) as number, open),
  }));
  if (!shoulder) return lineDown(knots, coneOf(wedge, bust));
  const bends = knots[0]?.y === bend?.y ? 2 : 1;
  return lineThrough(upTo(knots, { y: shoulder.y, value: shoulder.x }, bends), 'free');
}

const isPut = ({ stationAt, fromCentre }: Wedge, level: LevelName): boolean =>
  stationAt[level] !== undefined || fromCentre?.[level] !== undefined;

/**
 * A wedge on the bust-point line is rounded off within so much of the bust line, more where its cup is full; other lines run past
 * the bust. mm
 */
const [CONE_ROUND_MM, FULL_CONE_ROUND_MM] = [15, 20];

function coneOf({ station }: Wedge, bust: Level | undefined, isFull = false): Cone | null {
  if (!bust) return null;
  if (station !== 0) return { bust: bust.y, round: PAST_BUST_ROUND_MM };
  return { bust: bust.y, round: isFull ? FULL_CONE_ROUND_MM : CONE_ROUND_MM };
}

/** A fullness needs this much room to the levels above and below it, mm. */
const CUP_CLEAR_MM = 15;

/** What a wedge takes at every height: the levels' intakes, nothing at a dart's points, and where it fits the cup's fullness. */
function intakeLine(
  wedge: Wedge,
  { upper, lower }: Extent,
  intake: ReadonlyMap<LevelName, number>,
  { levels, shoulder }: WedgeBase,
): SmoothLine {
  if (shoulder && upper === null && lower !== null) return straightTo(shoulder, lower);
  const inside = levels
    .filter(
      ({ y }) =>
        (upper === null || y > upper) && (lower === null || y < lower) && (!shoulder || y > shoulder.y),
    )
    .map(({ name, y }) => ({ y, value: intake.get(name) as number }));
  const knots = [
    ...(upper === null ? [] : [{ y: upper, value: 0 }]),
    ...inside,
    ...(lower === null ? [] : [{ y: lower, value: 0 }]),
  ];
  const bust = levels.find(({ name }) => name === 'bust');
  const count = knots.length;
  if (wedge.cup && bust) {
    const y = bust.y + wedge.cup.below;
    const first = knots[0]?.y ?? y;
    const last = knots.at(-1)?.y ?? y;
    if (y > first && y < last && knots.every((knot) => Math.abs(knot.y - y) >= CUP_CLEAR_MM))
      knots.push({ y, value: wedge.cup.intake });
    knots.sort((a, b) => a.y - b.y);
  }
  if (upper === null && lower === null && !shoulder)
    return lineDown(knots, coneOf(wedge, bust, knots.length > count));
  // A dart comes to its point straight, or slimmer; a wedge that runs through goes on straight down.
  const end = shoulder && { y: shoulder.y, value: shoulder.intake };
  const [first, second] = knots;
  // The girth at a level just below the end is exact: the wedge goes on to its end as it came to that level.
  const whole =
    end && first && second && !isBelow(first.y, end)
      ? [{ y: end.y - BEYOND_MM, value: Math.max(0, valueOn(first, second, end.y - BEYOND_MM)) }, ...knots]
      : upTo(knots, end);
  const start = upper !== null ? 'point' : shoulder ? 'free' : 'flat';
  return lineThrough(whole, start, lower !== null ? 'point' : 'flat');
}

/** What a dart with straight legs takes, from its end above down to its point, where it takes nothing. */
function straightTo(
  { y, intake }: { readonly y: number; readonly intake: number },
  point: number,
): SmoothLine {
  const foot = Math.max(point, y + 1);
  const top = { x: (intake * (foot - y + BEYOND_MM)) / (foot - y), y: y - BEYOND_MM };
  return foldBetween(top, { x: 0, y: foot });
}

/** A level nearer than this below a wedge's end leaves no room for a knot of each. mm */
const CLEAR_OF_END_MM = 10;

const isBelow = (y: number, end: { readonly y: number } | null): boolean =>
  end === null || y > end.y + CLEAR_OF_END_MM;

/** The value at a height of the straight line through two knots. */
const valueOn = (a: Knot, b: Knot, y: number): number =>
  a.value + ((b.value - a.value) * (y - a.y)) / (b.y - a.y);

interface Knot {
  readonly y: number;
  readonly value: number;
}

/** Truing may end a leg so far above mid-shoulder; the line runs on as straight. mm */
const BEYOND_MM = 25;

/**
 * Knots from the top down, led on to the shoulder and a little past it: straight (`power` 1), or as a parabola that stands
 * upright at the first knot (2), so that the line bends one way all along.
 */
function upTo(knots: readonly Knot[], shoulder: Knot | null, power: 1 | 2 = 1): readonly Knot[] {
  const first = knots[0];
  if (!shoulder || !first) return knots;
  const part = (first.y - shoulder.y + BEYOND_MM) / (first.y - shoulder.y);
  const value = first.value + (shoulder.value - first.value) * part ** power;
  return [{ y: shoulder.y - BEYOND_MM, value: Math.max(0, value) }, shoulder, ...knots];
}

const lineThrough = (knots: readonly Knot[], start: LineEnd, end: LineEnd = 'flat'): SmoothLine =>
  smoothLine(
    knots.map(({ y }) => y),
    knots.map(({ value }) => value),
    { start, end },
  );
