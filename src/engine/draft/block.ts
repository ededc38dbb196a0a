// A half block before it is cut apart: the side seam that puts back what the wedges take, and the wedges' legs.

import type { Body } from '../body/body';
import { combine, type SmoothLine, smoothLine, straightDown } from '../geometry/smoothLine';
import { type Issue, issue } from '../issue';
import { onCentre, sizeWedges } from './balance';
import { checkRun, dartLeg, type Run, runOf, shutWhereEmpty, straightened, THROUGH } from './darts';
import type { Level } from './levels';
import { openAt } from './openings';
import { stationX } from './station';
import type { LevelName, Side, Style, Wedge } from './types';

/** A wedge as drawn on the block. */
export interface DraftedWedge {
  readonly id: string;
  readonly station: number;
  readonly sizing: Wedge['sizing'];
  readonly onCentre: boolean;
  /** Where it ends within a panel; null at both ends of a wedge that runs through. */
  readonly run: Run;
  readonly axis: SmoothLine;
  /** The leg nearer the centre line. */
  readonly innerLeg: SmoothLine;
  /** The leg nearer the side. */
  readonly outerLeg: SmoothLine;
  /** Intake in mm at each level of the draft. */
  readonly intake: ReadonlyMap<LevelName, number>;
}

export interface Block {
  readonly side: Side;
  /** x of the bust-point line, mm; on the back the same distance from the body's centre back. */
  readonly bustLine: number;
  readonly wedges: readonly DraftedWedge[];
  readonly sideSeam: SmoothLine;
  /** Flat width at each level, mm: closed width and all intakes. */
  readonly width: ReadonlyMap<LevelName, number>;
}

/**
 * Drafts one block. At each level flat width = closed width + sum of intakes, so that the sewn girth meets its
 * target whatever the wedges do. All lines are monotone between levels and straight down beyond the outermost.
 */
export function draftBlock(
  side: Side,
  body: Body,
  levels: readonly Level[],
  style: Style,
): { block: Block; issues: Issue[] } {
  const issues: Issue[] = [];
  const wedges = style.wedges.filter((wedge) => wedge.block === side).sort(fromCentre);
  const bustLine = bustLineOf(side, body, levels, style);
  const { intakeOf: sized, unplaced } = sizeWedges(side, wedges, levels, bustLine, style);
  const darts = new Map(
    wedges.map((wedge) => [wedge.id, shutWhereEmpty(runOf(wedge, levels), levels, sized.get(wedge.id))]),
  );
  const intakeOf = new Map(
    wedges.map(({ id }) => [id, darts.get(id)?.intake ?? new Map<LevelName, number>()]),
  );
  for (const wedge of wedges) issues.push(...checkRun(wedge, side, levels));
  for (const [level, left] of unplaced)
    issues.push(issue('intakeNotPlaced', 'note', { block: side, level }, { left }));

  const width = new Map(
    levels.map((level) => {
      const intakes = wedges.reduce((sum, wedge) => sum + (intakeOf.get(wedge.id)?.get(level.name) ?? 0), 0);
      return [level.name, level.net[side] + intakes];
    }),
  );
  const least = Math.min(...width.values());
  if (bustLine >= least)
    issues.push(issue('bustPointOffBlock', 'block', { block: side, field: 'bustPointWidth' }));

  const ys = levels.map((level) => level.y);
  const drafted = wedges.map((wedge) =>
    draftWedge(
      wedge,
      darts.get(wedge.id)?.run ?? THROUGH,
      ys,
      levels,
      bustLine,
      width,
      intakeOf.get(wedge.id) ?? new Map(),
    ),
  );
  const sideSeam = smoothLine(
    ys,
    levels.map((level) => width.get(level.name) as number),
  );
  return { block: { side, bustLine, wedges: drafted, sideSeam, width }, issues };
}

// The name settles ties, so that the order in which wedges were added changes nothing.
const fromCentre = (a: Wedge, b: Wedge): number =>
  a.station - b.station || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

function bustLineOf(side: Side, body: Body, levels: readonly Level[], style: Style): number {
  const half = body.bustPointWidth / 2 - openAt(side, style.closure) / 2;
  if (side === 'front') return half;
  const bust = levels.find((level) => level.name === 'bust') as Level;
  // A wide lacing gap must not push the back's bust-point line onto the centre edge, nor a slim waist leave no room beyond it.
  const slimmest = Math.min(...levels.map((level) => level.net.back));
  return Math.min(Math.max(half, bust.net.back / 4), slimmest / 2);
}

/** A fullness needs this much room to the levels above and below it, mm. */
const CUP_CLEAR_MM = 15;

/** What a wedge takes at every height: the levels' intakes, nothing at a dart's points, and where it fits the cup's fullness. */
function intakeLine(
  wedge: Wedge,
  { upper, lower }: Run,
  levels: readonly Level[],
  intake: ReadonlyMap<LevelName, number>,
): SmoothLine {
  const knots = levels
    .filter(({ y }) => (upper === null || y > upper) && (lower === null || y < lower))
    .map(({ name, y }) => ({ y, taken: intake.get(name) as number }));
  if (upper !== null) knots.push({ y: upper, taken: 0 });
  if (lower !== null) knots.push({ y: lower, taken: 0 });
  knots.sort((a, b) => a.y - b.y);
  const bust = levels.find(({ name }) => name === 'bust');
  if (wedge.cup && bust) {
    const y = bust.y + wedge.cup.below;
    const [first, last] = [knots[0]?.y ?? y, knots.at(-1)?.y ?? y];
    if (y > first && y < last && knots.every((knot) => Math.abs(knot.y - y) >= CUP_CLEAR_MM))
      knots.push({ y, taken: wedge.cup.intake });
  }
  knots.sort((a, b) => a.y - b.y);
  return smoothLine(
    knots.map(({ y }) => y),
    knots.map(({ taken }) => taken),
    // A dart comes to its point at an angle; a wedge that runs through goes on straight down.
    { start: upper === null ? 'flat' : 'free', end: lower === null ? 'flat' : 'free' },
  );
}

function draftWedge(
  wedge: Wedge,
  run: Run,
  ys: readonly number[],
  levels: readonly Level[],
  bustLine: number,
  width: ReadonlyMap<LevelName, number>,
  intake: ReadonlyMap<LevelName, number>,
): DraftedWedge {
  const taken = intakeLine(wedge, run, levels, intake);
  const stations = smoothLine(
    ys,
    levels.map((level) =>
      stationX(wedge.stationAt[level.name] ?? wedge.station, bustLine, width.get(level.name) as number),
    ),
  );
  const axis = onCentre(wedge) ? combine(taken, 0.5, taken, 0) : straightened(stations, run);
  return {
    id: wedge.id,
    station: wedge.station,
    sizing: wedge.sizing,
    onCentre: onCentre(wedge),
    run,
    axis,
    innerLeg: onCentre(wedge) ? straightDown(0) : dartLeg(axis, taken, -0.5, run),
    outerLeg: dartLeg(axis, taken, 0.5, run),
    intake,
  };
}
