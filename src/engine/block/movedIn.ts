// Moves wedges towards the centre at a level where they stand so near the side that no panel has room between them.

import { at } from '../geometry/lists';
import { xAt } from '../geometry/smoothLine';
import { LEAST_PANEL_MM, type Style } from '../style/style';
import type { Wedge } from '../style/wedgeFields';
import type { BlockName, LevelName } from '../terms/names';
import type { Block } from './block';
import { isThrough } from './lines/extent';
import type { Level } from './lines/levels';
import { stationOf } from './lines/station';
import type { DraftedWedge } from './lines/wedge';

/** So much cloth is left between wedges that are moved in, so that a curve between two levels has room as well. mm */
const PANEL_MM = LEAST_PANEL_MM + 6;

/**
 * Stations, by id, with which the wedges of a block that run through leave every panel its room at a level and take what
 * balancing asks of them there. Counted with all wedges sewn up, the seams move towards the centre from the side in, each as
 * far as the panel beyond it needs. Nothing is moved where one in the way was put there by hand or takes what it was given,
 * or where the block is too narrow for its panels.
 *
 * @param left what balancing found no room for at the level, mm
 */
export function movedIn(
  {
    blocks,
    levels,
  }: { readonly blocks: Readonly<Record<BlockName, Block>>; readonly levels: readonly Level[] },
  name: BlockName,
  level: LevelName,
  style: Style,
  left: number,
): Map<string, number> {
  const block = blocks[name];
  const here = levels.find((each) => each.name === level);
  const centre = block.wedges
    .filter(({ onCentre }) => onCentre)
    .reduce((sum, { intake }) => sum + (intake.get(level) ?? 0), 0);
  const beside = block.wedges.filter(({ onCentre }) => !onCentre);
  const through = beside.filter(({ extent }) => isThrough(extent));
  const asked = through.map(({ id }) => style.wedges.find((each) => each.id === id));
  if (!here || through.length !== beside.length || !asked.every((each) => isFree(each, level)))
    return new Map();
  const intakes = shared(through, asked as Wedge[], level, left, style.balance.cap);
  let limit = here.net[name];
  const closed = closedPlaces(through, centre, level, here.y);
  for (let i = closed.length - 1; i >= 0; i -= 1) {
    limit = Math.min(at(closed, i), limit - PANEL_MM);
    closed[i] = limit;
  }
  if (limit < PANEL_MM) return new Map();
  const width = intakes.reduce((sum, each) => sum + each, here.net[name] + centre);
  let before = centre;
  return new Map(
    through.map(({ id }, i): [string, number] => {
      const x = at(closed, i) + before + at(intakes, i) / 2;
      before += at(intakes, i);
      return [id, stationOf(x, block.bustLine, width)];
    }),
  );
}

const isFree = (wedge: Wedge | undefined, level: LevelName): boolean =>
  wedge?.sizing === 'balanced' &&
  wedge.stationAt[level] === undefined &&
  wedge.fromCentre?.[level] === undefined;

/** What each would take with room enough, mm. */
function shared(
  drafted: readonly DraftedWedge[],
  asked: readonly Wedge[],
  level: LevelName,
  left: number,
  cap: number,
): number[] {
  const whole = drafted.reduce((sum, { intake }) => sum + (intake.get(level) ?? 0), left);
  const weights = asked.reduce((sum, { weight }) => sum + weight, 0);
  return asked.map(({ weight }) => Math.min(cap, (whole * weight) / weights));
}

/** Distance of each seam from the centre line with the wedges sewn up, mm; `centre` is what those on the centre line take. */
function closedPlaces(
  drafted: readonly DraftedWedge[],
  centre: number,
  level: LevelName,
  y: number,
): number[] {
  let before = centre;
  return drafted.map(({ axis, intake }) => {
    const taken = intake.get(level) ?? 0;
    const place = xAt(axis, y) - before - taken / 2;
    before += taken;
    return place;
  });
}
