// From tape to targets: the levels of the draft, their heights, and what each block's cloth must measure there.

import type { Body } from '../../body/body';
import { halfOpenAt, openWidth } from '../../style/openings';
import { STYLE, type Style } from '../../style/style';
import { type Issue, issue } from '../../terms/issue';
import { type BlockName, LEVEL_NAMES, type LevelName, type PerLevel } from '../../terms/names';

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

/** Where a level runs over a panel after an alteration, mm: its heights on both long edges, and on each dart by the wedge's id. */
export interface LevelPath {
  readonly inner: number;
  readonly outer: number;
  readonly darts: ReadonlyMap<string, number>;
}

/** The path of a level that an alteration raised, over the piece of a number in a block and over its mirror image. */
export interface RaisedLevel {
  readonly block: BlockName;
  readonly number: number;
  readonly level: LevelName;
  readonly path: LevelPath;
}

/** Half the girth of the cloth and the lacing gap together, mm. */
export const halfGirth = ({ bodyGirth, ease }: Level): number => (bodyGirth + ease) / 2;

/** The level whose line is nearest to a height, mm; of two as near the upper. There is at least one level. */
export const nearestLevel = (levels: readonly Level[], y: number): LevelName =>
  levels.reduce((best, level) => (Math.abs(level.y - y) < Math.abs(best.y - y) ? level : best)).name;

/** Two levels nearer to each other than this cannot have two girths: the optional one is left out. mm */
const LEAST_APART_MM = 15;

/** Whether a level fits between those above and below it, where there are any: heights, mm below the shoulder level. */
export const fitsBetween = (y: number, above: number | undefined, below: number | undefined): boolean =>
  (above === undefined || y - above >= LEAST_APART_MM) &&
  (below === undefined || below - y >= LEAST_APART_MM);

const OPTIONAL: readonly LevelName[] = ['overBust', 'underBust', 'highHip'];

/**
 * The levels from the top down, at strictly growing heights. Bust, waist and hip must be in order, else `levels`
 * is empty and a blocking issue names the lower of the two that are not. An optional level too near its neighbour is left out,
 * and a warning says so.
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
    const above = required[i - 1];
    const below = required[i];
    const fits =
      fitsBetween(y, above && heightOf(heights, above), below && heightOf(heights, below)) &&
      NEIGHBOURS[name]?.above === above &&
      NEIGHBOURS[name]?.below === below;
    if (!fits) issues.push(issue('levelLeftOut', {}, { level: name, field: FIELD[name] }));
    return fits;
  });

  const bustShare = bustShareOf(kept, heights, body, style);
  const levels: Level[] = [];
  for (const name of kept) {
    const share = name === 'bust' ? bustShare : frontShareOf(name, body, style);
    const level = levelAt(name, heightOf(heights, name), share, body, style);
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
  highHip: 'waistToHighHip',
  hip: 'neckToHip',
};

/** Span of the over-bust line above the bust line where it is taken from the armpit, mm. Our own bounds, no source. */
const OVER_BUST_SPAN_MM = { least: 25, most: 100 } as const;

function heightsOf(body: Body, style: Style): Partial<Record<LevelName, number>> {
  return {
    overBust: overBustHeight(body, style),
    bust: body.neckToBust,
    underBust: body.neckToUnderBust,
    waist: body.neckToWaist,
    ...(body.highHip === null ? {} : { highHip: highHipHeight(body) }),
    hip: body.neckToHip,
  };
}

/** The over-bust girth is taped at the armpit, so its line lies there, unless the style sets it. mm */
export function overBustHeight(
  { neckToBust, neckToWaist, underarmToWaist }: Body,
  { overBustAbove }: Style,
): number {
  if (overBustAbove !== undefined) return neckToBust - overBustAbove;
  if (underarmToWaist === null) return neckToBust - STYLE.fields.overBustAbove.usual;
  const above = neckToBust - (neckToWaist - underarmToWaist);
  return neckToBust - Math.min(OVER_BUST_SPAN_MM.most, Math.max(OVER_BUST_SPAN_MM.least, above));
}

/** As measured, or half way between waist and hip (common practice, no source). mm */
const highHipHeight = ({ neckToWaist, neckToHip, waistToHighHip }: Body): number =>
  waistToHighHip === null ? (neckToWaist + neckToHip) / 2 : neckToWaist + waistToHighHip;

const heightOf = (heights: Partial<Record<LevelName, number>>, name: LevelName): number =>
  heights[name] as number;

/** The front's part of a girth where neither an arc was measured nor the style sets it; from memory. */
export const USUAL_FRONT_SHARE: PerLevel = {
  overBust: 0.515,
  bust: 0.53,
  underBust: 0.515,
  waist: 0.51,
  highHip: 0.5,
  hip: 0.49,
};

/** Beyond these shares the side seam would leave the side. Our own bounds, no source. */
const BUST_SHARE_SPAN = { least: 0.48, most: 0.66 } as const;

function setShareOf(name: LevelName, body: Body, style: Style): number | undefined {
  const arc = body.frontArc[name];
  return arc === undefined ? style.frontShare[name] : arc / (body[name] as number);
}

const frontShareOf = (name: LevelName, body: Body, style: Style): number =>
  setShareOf(name, body, style) ?? USUAL_FRONT_SHARE[name];

/**
 * The front's part of the bust girth. The back does not go over the breast, so at the bust line its half lies on the
 * straight line between its halves at over-bust and under-bust, and the front has the rest; where the girth is less than on the
 * straight line between those two girths, front and back share what is missing. A measured arc is used instead where
 * there is one, else the style's share where it sets one. A front without a wedge that reaches the top edge could not take the
 * cloth in again above the bust, and keeps the usual share.
 */
function bustShareOf(
  kept: readonly LevelName[],
  heights: Partial<Record<LevelName, number>>,
  body: Body,
  style: Style,
): number {
  const share = setShareOf('bust', body, style);
  if (share !== undefined) return share;
  // Turned to neckline, shoulder or armhole, a dart is as wide as lengths ask, not as the girths do.
  const hasBustDart = style.shoulders !== undefined && style.shoulders.bandAbove === undefined;
  const hasRoom = style.wedges.some(
    ({ block, kind }) => block === 'front' && (kind === 'through' || (kind === 'openAtTop' && !hasBustDart)),
  );
  if (!hasRoom || !kept.includes('overBust') || !kept.includes('underBust')) return USUAL_FRONT_SHARE.bust;
  const backHalf = (name: LevelName): number =>
    ((1 - frontShareOf(name, body, style)) * (body[name] as number)) / 2;
  const [above, bust, below] = [
    heightOf(heights, 'overBust'),
    heightOf(heights, 'bust'),
    heightOf(heights, 'underBust'),
  ];
  const part = (bust - above) / (below - above);
  const between = (over: number, under: number): number => over + part * (under - over);
  const back = between(backHalf('overBust'), backHalf('underBust'));
  const girth = Math.max(body.bust, between(body.overBust as number, body.underBust as number));
  return Math.min(BUST_SHARE_SPAN.most, Math.max(BUST_SHARE_SPAN.least, 1 - (2 * back) / girth));
}

function levelAt(name: LevelName, y: number, share: number, body: Body, style: Style): Level {
  const bodyGirth = body[name] as number;
  const ease = style.ease[name];
  const half = (bodyGirth + ease) / 2;
  return {
    name,
    y,
    bodyGirth,
    ease,
    targetGirth: bodyGirth + ease - openWidth(style.closure),
    frontShare: share,
    net: {
      front: share * half - halfOpenAt('front', style.closure),
      back: (1 - share) * half - halfOpenAt('back', style.closure),
    },
  };
}
