// The part of a shouldered block above the over-bust line: neck point, shoulder line and its tip on each half block, and what
// keeps a style from having them.

import type { Body } from '../body/body';
import type { Point } from '../geometry/point';
import { openAt } from '../style/openings';
import type { Shoulders, Style } from '../style/style';
import { isDart } from '../style/wedgeKind';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { inches, TAPE_TOLERANCE_MM } from '../terms/units';
import type { Level } from './levels';

/** A block's shoulder with its wedge sewn up; x from the block's centre edge, y down from the shoulder level, mm. */
export interface ShoulderFrame {
  readonly neck: Point;
  readonly tip: Point;
  /** Mid-shoulder, where a wedge ends. */
  readonly middle: Point;
  /** The shoulder line falls so much for each mm outwards. */
  readonly slope: number;
  /** Half the length of the shoulder seam, mm. */
  readonly half: number;
  /** What the wedge takes at the shoulder, mm. */
  readonly intake: number;
  readonly armholeIn: number;
}

/** Neck width where it was not measured: from memory; with it the shoulder seam comes near the 145 mm that surveys find. mm */
const USUAL_NECK_WIDTH_MM = inches(4.5);
/** The nape lies so far below the shoulder level where it was not measured: from memory. mm */
const USUAL_NAPE_BELOW_MM = 20;

/** No nearer to the shoulder level does it lie. mm */
const HIGHEST_NAPE_MM = 5;

const LEAST_SHOULDER_MM = 40;
const LEAST_NECK_MM = 10;
const LEAST_NECK_DEPTH_MM = 30;
const LEAST_ARMHOLE_MM = 60;

/**
 * The shoulders of both blocks; null when the style has none, or cannot have them, which a blocking issue says.
 *
 * @param top height of the level top edge, mm
 */
export function shouldersOf(
  body: Body,
  style: Style,
  levels: readonly Level[],
  top: number,
): { frames: Readonly<Record<BlockName, ShoulderFrame>> | null; issues: Issue[] } {
  const { shoulders } = style;
  if (!shoulders) return { frames: null, issues: [] };
  const issues = [...hindrances(style), ...tooSmall(body, style, shoulders, top)];
  if (body.acrossShoulder === null) {
    issues.push(issue('measurementMissing', {}, { field: 'acrossShoulder' }));
    return { frames: null, issues };
  }
  const frames = {
    front: frameOf('front', body, body.acrossShoulder, style, shoulders),
    back: frameOf('back', body, body.acrossShoulder, style, shoulders),
  };
  const chest = levels[0];
  for (const block of ['front', 'back'] as const) {
    const { neck, tip, armholeIn } = frames[block];
    if (neck.x < LEAST_NECK_MM) issues.push(issue('shoulderOffBlock', {}, { block, field: 'neckWidth' }));
    if (tip.x - neck.x < LEAST_SHOULDER_MM || (chest && tip.x - armholeIn > chest.net[block] - LEAST_NECK_MM))
      issues.push(issue('shoulderOffBlock', {}, { block, field: 'acrossShoulder' }));
  }
  return { frames: issues.length > 0 ? null : frames, issues: [...issues, ...napeHeld(body, shoulders)] };
}

/** What in the style itself stands against shoulders: one wedge a block may run up to them, and a side seam must part the armhole. */
function hindrances(style: Style): Issue[] {
  const issues: Issue[] = [];
  if (style.topFrom !== 'overBust') issues.push(issue('shoulderNeedsTop', {}, { field: 'topFrom' }));
  // A band is cut with its wedges sewn up, whatever the panels below it are.
  if (style.shoulders?.bandAbove !== undefined) return issues;
  if (style.joinedSide) issues.push(issue('shoulderNeedsSideSeam', {}, { field: 'joinedSide' }));
  for (const block of ['front', 'back'] as const) {
    const upward = style.wedges
      .filter((wedge) => wedge.block === block && wedge.station > -1 && !wedge.upper)
      .sort((a, b) => Number(isDart(a)) - Number(isDart(b)) || Math.abs(a.station) - Math.abs(b.station));
    const [first] = upward;
    for (const wedge of upward)
      if (wedge !== first || isDart(wedge))
        issues.push(issue('shoulderWedges', {}, { block, wedge: wedge.id }));
  }
  return issues;
}

function tooSmall(body: Body, style: Style, { drop, bandAbove = 0 }: Shoulders, top: number): Issue[] {
  const neckline = top - style.topShape.centreFront.beyond - bandAbove;
  const underarm = top - style.topShape.underarm.beyond;
  return [
    ...(neckline < LEAST_NECK_DEPTH_MM ? ['topShape.centreFront'] : []),
    ...(underarm - drop < LEAST_ARMHOLE_MM ? ['topShape.underarm'] : []),
    ...(napeOf(body) > underarm ? ['backNeckToWaist'] : []),
  ].map((field) => issue('shoulderOffBlock', {}, { field }));
}

/** Height of the nape at centre back, mm below the shoulder level: never above it. */
export const napeOf = ({ neckToWaist, backNeckToWaist }: Body): number =>
  Math.max(HIGHEST_NAPE_MM, backNeckToWaist === null ? USUAL_NAPE_BELOW_MM : neckToWaist - backNeckToWaist);

/** Both blocks hang from one shoulder level, so a back that is longer than the front leaves no room for a neckline. */
function napeHeld(body: Body, { bandAbove }: Shoulders): Issue[] {
  const { neckToWaist, backNeckToWaist } = body;
  const drafted = neckToWaist - napeOf(body);
  if (bandAbove !== undefined || backNeckToWaist === null) return [];
  if (backNeckToWaist <= drafted + TAPE_TOLERANCE_MM) return [];
  const values = { asked: backNeckToWaist, drafted, front: neckToWaist };
  return [issue('napeHeld', values, { field: 'backNeckToWaist' })];
}

function frameOf(
  block: BlockName,
  body: Body,
  acrossShoulder: number,
  style: Style,
  { drop, armholeIn, intake }: Shoulders,
): ShoulderFrame {
  const open = openAt(block, style.closure) / 2;
  const neck = { x: (body.neckWidth ?? USUAL_NECK_WIDTH_MM) / 2 - open, y: 0 };
  const tip = { x: acrossShoulder / 2 - open, y: drop };
  return {
    neck,
    tip,
    middle: { x: (neck.x + tip.x) / 2, y: drop / 2 },
    slope: drop / (tip.x - neck.x),
    half: Math.hypot(tip.x - neck.x, drop) / 2,
    intake: intake[block],
    armholeIn,
  };
}
