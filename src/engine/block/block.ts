// A half block before it is cut apart: the side seam that puts back what the wedges take, and the wedges' legs.

import type { Body } from '../body/body';
import { at } from '../geometry/lists';
import { type SmoothLine, xAt } from '../geometry/smoothLine';
import { halfOpenAt } from '../style/openings';
import { LEAST_PANEL_MM, type Style } from '../style/style';
import type { Wedge } from '../style/wedgeFields';
import { isDart } from '../style/wedgeKind';
import { type Issue, issue } from '../terms/issue';
import type { BlockName, LevelName } from '../terms/names';
import { TAPE_TOLERANCE_MM } from '../terms/units';
import type { Amendments } from './amendments';
import { sizeWedges } from './balance';
import { checkExtent, type Extent, extentOf, isThrough, shutWhereEmpty, THROUGH } from './lines/extent';
import type { Level } from './lines/levels';
import { lineDown, PAST_BUST_ROUND_MM } from './lines/lineDown';
import { type DraftedWedge, draftWedge } from './lines/wedge';
import type { AskedEnd } from './shoulders/shoulderFrame';
import type { Shouldered } from './shoulders/shoulders';
import {
  endOn,
  pastEnd,
  startOfEdges,
  type UpperEdges,
  type UpperEnd,
  type UpperProgress,
} from './shoulders/upperEdges';

export interface Block {
  readonly name: BlockName;
  /** x of the bust-point line, mm; on the back the same distance from the body's centre back. */
  readonly bustLine: number;
  readonly wedges: readonly DraftedWedge[];
  readonly sideSeam: SmoothLine;
  /** Flat width at each level, mm: closed width and all intakes. */
  readonly width: ReadonlyMap<LevelName, number>;
  /** Neckline, shoulder and armhole; null where the top edge is strapless. */
  readonly upper: UpperEdges | null;
}

/** What a block is drafted between. */
interface BlockFrame {
  readonly levels: readonly Level[];
  /** Height of the level top edge, mm. */
  readonly top: number;
  /** Null where the panels are strapless. */
  readonly shouldered: Shouldered | null;
}

/**
 * Drafts one block. At each level flat width = closed width + sum of intakes, so that the sewn girth meets its
 * target whatever the wedges do. All lines are monotone between levels and straight down beyond the outermost; with
 * shoulders, a wedge that runs through goes on up to where it ends in neckline, shoulder or armhole.
 */
export function draftBlock(
  block: BlockName,
  body: Body,
  { levels, top, shouldered }: BlockFrame,
  style: Style,
  amendments: Amendments,
): { block: Block; issues: Issue[] } {
  const issues: Issue[] = [];
  const wedges = style.wedges
    .filter((wedge) => wedge.block === block)
    .map((wedge) => atStations(wedge, amendments))
    .sort(fromCentre);
  const bustLine = bustLineOf(block, body, levels, style);
  const extents = wedges.map((wedge) => amendments.extents.get(wedge.id) ?? extentOf(wedge, levels, top));
  const ends = shouldered?.ends[block] ?? [];
  const stays = ({ id }: Wedge): boolean => !amendments.leftOut.has(id);
  const { intakeOf: sized, unplaced } = sizeWedges(
    {
      block,
      wedges: wedges.filter(stays),
      extents: extents.filter((_, i) => stays(at(wedges, i))),
      levels,
      bustLine,
      style,
      room: amendments.room[block],
    },
    ends,
  );
  const darts = new Map(
    wedges.map(({ id }, i) => {
      const [extent, end] = [
        extents[i] ?? THROUGH,
        ends.find(({ wedge, isDart: within }) => within && wedge === id),
      ];
      return [id, end ? straightDart(extent, levels, end) : shutWhereEmpty(extent, levels, sized.get(id))];
    }),
  );
  const intakeOf = new Map(
    wedges.map(({ id }) => [id, darts.get(id)?.intake ?? new Map<LevelName, number>()]),
  );
  for (const wedge of wedges) {
    if (ends.some((end) => end.isDart && end.wedge === wedge.id)) continue;
    const faults = checkExtent(wedge, block, levels, top);
    issues.push(...(faults.length > 0 ? faults : amendedIssues(wedge, intakeOf.get(wedge.id), amendments)));
  }
  for (const level of amendments.room[block].keys())
    issues.push(issue('wedgesTakeLess', { least: LEAST_PANEL_MM }, { block, level }));
  for (const { name } of levels)
    if (wedges.some(({ id }) => amendments.stations.get(id)?.[name] !== undefined))
      issues.push(issue('wedgesMovedIn', { least: LEAST_PANEL_MM }, { block, level: name }));
  for (const [level, left] of unplaced)
    if (left > TAPE_TOLERANCE_MM) issues.push(issue('intakeNotPlaced', { left }, { block, level }));

  const width = new Map(
    levels.map((level) => {
      const intakes = wedges.reduce((sum, wedge) => sum + (intakeOf.get(wedge.id)?.get(level.name) ?? 0), 0);
      return [level.name, level.net[block] + intakes];
    }),
  );
  const least = Math.min(...width.values());
  if (bustLine >= least) issues.push(issue('bustPointOffBlock', {}, { block, field: 'bustPointWidth' }));

  const frame = shouldered?.frames[block];
  let upper: UpperProgress | null = null;
  const drafted: DraftedWedge[] = [];
  for (const wedge of wedges) {
    const dart = darts.get(wedge.id);
    const asked = ends.find((end) => end.wedge === wedge.id);
    if (frame && asked) upper ??= startOfEdges(frame, centreTakes(drafted, frame.neck.y));
    const end = upper && asked ? endOn(upper, asked, (y) => onwards(dart?.intake, levels, y)) : null;
    const made = draftWedge(wedge, dart?.extent ?? THROUGH, dart?.intake ?? new Map(), {
      levels,
      bustLine,
      open: halfOpenAt(block, style.closure),
      width,
      shoulder: end && upperEndOf(end, block),
    });
    if (upper && end) upper = pastEnd(upper, end, made, body.neckToWaist);
    drafted.push(made);
  }
  const sideSeam = sideLine(levels, width, frame?.underarm.y ?? null);
  if (frame) upper ??= startOfEdges(frame, centreTakes(drafted, frame.neck.y));
  const edges = upper && { frame: upper.frame, ends: upper.ends, inward: upper.inward };
  return { block: { name: block, bustLine, wedges: drafted, sideSeam, width, upper: edges }, issues };
}

/** The wedges that part two panels of a block, from the centre line to the side; the panel beyond the n-th has number n + 1. */
export function partingWedges({ wedges }: Pick<Block, 'wedges'>): DraftedWedge[] {
  const centre = wedges.find((wedge) => wedge.onCentre);
  // A second wedge on the centre line parts off a panel of no width, which is refused.
  return wedges.filter((wedge) => wedge !== centre && isThrough(wedge.extent));
}

const atStations = (wedge: Wedge, { stations }: Amendments): Wedge => {
  const moved = stations.get(wedge.id);
  return moved ? { ...wedge, stationAt: { ...wedge.stationAt, ...moved } } : wedge;
};

/** A dart that opens in neckline, shoulder or armhole: its legs are straight, so at every level it takes what they do there. */
function straightDart(
  extent: Extent,
  levels: readonly Level[],
  end: AskedEnd,
): { extent: Extent; intake: Map<LevelName, number> } {
  const point = extent.lower ?? end.sewn.point.y;
  const height = point - end.sewn.point.y;
  const takes = (y: number): number => Math.max(0, ((end.intake ?? 0) * (point - y)) / Math.max(1, height));
  return { extent, intake: new Map(levels.map(({ name, y }) => [name, takes(y)])) };
}

/** A note for a dart that is drafted otherwise than its style asks: left out because it takes nothing, or closed before its edge. */
function amendedIssues(
  wedge: Wedge,
  intake: ReadonlyMap<LevelName, number> | undefined,
  { extents, leftOut }: Amendments,
): Issue[] {
  const place = { block: wedge.block, wedge: wedge.id };
  const isEmpty = [...(intake?.values() ?? [])].every((taken) => taken === 0);
  if (leftOut.has(wedge.id) || (isDart(wedge) && wedge.sizing === 'balanced' && isEmpty))
    return [issue('dartLeftOut', {}, place)];
  return extents.has(wedge.id) ? [issue('dartClosedEarly', {}, place)] : [];
}

/** From the bust line up to an armhole the side line leans no more than this: mm across per mm up. Our own bound, no source. */
const MOST_SIDE_LEAN = 0.35;

/**
 * The side line, mm; where it leans in above the bust, it opens like a cone, as the wedges do. A level above the armhole's base has
 * no girth in cloth there, and the line heads for its width only as far as it may lean.
 *
 * @param armhole height of the armhole's base, mm; null where there is none
 */
function sideLine(
  levels: readonly Level[],
  width: ReadonlyMap<LevelName, number>,
  armhole: number | null,
): SmoothLine {
  const bust = levels.find(({ name }) => name === 'bust');
  const atBust = width.get('bust') ?? 0;
  return lineDown(
    levels.map(({ name, y }) => {
      const value = width.get(name) as number;
      if (!bust || armhole === null || y >= Math.min(armhole, bust.y)) return { y, value };
      const most = MOST_SIDE_LEAN * (bust.y - y);
      return { y, value: atBust + Math.min(most, Math.max(-most, value - atBust)) };
    }),
    bust ? { bust: bust.y, round: PAST_BUST_ROUND_MM } : null,
  );
}

/** How far wedges on the centre line move out what lies above them, mm. */
const centreTakes = (drafted: readonly DraftedWedge[], y: number): number =>
  drafted.reduce((sum, wedge) => sum + (wedge.onCentre ? xAt(wedge.outerLeg, y) : 0), 0);

/** Above the over-bust line a wedge's intake changes over so much height at the most. mm */
const MOST_RUN_MM = 25;

/** The intake at a height above the bust, mm: on the straight line through the intakes at bust and over-bust, at least 0. */
function onwards(
  intake: ReadonlyMap<LevelName, number> | undefined,
  levels: readonly Level[],
  y: number,
): number {
  const [above, bust] = [
    levels.find(({ name }) => name === 'overBust'),
    levels.find(({ name }) => name === 'bust'),
  ];
  if (!intake || !above || !bust) return 0;
  const atAbove = intake.get('overBust') ?? 0;
  const atBust = intake.get('bust') ?? 0;
  const height = bust.y - Math.max(y, above.y - MOST_RUN_MM);
  return Math.max(0, atBust + ((atAbove - atBust) * height) / (bust.y - above.y));
}

/** On the back, which has no bust point, a seam to the armhole bends from the waist up instead of from the bust. */
const upperEndOf = ({ at, edge, intake }: UpperEnd, block: BlockName) => ({
  x: at.point.x + intake / 2,
  y: at.point.y,
  intake,
  bendsFrom: block === 'back' && edge === 'armhole' ? ('waist' as const) : ('bust' as const),
});

// The name settles ties, so that the order in which wedges were added changes nothing.
const fromCentre = (a: Wedge, b: Wedge): number =>
  a.station - b.station || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

function bustLineOf(block: BlockName, body: Body, levels: readonly Level[], style: Style): number {
  const open = halfOpenAt(block, style.closure);
  if (block === 'front') return body.bustPointWidth / 2 - open;
  const half = body.backLineWidth / 2 - open;
  const bust = levels.find((level) => level.name === 'bust') as Level;
  // The back's bust-point line keeps off the centre edge where the lacing gap is wide, and off the side seam where the waist is
  // slim.
  const slimmest = Math.min(...levels.map((level) => level.net.back));
  return Math.min(Math.max(half, bust.net.back / 4), slimmest / 2);
}
