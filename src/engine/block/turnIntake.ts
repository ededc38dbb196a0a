// Turns intake about the bust point: one wedge takes less and another takes as much more by the angle, so that the cup keeps its
// shape.

import { distance, type Point } from '../geometry/point';
import { xAt } from '../geometry/smoothLine';
import type { LevelName, PerLevel } from '../terms/names';
import { TAPE_TOLERANCE_MM } from '../terms/units';
import type { Block } from './block';
import { dartAngle } from './lines/closedDart';
import { reaches } from './lines/extent';
import type { Level } from './lines/levels';
import type { DraftedWedge } from './lines/wedge';

/** A place on a wedge: at a level, which may lie above or below the bust line. */
interface WedgePlace {
  readonly wedge: string;
  readonly level: LevelName;
}

/** `width` mm are taken from one place and go to another. */
export interface Turn {
  readonly from: WedgePlace;
  readonly to: WedgePlace;
  readonly width: number;
}

export interface Turned {
  readonly angleRad: number;
  /** What the other place takes more, mm: wider the farther it lies from the bust point. */
  readonly width: number;
  /** Intakes of every wedge of the block at every level afterwards, mm. */
  readonly intakes: ReadonlyMap<string, Partial<PerLevel>>;
  /**
   * How wide the wedge that runs up from the bust point opens in neckline, shoulder or armhole afterwards, from leg to leg, mm; null
   * where none that parts two panels does.
   */
  readonly opening: number | null;
}

/**
 * Turns intake about the bust point of the front. What is turned is a dart from the bust point down (or up) the middle of the
 * wedge: at a level that it crosses it is narrower in proportion to its distance from the bust point, beyond the place nothing
 * changes, but a wedge that ends in neckline, shoulder or armhole opens there by as much more or less. Flat widths follow the
 * intakes, so the sewn girth stays.
 *
 * Null where nothing can be turned: the block has no such wedge or level, a place lies on the bust line, the wedge takes less than
 * `width` there (by over {@link TAPE_TOLERANCE_MM}, since a typed length is rounded), the dart that is to take it ends before the
 * level, or both places are one.
 */
export function turnIntake(front: Block, levels: readonly Level[], { from, to, width }: Turn): Turned | null {
  const bust = levels.find(({ name }) => name === 'bust');
  const [giving, taking] = [from, to].map(({ wedge }) => front.wedges.find(({ id }) => id === wedge));
  const same = from.wedge === to.wedge && from.level === to.level;
  if (!bust || !giving || !taking || same || front.name !== 'front') return null;
  const apex: Point = { x: front.bustLine, y: bust.y };
  const [farFrom, farTo] = [
    depthAt(giving, from.level, levels, apex),
    depthAt(taking, to.level, levels, apex),
  ];
  const there = giving.intake.get(from.level) ?? 0;
  const reached = (level: Level): boolean => reaches(taking.extent, level.y);
  const goal = levels.find(({ name }) => name === to.level);
  if (!goal || !reached(goal)) return null;
  if (farFrom === null || farTo === null || !(width > 0) || width > there + TAPE_TOLERANCE_MM) return null;

  const angleRad = dartAngle(width, Math.hypot(farFrom, width / 2));
  const intakes = new Map(front.wedges.map(({ id, intake }) => [id, new Map(intake)]));
  for (const { name } of onTheWay(from.level, levels, bust)) {
    const before = intakes.get(giving.id)?.get(name) ?? 0;
    const less = widthAt(angleRad, depthAt(giving, name, levels, apex) ?? 0);
    // A wedge that takes less than that on the way gives what it has; a gore gives nothing.
    intakes.get(giving.id)?.set(name, before > 0 ? Math.max(0, before - less) : before);
  }
  for (const { name } of onTheWay(to.level, levels, bust).filter(reached)) {
    const before = intakes.get(taking.id)?.get(name) ?? 0;
    const more = widthAt(angleRad, depthAt(taking, name, levels, apex) ?? 0);
    intakes.get(taking.id)?.set(name, before + more);
  }
  return {
    angleRad,
    width: widthAt(angleRad, farTo),
    intakes: new Map(
      [...intakes].map(([id, each]): [string, Partial<PerLevel>] => [id, Object.fromEntries(each)]),
    ),
    opening: openingAbove(front, apex, (wedge) => {
      const isAbove = (place: WedgePlace): boolean =>
        place.wedge === wedge && (levels.find(({ name }) => name === place.level)?.y ?? apex.y) < apex.y;
      return (isAbove(to) ? angleRad : 0) - (isAbove(from) ? angleRad : 0);
    }),
  };
}

/** The opening above of the wedge nearest to the bust-point line with its angle about the bust point changed, mm. */
function openingAbove(
  { upper, wedges }: Block,
  apex: Point,
  changeOf: (wedge: string) => number,
): number | null {
  const far = (id: string): number => Math.abs(wedges.find((wedge) => wedge.id === id)?.station ?? 1);
  const [end] = [...(upper?.ends ?? [])].sort((a, b) => far(a.wedge) - far(b.wedge));
  if (!end || end.isDart) return null;
  const height = apex.y - end.sewn.point.y;
  const inner = Math.atan2(end.sewn.point.x - apex.x, height);
  const outer = Math.atan(Math.tan(inner) + end.intake / height);
  const angle = Math.max(0, outer - inner + changeOf(end.wedge));
  return 2 * distance(apex, end.sewn.point) * Math.sin(angle / 2);
}

/** Width of a dart of an angle whose middle is `depth` long. */
const widthAt = (angleRad: number, depth: number): number => 2 * depth * Math.tan(angleRad / 2);

/** Levels from the bust line, which is left out, to the place, which is not. */
function onTheWay(to: LevelName, levels: readonly Level[], bust: Level): Level[] {
  const y = levels.find(({ name }) => name === to)?.y ?? bust.y;
  return levels.filter((level) =>
    y > bust.y ? level.y > bust.y && level.y <= y : level.y < bust.y && level.y >= y,
  );
}

/** From the bust point to the middle of a wedge at a level, mm; null on the bust line or where there is no such level. */
function depthAt(
  wedge: DraftedWedge,
  level: LevelName,
  levels: readonly Level[],
  apex: Point,
): number | null {
  const y = levels.find(({ name }) => name === level)?.y;
  if (y === undefined || y === apex.y) return null;
  return distance(apex, { x: xAt(wedge.axis, y), y });
}
