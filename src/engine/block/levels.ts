// From tape to targets: the levels of the draft, their heights, and what each block's cloth must measure there.

import type { Body } from '../body/body';
import { openAt, openWidth } from '../style/openings';
import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import { type BlockName, LEVEL_NAMES, type LevelName } from '../terms/names';

export interface Level {
  readonly name: LevelName;
  /** Height on paper, mm below the shoulder level. */
  readonly y: number;
  readonly bodyGirth: number;
  readonly ease: number;
  /** What the cloth measures all round: body + ease − lacing gap, mm. */
  readonly targetGirth: number;
  /** The front's part of the girth: the style's, or that of a measured front arc. */
  readonly frontShare: number;
  /** Width of the closed half block, wedges sewn up, mm. */
  readonly net: Readonly<Record<BlockName, number>>;
}

/** Levels closer than this cannot carry two girths; the one that may be left out is. mm */
const LEAST_APART_MM = 15;

const OPTIONAL: readonly LevelName[] = ['overBust', 'underBust', 'highHip'];

/**
 * The levels from the top down, at strictly growing heights. Bust, waist and hip must be in order, else `levels`
 * is empty and a blocking issue says which two are not; an optional level too near its neighbour is left out and said.
 */
export function levelsOf(body: Body, style: Style): { levels: Level[]; issues: Issue[] } {
  const issues: Issue[] = [];
  const heights = heightsOf(body, style);
  const required = LEVEL_NAMES.filter((name) => !OPTIONAL.includes(name));
  for (const [i, name] of required.entries()) {
    const above = required[i - 1];
    if (above && heightOf(heights, name) - heightOf(heights, above) < LEAST_APART_MM)
      issues.push(issue('levelsOutOfOrder', {}, { level: name, field: FIELD[name] }));
  }
  if (issues.length > 0) return { levels: [], issues };

  const kept = LEVEL_NAMES.filter((name) => {
    const y = heights[name];
    if (y === undefined) return false;
    if (!OPTIONAL.includes(name)) return true;
    const i = required.findIndex((other) => heightOf(heights, other) > y);
    const [above, below] = [required[i - 1], required[i]];
    const fits =
      (!above || y - heightOf(heights, above) >= LEAST_APART_MM) &&
      (!below || heightOf(heights, below) - y >= LEAST_APART_MM) &&
      NEIGHBOURS[name]?.above === above &&
      NEIGHBOURS[name]?.below === below;
    if (!fits) issues.push(issue('levelLeftOut', {}, { level: name, field: FIELD[name] }));
    return fits;
  });

  const levels: Level[] = [];
  for (const name of kept) {
    const level = levelAt(name, heightOf(heights, name), body, style);
    if (Math.min(level.net.front, level.net.back) <= 0)
      issues.push(issue('girthUsedUp', { target: level.targetGirth }, { level: name }));
    levels.push(level);
  }
  return issues.some((each) => each.severity === 'error') ? { levels: [], issues } : { levels, issues };
}

const NEIGHBOURS: Partial<Record<LevelName, { above: LevelName | undefined; below: LevelName }>> = {
  overBust: { above: undefined, below: 'bust' },
  underBust: { above: 'bust', below: 'waist' },
  highHip: { above: 'waist', below: 'hip' },
};

const FIELD: Readonly<Record<LevelName, string>> = {
  overBust: 'neckToBust',
  bust: 'neckToBust',
  underBust: 'neckToUnderBust',
  waist: 'neckToWaist',
  highHip: 'neckToHip',
  hip: 'neckToHip',
};

function heightsOf(body: Body, style: Style): Partial<Record<LevelName, number>> {
  return {
    overBust: body.neckToBust - style.overBustAbove,
    bust: body.neckToBust,
    underBust: body.neckToUnderBust,
    waist: body.neckToWaist,
    // common practice, no source: the high hip is taken half way between waist and hip
    ...(body.highHip === null ? {} : { highHip: (body.neckToWaist + body.neckToHip) / 2 }),
    hip: body.neckToHip,
  };
}

const heightOf = (heights: Partial<Record<LevelName, number>>, name: LevelName): number =>
  heights[name] as number;

function levelAt(name: LevelName, y: number, body: Body, style: Style): Level {
  const bodyGirth = body[name] as number;
  const ease = style.ease[name];
  const half = (bodyGirth + ease) / 2;
  const arc = body.frontArc[name];
  const share = arc === undefined ? style.frontShare[name] : arc / bodyGirth;
  return {
    name,
    y,
    bodyGirth,
    ease,
    targetGirth: bodyGirth + ease - openWidth(style.closure),
    frontShare: share,
    net: {
      front: share * half - openAt('front', style.closure) / 2,
      back: (1 - share) * half - openAt('back', style.closure) / 2,
    },
  };
}
