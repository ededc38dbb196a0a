// The shoulders of both blocks, above the over-bust line, and the issues of a style or body that cannot have them.

import type { Body } from '../../body/body';
import type { Shoulders, Style } from '../../style/style';
import { type Issue, issue } from '../../terms/issue';
import type { Level } from '../lines/levels';
import {
  type AskedEnd,
  armholeBase,
  framesOf,
  napeOf,
  type ShoulderFrame,
  UNDERARM_WITHIN_MM,
} from './shoulderFrame';
import type { FrontAndBack } from './shoulderLine';
import { askedEnds, endingWedges } from './upperEnds';

/** Frames of both blocks, and the wedges that run up to them, from the centre towards the side. */
export interface Shouldered {
  readonly frames: FrontAndBack<ShoulderFrame>;
  readonly ends: FrontAndBack<readonly AskedEnd[]>;
}

const LEAST_SHOULDER_MM = 40;
const LEAST_NECK_MM = 10;
const LEAST_NECK_DEPTH_MM = 30;
const LEAST_ARMHOLE_MM = 60;

/** Front and back wedges may part a shoulder seam in so many places. */
const MOST_PARTINGS = 2;

/**
 * The shoulders of both blocks; null where the style has none, and where it cannot have them, with a blocking issue.
 *
 * @param top height of the level top edge, mm
 */
export function shouldersOf(
  body: Body,
  style: Style,
  levels: readonly Level[],
  top: number,
): { shouldered: Shouldered | null; issues: Issue[] } {
  const { shoulders } = style;
  if (!shoulders) return { shouldered: null, issues: [] };
  const asBand = shoulders.bandAbove !== undefined;
  const issues = styleFaults(style);
  const chest = levels[0];
  const frames =
    chest &&
    framesOf(body, style, shoulders, {
      centres: {
        front: top - style.topShape.centreFront.beyond - (shoulders.bandAbove ?? 0),
        back: asBand
          ? top - style.topShape.centreBack.beyond - (shoulders.bandAbove ?? 0)
          : napeOf(body, shoulders),
      },
      underarms: underarmsOf(body, style, chest, top),
    });
  if (!frames) {
    issues.push(issue('measurementMissing', {}, { field: 'acrossShoulder' }));
    return { shouldered: null, issues };
  }
  issues.push(...tooSmall(body, shoulders, frames));
  if (issues.length > 0) return { shouldered: null, issues };
  const ends = asBand ? { front: [], back: [] } : askedEnds(body, style, shoulders, levels, frames);
  for (const { wedge } of tooManyPartings(ends))
    issues.push(issue('shoulderWedges', {}, { block: 'back', wedge }));
  return {
    shouldered: issues.length > 0 ? null : { frames, ends },
    issues: [...issues, ...estimateNotes(body, style)],
  };
}

function underarmsOf(
  body: Body,
  style: Style,
  chest: Level,
  top: number,
): FrontAndBack<ShoulderFrame['underarm']> {
  const asBand = style.shoulders?.bandAbove !== undefined;
  const y = asBand ? top - style.topShape.underarm.beyond : armholeBase(body, style);
  return { front: { x: chest.net.front, y }, back: { x: chest.net.back, y } };
}

/**
 * Blocking issues of a style that cannot have shoulders: it has a wedge that does not say where it ends, or a side panel in one,
 * although a side seam must part the armhole.
 */
function styleFaults(style: Style): Issue[] {
  const issues: Issue[] = [];
  if (style.topFrom !== 'overBust') issues.push(issue('shoulderNeedsTop', {}, { field: 'topFrom' }));
  // A band is cut with its wedges sewn up, whatever the panels below it are.
  if (style.shoulders?.bandAbove !== undefined) return issues;
  if (style.joinedSide) issues.push(issue('shoulderNeedsSideSeam', {}, { field: 'joinedSide' }));
  for (const block of ['front', 'back'] as const) issues.push(...endingWedges(style, block).issues);
  return issues;
}

/** The back's ends in the shoulder by which the seam is parted in more places than it can be. */
function tooManyPartings({ front, back }: Shouldered['ends']): AskedEnd[] {
  const parts = new Set<number>();
  return [...front, ...back].filter(
    ({ edge, part }) => edge === 'shoulder' && parts.add(part).size > MOST_PARTINGS,
  );
}

/** Blocking issues where neck, shoulder or armhole come out too small, or wider than the chest. */
function tooSmall(body: Body, shoulders: Shoulders, frames: Shouldered['frames']): Issue[] {
  const { front, back } = frames;
  const base = front.underarm.y;
  const fields = [
    ...(front.centre.point.y < LEAST_NECK_DEPTH_MM ? ['topShape.centreFront'] : []),
    ...(base - Math.max(front.tip.y, back.tip.y) < LEAST_ARMHOLE_MM ? ['topShape.underarm'] : []),
    ...(back.centre.point.y > base && shoulders.bandAbove === undefined ? ['backNeckToWaist'] : []),
  ];
  const issues = fields.map((field) => issue('shoulderOffBlock', {}, { field }));
  const width = body.shoulderLength === null ? 'acrossShoulder' : 'shoulderLength';
  for (const block of ['front', 'back'] as const) {
    const { neck, tip, inward, underarm } = frames[block];
    if (neck.x < LEAST_NECK_MM) issues.push(issue('shoulderOffBlock', {}, { block, field: 'neckWidth' }));
    if (tip.x - neck.x < LEAST_SHOULDER_MM)
      issues.push(issue('shoulderOffBlock', {}, { block, field: width }));
    else if (inward > underarm.x - LEAST_NECK_MM || inward < neck.x) {
      const measured = block === 'front' ? 'chestWidth' : 'backWidth';
      const field = body[measured] === null ? width : measured;
      issues.push(issue('shoulderOffBlock', {}, { block, field }));
    }
  }
  return issues;
}

/** A note where the armpit's height was estimated. */
const estimateNotes = (body: Body, { shoulders }: Style): Issue[] =>
  body.underarmToWaist === null && shoulders?.bandAbove === undefined
    ? [issue('armholeEstimated', { within: UNDERARM_WITHIN_MM }, { field: 'underarmToWaist' })]
    : [];
