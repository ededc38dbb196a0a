// How alterations change the girths, and where the levels lie on the altered panels.

import type { Level, LevelPath, RaisedLevel } from '../../block/lines/levels';
import { at, numberAt } from '../../geometry/lists';
import type { Point } from '../../geometry/point';
import { type SmoothLine, xAt } from '../../geometry/smoothLine';
import type { Panel, PanelDart } from '../../panels/panel';
import { raisedHeight } from '../../panels/raise';
import { heightBeside } from '../../panels/raisedSeam';
import type { LevelName } from '../../terms/names';

/** The path of a level over a panel; null where it is level, as drafted. */
function levelPath(panel: Panel, y: number): LevelPath | null {
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

/** What alterations did to the levels. */
export interface AlteredLevels {
  /**
   * How much longer the sewn girth is at each level, mm; below 0 where it was taken in. A level that is raised more at one seam than
   * at the next runs aslant, and is a little longer for that.
   */
  readonly girths: ReadonlyMap<LevelName, number>;
  /** Levels that run aslant over a panel, or at another height than drafted. */
  readonly raised: readonly RaisedLevel[];
}

/** The levels on the altered panels against those on the drafted ones, which stand in the same order. */
export function alteredLevels(
  levels: readonly Level[],
  drafted: readonly Panel[],
  altered: readonly Panel[],
): AlteredLevels {
  const changes = levels.map(() => 0);
  const raised: RaisedLevel[] = [];
  for (let i = 0; i < altered.length; i += 1) {
    const [before, panel] = [drafted[i], at(altered, i)];
    for (let k = 0; k < levels.length; k += 1) {
      const { name, y } = at(levels, k);
      const path = levelPath(panel, y);
      if (path) raised.push({ block: panel.block, number: panel.number, level: name, path });
      if (before !== undefined && before !== panel)
        changes[k] =
          numberAt(changes, k) +
          alongLevel(before, panel, y, path) -
          alongLevel(before, before, y, levelPath(before, y));
    }
  }
  const girths = new Map<LevelName, number>();
  for (let k = 0; k < levels.length; k += 1) {
    const change = numberAt(changes, k);
    girths.set(at(levels, k).name, Math.abs(change) < ROUNDING_MM ? 0 : 2 * change);
  }
  return { girths, raised };
}

const ROUNDING_MM = 1e-9;

/** Length of a level over a panel with those of its darts sewn up that reach the level as drafted, mm. */
function alongLevel(drafted: Panel, panel: Panel, y: number, path: LevelPath | null): number {
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
  from.y === to.y ? to.x - from.x : Math.sqrt((to.x - from.x) ** 2 + (to.y - from.y) ** 2);

const reachesLevel = ({ upper, lower }: PanelDart, y: number): boolean =>
  (upper === null || y > upper) && (lower === null || y < lower);
