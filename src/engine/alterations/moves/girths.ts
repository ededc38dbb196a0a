// How alterations change the girths, and where the levels lie on the altered panels.

import type { Level, LevelPath } from '../../block/lines/levels';
import { at } from '../../geometry/lists';
import type { Point } from '../../geometry/point';
import { type SmoothLine, xAt } from '../../geometry/smoothLine';
import type { Panel, PanelDart } from '../../panels/panel';
import { raisedHeight } from '../../panels/raise';
import { heightBeside } from '../../panels/raisedSeam';
import type { LevelName } from '../../terms/names';

/** The path of a level over a panel; null where it is level, as drafted. */
export function levelPath(panel: Panel, y: number): LevelPath | null {
  if (!panel.raised && panel.darts.length === 0) return null;
  const inner = heightBeside(panel, 'inner', y);
  const outer = heightBeside(panel, 'outer', y);
  if (panel.darts.length === 0) return inner === y && outer === y ? null : { inner, outer, darts: NO_DARTS };
  const darts = new Map<string, number>();
  let isLevel = inner === y && outer === y;
  for (const { wedge, raised } of panel.darts) {
    const height = raisedHeight(raised ?? [], y);
    darts.set(wedge, height);
    isLevel &&= height === y;
  }
  return isLevel ? null : { inner, outer, darts };
}

const NO_DARTS: LevelPath['darts'] = new Map();

/**
 * How much longer the sewn girth of the altered panels is at each level, mm; below 0 where they were taken in. A level that is
 * raised more at one seam than at the next runs aslant, and is a little longer for that.
 */
export function alteredGirths(
  levels: readonly Level[],
  drafted: readonly Panel[],
  altered: readonly Panel[],
): Map<LevelName, number> {
  const girths = new Map<LevelName, number>();
  for (const { name, y } of levels) {
    let change = 0;
    for (let i = 0; i < altered.length; i += 1) {
      const [before, panel] = [drafted[i], at(altered, i)];
      if (before !== undefined && before !== panel)
        change = change + alongLevel(before, panel, y) - alongLevel(before, before, y);
    }
    girths.set(name, Math.abs(change) < ROUNDING_MM ? 0 : 2 * change);
  }
  return girths;
}

const ROUNDING_MM = 1e-9;

/** Length of a level over a panel with those of its darts sewn up that reach the level as drafted, mm. */
function alongLevel(drafted: Panel, panel: Panel, y: number): number {
  const path = levelPath(panel, y);
  if (!path && panel.darts.length === 0) return xAt(panel.outer, y) - xAt(panel.inner, y);
  let length = 0;
  let from = pointOf(panel.inner, path?.inner ?? y);
  for (const [i, dart] of panel.darts.entries()) {
    if (!reachesLevel(drafted.darts[i] ?? dart, y)) continue;
    const height = path?.darts.get(dart.wedge) ?? y;
    length += lengthBetween(from, pointOf(dart.innerLeg, height));
    from = pointOf(dart.outerLeg, height);
  }
  return length + lengthBetween(from, pointOf(panel.outer, path?.outer ?? y));
}

const pointOf = (line: SmoothLine, y: number): Point => ({ x: xAt(line, y), y });

/** Below 0 where a level runs backwards, as over legs that have crossed. */
const lengthBetween = (from: Point, to: Point): number =>
  from.y === to.y ? to.x - from.x : Math.hypot(to.x - from.x, to.y - from.y);

const reachesLevel = ({ upper, lower }: PanelDart, y: number): boolean =>
  (upper === null || y > upper) && (lower === null || y < lower);
