// Sizing wedges from the girths: the closed form that a maker's trial and error works towards.

import { at } from '../geometry/lists';
import { halfOpenAt } from '../style/openings';
import { LEAST_PANEL_MM, type Style } from '../style/style';
import type { Wedge } from '../style/wedgeFields';
import type { BlockName, LevelName } from '../terms/names';
import { type Extent, isThrough, reaches, THROUGH } from './lines/extent';
import { halfGirth, type Level } from './lines/levels';
import { axisX, onCentre, weightAt } from './lines/station';
import { easedTowards } from './shoulders/bustDart';
import type { AskedEnd } from './shoulders/shoulderFrame';
import { type BlockWedges, springBelowWaist } from './spring';

/** Intakes in mm per wedge id and level; `unplaced` is what balancing left to the side seam. */
export interface SizedWedges {
  readonly intakeOf: ReadonlyMap<string, ReadonlyMap<LevelName, number>>;
  readonly unplaced: ReadonlyMap<LevelName, number>;
}

/**
 * Intakes of all wedges of one block. Wedges sized by hand keep theirs. The others share, by weight, what is left of
 *
 *   share(bust)·H(bust) − share(level)·H(level) − p·S/2,  S = H(bust) − H(level),
 *
 * never below zero; H is the half girth before the lacing gap, p the part the side seam takes. Each is capped by the
 * style and by what keeps the panels beside it at least {@link LEAST_PANEL_MM} wide; what a capped wedge cannot take
 * goes to the others, and what none can take to the side. A dart that would be blunt at its point leaves to the others what these
 * can take. Below the waist no weight and no cap holds: there the wedges let out
 * what the body grows beside them ({@link springBelowWaist}). A wedge that ends in neckline, shoulder or armhole is then eased
 * towards the straight line from there to the bust, and the side takes what it lets go.
 *
 * @param ends where wedges end in neckline, shoulder or armhole
 */
export function sizeWedges(of: BlockWedges, ends: readonly AskedEnd[]): SizedWedges {
  const { block, wedges, levels, style } = of;
  const intakes = wedges.map(() => new Map<LevelName, number>());
  const unplaced = new Map<LevelName, number>();
  const bust = levels.find((level) => level.name === 'bust');
  const waist = levels.find((level) => level.name === 'waist');
  for (const level of levels) {
    const isBelow = waist !== undefined && level.y > waist.y;
    const toTakeIn = bust && !isBelow ? Math.max(0, suppressionOf(block, bust, level, style)) : 0;
    const placed = placeAt(of, level, toTakeIn);
    const letOut = bust && level.y < bust.y ? letOutAbove(of, level, bust, ends) : [];
    for (const [i, intake] of intakes.entries())
      intake.set(level.name, at(placed.intakes, i) - (letOut[i] ?? 0));
    if (placed.left > 0.05) unplaced.set(level.name, placed.left);
  }
  springBelowWaist(of, intakes);
  if (bust)
    for (const end of ends) {
      const i = wedges.findIndex(({ id, sizing }) => id === end.wedge && sizing === 'balanced');
      if (i >= 0 && end.intake !== null && !end.isDart)
        easeUpwards(at(intakes, i), levels, bust, end.sewn.point.y, end.intake);
    }
  return { intakeOf: new Map(wedges.map(({ id }, i) => [id, at(intakes, i)])), unplaced };
}

/**
 * Above the bust the straight lines from the shoulder take little, the girths ask for much, and legs that gave it all
 * would swing in and out again within the few cm above the bust point. Two legs and the side line share what the girths
 * ask for more or less than the straight lines, so that each of the three leaves its straight way by as much: a third.
 */
function easeUpwards(
  intake: Map<LevelName, number>,
  levels: readonly Level[],
  bust: Level,
  top: number,
  above: number,
): void {
  const atBust = intake.get('bust') as number;
  for (const { name, y } of levels) {
    if (y >= bust.y) continue;
    const straight = atBust + ((above - atBust) * (bust.y - y)) / (bust.y - top);
    const asked = intake.get(name) as number;
    intake.set(name, easedTowards(straight, asked));
  }
}

/**
 * What balanced wedges that run up to a strapless top edge let out where the block is wider above the bust than at it, as towards
 * the arms of most backs and of flat chests: they share half of it, the more the farther they stand from the bust-point line, and
 * the side line, which would else lean far out below the arm, has the other half.
 */
function letOutAbove(
  { block, wedges, extents, style }: BlockWedges,
  level: Level,
  bust: Level,
  ends: readonly AskedEnd[],
): number[] {
  const wider = level.net[block] - bust.net[block];
  if (wider <= 0 || ends.length > 0 || style.topFrom !== 'overBust') return [];
  const parts = wedges.map((wedge, i) =>
    wedge.sizing === 'balanced' && isThrough(at(extents, i)) && !onCentre(wedge)
      ? wedge.weight * Math.max(LEAST_OUTWARDS, Math.abs(wedge.station))
      : 0,
  );
  const total = parts.reduce((sum, part) => sum + part, 0);
  return total > 0 ? parts.map((part) => (wider * part) / (2 * total)) : [];
}

/** What a wedge on the bust-point line counts of its weight where the block widens towards the arm. Our own bound, no source. */
const LEAST_OUTWARDS = 0.15;

function suppressionOf(block: BlockName, bust: Level, level: Level, style: Style): number {
  const total = halfGirth(bust) - halfGirth(level);
  return bust.net[block] - level.net[block] - (style.balance.sideShare * total) / 2;
}

function placeAt(of: BlockWedges, level: Level, toTakeIn: number): { intakes: number[]; left: number } {
  const { block, wedges, extents } = of;
  const manual = wedges.map((wedge, i) => {
    if (!reaches(at(extents, i), level.y)) return 0;
    return wedge.sizing === 'manual' ? (wedge.intake[level.name] ?? 0) : null;
  });
  const locked = manual.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  const toPlace = Math.max(0, toTakeIn - locked);
  let placed = toPlace;
  let intakes = manual.map((each) => each ?? 0);
  // What is placed widens the flat block and so moves the axes apart; a few rounds settle it, always downwards.
  for (let round = 0; round < 12; round += 1) {
    const width = level.net[block] + locked + placed;
    const caps = capsAt(of, level.name, manual, width);
    const open = wedges.map((wedge, i) => (manual[i] === null ? weightAt(level.name, wedge) : 0));
    const slim = caps.map((cap, i) => Math.min(cap, slimAt(at(extents, i), level.y)));
    const first = fill(placed, open, slim);
    const left = placed - first.reduce((sum, each) => sum + each, 0);
    const rest = caps.map((cap, i) => cap - at(first, i));
    const shares = left > 1e-9 ? fill(left, open, rest).map((more, i) => more + at(first, i)) : first;
    intakes = manual.map((each, i) => each ?? at(shares, i));
    const now = shares.reduce((sum, each) => sum + each, 0);
    if (placed - now < 1e-6) break;
    placed = now;
  }
  return { intakes, left: manual.includes(null) ? toPlace - placed : 0 };
}

/**
 * A dart takes at most so much per mm from its point, where another wedge can take what is left: it then opens by 41° there. Wider, it
 * ends in a peak (our own bound, no source).
 */
const SLIM_DART = 0.75;

/** The most a dart takes at a height, to be slim at its points, mm; infinite for a wedge that parts two panels. */
const slimAt = ({ upper, lower }: Extent, y: number): number =>
  SLIM_DART *
  Math.max(
    0,
    Math.min(
      upper === null ? Number.POSITIVE_INFINITY : y - upper,
      lower === null ? Number.POSITIVE_INFINITY : lower - y,
    ),
  );

/** The most each balanced wedge may take, so that it and its neighbour leave a panel between them. */
function capsAt(
  of: BlockWedges,
  level: LevelName,
  manual: readonly (number | null)[],
  width: number,
): number[] {
  const { block, wedges, bustLine, style, room: more } = of;
  const open = halfOpenAt(block, style.closure);
  const axes = wedges.map((wedge) => axisX(wedge, level, bustLine, width, open));
  const clear = ROOM_MM + (more.get(level) ?? 0);
  const y = of.levels.find(({ name }) => name === level)?.y ?? 0;
  /** A dart from above that ends before the level stands beside no wedge there. */
  const passes = (j: number): boolean => {
    const { lower } = of.extents[j] ?? THROUGH;
    return lower !== null && y > lower && manual[j] === 0;
  };
  return wedges.map((wedge, i) => {
    if (manual[i] !== null) return 0;
    const x = at(axes, i);
    const reach = (next: number): number => {
      const j = passes(next) ? 2 * next - i : next;
      const other = wedges[j];
      const apart = Math.abs((axes[j] ?? (j < 0 ? 0 : width)) - x) - clear;
      if (!other) return apart;
      const taken = manual[j];
      if (taken !== null && taken !== undefined) return apart - legReach(other, taken);
      return (apart * wedge.weight) / (wedge.weight + other.weight);
    };
    const room = onCentre(wedge) ? reach(i + 1) : 2 * Math.min(reach(i - 1), reach(i + 1));
    return Math.min(style.balance.cap, Math.max(0, room));
  });
}

// A little over the least panel, so that a curve between two levels has room as well.
const ROOM_MM = LEAST_PANEL_MM + 2;

const legReach = (wedge: Wedge, intake: number): number => (onCentre(wedge) ? intake : intake / 2);

/** Splits `amount` by weight, none above its cap; what overflows goes to those with room. */
function fill(amount: number, weights: readonly number[], caps: readonly number[]): number[] {
  const shares = weights.map(() => 0);
  let left = amount;
  for (let round = 0; round <= weights.length && left > 1e-9; round += 1) {
    const open = weights.map((weight, i) => (at(shares, i) < at(caps, i) ? weight : 0));
    const total = open.reduce((sum, weight) => sum + weight, 0);
    if (total <= 0) break;
    const portion = left;
    for (const [i, weight] of open.entries()) {
      const take = Math.min((portion * weight) / total, at(caps, i) - at(shares, i));
      shares[i] = at(shares, i) + take;
      left -= take;
    }
  }
  return shares;
}
