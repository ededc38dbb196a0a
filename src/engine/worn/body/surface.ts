// The body's surface: distances from its axis in columns round the body and rows up it, with every girth as measured.

import { xAt } from '../../geometry/smoothLine';
import type { LevelName } from '../../terms/names';
import type { BodyLevel, Shape } from './shape';
import { byHeight, type Skin, sectionRadii } from './skin';
import { rootBetween } from './superellipse';
import { COLUMN_STEP, COLUMNS, COSINES, SINES, tapeLength } from './tape';

/** Row by row from the lowest, columns from the front. */
export interface Surface {
  readonly radii: Float64Array;
  readonly rows: number;
  /** Height of the lowest row, and from row to row, mm. */
  readonly lowest: number;
  readonly step: number;
}

const BELOW_HIP_MM = 110;
const ABOVE_SHOULDER_MM = 40;
const GIRTH_TOLERANCE_MM = 0.05;
const MOST_ROUNDS = 60;

/**
 * Builds the surface. First each level's section is scaled to its girth and the breasts made as full as the bust girth asks;
 * then, where `exact`, one factor a level, smooth between, brings each tape on the finished surface to its girth.
 *
 * @param step from row to row, mm
 */
export function makeSurface(
  shape: Shape,
  skin: Skin,
  levels: readonly BodyLevel[],
  step: number,
  exact: boolean,
): Surface {
  const { scales, fullness } = scaledTo(shape, skin, levels, exact ? 3 : 1);
  const lowest = (levels[levels.length - 1]?.z ?? 0) - BELOW_HIP_MM;
  const highest = Math.max(ABOVE_SHOULDER_MM, skin.shoulder.z + ABOVE_SHOULDER_MM);
  const rows = Math.ceil((highest - lowest) / step) + 1;
  const scale = byHeight(levels, (level) => scales.get(level) ?? 1, scales.get('hip') ?? 1, [
    [skin.z.overBust + 80, 1],
    [skin.z.overBust + 400, 1],
  ]);
  const radii = new Float64Array(rows * COLUMNS);
  for (let j = 0; j < rows; j += 1) {
    const z = lowest + j * step;
    radii.set(sectionRadii(skin, z, xAt(scale, z), fullness), j * COLUMNS);
  }
  const surface = { radii, rows, lowest, step };
  if (exact) bringToGirths(surface, levels, skin.z.overBust);
  return surface;
}

function scaledTo(
  shape: Shape,
  skin: Skin,
  levels: readonly BodyLevel[],
  rounds: number,
): { scales: Map<LevelName, number>; fullness: number } {
  const scales = new Map<LevelName, number>(levels.map(({ name }) => [name, 1]));
  let fullness = 40;
  const scaleTo = (name: LevelName, z: number, girth: number, full: number): void => {
    for (let k = 0; k < 2; k += 1) {
      const scale = scales.get(name) ?? 1;
      scales.set(name, (scale * girth) / tapeLength(sectionRadii(skin, z, scale, full)));
    }
  };
  for (let round = 0; round < rounds; round += 1) {
    for (const { name, z, girth } of levels) if (name !== 'bust') scaleTo(name, z, girth, fullness);
    for (const { name, z, girth } of levels) {
      if (name !== 'bust') continue;
      scaleTo(name, z, shape.ribs, 0);
      const scale = scales.get(name) ?? 1;
      const over = (full: number): number => tapeLength(sectionRadii(skin, z, scale, full)) - girth;
      fullness = girth > shape.ribs + 1 ? rootBetween(over, 0, 0.25 * girth) : 0;
      if (fullness === 0) scaleTo(name, z, girth, 0);
    }
  }
  return { scales, fullness };
}

/** Multiplies rows by a factor of height until each level's tape is its girth. */
function bringToGirths({ radii, ...rest }: Surface, levels: readonly BodyLevel[], overBust: number): void {
  const before = radii.slice();
  const factors = new Map<LevelName, number>(levels.map(({ name }) => [name, 1]));
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    let worst = 0;
    for (const { name, z, girth } of levels) {
      const tape = tapeAt({ radii, ...rest }, z);
      worst = Math.max(worst, Math.abs(tape - girth));
      factors.set(name, ((factors.get(name) ?? 1) * girth) / tape);
    }
    if (worst < GIRTH_TOLERANCE_MM) return;
    const line = byHeight(levels, (level) => factors.get(level) ?? 1, factors.get('hip') ?? 1, [
      [overBust + 80, 1],
      [overBust + 400, 1],
    ]);
    for (let j = 0; j < rest.rows; j += 1) {
      const factor = xAt(line, rest.lowest + j * rest.step);
      for (let i = 0; i < COLUMNS; i += 1) radii[j * COLUMNS + i] = before[j * COLUMNS + i]! * factor;
    }
  }
}

/** Distance from the axis in a direction (rad from the front) at a height, bilinear between rows and columns, mm. */
export function radiusAt({ radii, rows, lowest, step }: Surface, theta: number, z: number): number {
  const v = Math.max(0, Math.min(rows - 1.001, (z - lowest) / step));
  const u = Math.max(0, Math.min(COLUMNS - 1.001, theta / COLUMN_STEP));
  const [j, i] = [Math.floor(v), Math.floor(u)];
  const [fv, fu] = [v - j, u - i];
  const o = j * COLUMNS + i;
  const low = radii[o]! * (1 - fu) + radii[o + 1]! * fu;
  const high = radii[o + COLUMNS]! * (1 - fu) + radii[o + COLUMNS + 1]! * fu;
  return low * (1 - fv) + high * fv;
}

/** The section at a height, one distance a column, mm. */
export function sectionOf(surface: Surface, z: number): Float64Array {
  const radii = new Float64Array(COLUMNS);
  for (let i = 0; i < COLUMNS; i += 1) radii[i] = radiusAt(surface, i * COLUMN_STEP, z);
  return radii;
}

/** What a tape reads round the body at a height, mm. */
export const tapeAt = (surface: Surface, z: number): number => tapeLength(sectionOf(surface, z));

/** y of the body's front at a distance from its middle, mm: the foremost place that far to the side, or where it is broadest. */
export function frontAt(surface: Surface, x: number, z: number): number {
  let best = Number.NEGATIVE_INFINITY;
  let [px, py] = [0, radiusAt(surface, 0, z)];
  let [broadest, there] = [px, py];
  for (let i = 1; i < COLUMNS && i * COLUMN_STEP < 1.7; i += 1) {
    const r = radiusAt(surface, i * COLUMN_STEP, z);
    const [qx, qy] = [r * SINES[i]!, r * COSINES[i]!];
    if ((px - x) * (qx - x) <= 0)
      best = Math.max(best, py + (qx === px ? 0 : ((x - px) / (qx - px)) * (qy - py)));
    [px, py] = [qx, qy];
    if (px > broadest) [broadest, there] = [px, py];
  }
  return best === Number.NEGATIVE_INFINITY ? there : best;
}

/** The whole section at a height as a closed ring of points, from the front round the left, mm: x to the left, y forwards. */
export function sectionPoints(surface: Surface, z: number): { readonly x: number; readonly y: number }[] {
  const radii = sectionOf(surface, z);
  const left = Array.from(radii, (r, i) => ({ x: r * SINES[i]!, y: r * COSINES[i]! }));
  const right = left.slice(1, -1).map(({ x, y }) => ({ x: -x, y }));
  return [...left, ...right.reverse()];
}
