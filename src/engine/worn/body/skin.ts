// The body's section at any height: superellipses blended smoothly from level to level, with a breast laid on.

import { type SmoothLine, smoothLine, xAt } from '../../geometry/smoothLine';
import type { LevelName } from '../../terms/names';
import { type BodyLevel, type Shape, zOf } from './shape';
import { type Superellipse, superellipseRadius } from './superellipse';
import { COLUMN_STEP, COLUMNS, COSINES, SINES } from './tape';

/** The body as functions of height; all lengths mm, z above the shoulder level. */
export interface Skin {
  readonly z: Readonly<Record<'overBust' | 'bust' | 'underBust', number>>;
  readonly a: SmoothLine;
  readonly b: SmoothLine;
  readonly n: SmoothLine;
  readonly back: SmoothLine;
  /** Above it the body narrows from the shoulders to the neck. */
  readonly shoulder: { readonly z: number; readonly half: number; readonly back: number };
  readonly breast: Breast;
}

/** A breast: where it stands, and how far it reaches inwards, outwards, up and down. */
interface Breast {
  readonly x: number;
  readonly z: number;
  readonly inner: number;
  readonly outer: number;
  readonly up: number;
  readonly down: number;
}

const NECK = { a: 60, b: 52 } as const;
const SHOULDER_DEPTH_MM = 50;
const BELOW_HIP_MM = 120;
const FREE = { start: 'free', end: 'free' } as const;

/** A quantity known at the levels, with values of its own below the hip and above the over-bust, monotone between each two. */
export function byHeight(
  levels: readonly BodyLevel[],
  at: (level: LevelName) => number,
  below: number,
  above: readonly (readonly [z: number, value: number])[],
): SmoothLine {
  const up = [...levels].reverse();
  const lowest = up[0]?.z ?? 0;
  const known = up.map(({ name, z }): [number, number] => [z, at(name)]);
  const rows = [[lowest - BELOW_HIP_MM, below] as const, ...known, ...above];
  return smoothLine(
    rows.map(([z]) => z),
    rows.map(([, value]) => value),
    FREE,
  );
}

/**
 * The body of a shape as functions of height. The factors in it are estimates.
 *
 * @param bustPointX half the distance of the bust points, mm
 * @param acrossShoulder mm
 */
export function skinOf(
  shape: Shape,
  levels: readonly BodyLevel[],
  bustPointX: number,
  acrossShoulder: number,
): Skin {
  const z = {
    overBust: zOf(levels, 'overBust'),
    bust: zOf(levels, 'bust'),
    underBust: zOf(levels, 'underBust'),
  };
  const { sections, back, hollow } = shape;
  const section = (level: LevelName): Superellipse => sections[level] ?? { a: 1, b: 1, n: 2 };
  const top = Math.max(-50, z.overBust + 30);
  const middle = z.overBust + (top - z.overBust) * 0.5;
  const half = (acrossShoulder / 2) * 0.97;
  const { a, b } = section('overBust');
  const hip = section('hip');
  const lean = 0.06 * 215 * (section('underBust').b / 92);
  const lines = {
    a: byHeight(levels, (level) => section(level).a, hip.a * 0.93, [
      [middle, a * 1.05],
      [top, half],
    ]),
    b: byHeight(levels, (level) => section(level).b, hip.b * 0.86, [
      [middle, b * 0.8],
      [top, SHOULDER_DEPTH_MM],
    ]),
    n: byHeight(levels, (level) => section(level).n, 2.3, [
      [middle, 2.4],
      [top, 2.2],
    ]),
    back: byHeight(levels, (level) => back[level], back.hip + lean, [
      [middle, back.bust + 0.18 * hollow],
      [top, back.bust + 1.1 * hollow],
    ]),
  };
  const chest = section('bust').a;
  return {
    z,
    ...lines,
    shoulder: { z: top, half, back: xAt(lines.back, top) },
    breast: {
      x: bustPointX,
      z: z.bust,
      inner: bustPointX,
      outer: Math.max(0.55 * bustPointX, Math.min(bustPointX, (chest - bustPointX) * 1.05)),
      up: 1.35 * (z.overBust - z.bust) + 18,
      down: z.bust - z.underBust,
    },
  };
}

/** How much of its fullness the breast has at a place of the front, 0 to 1; x and z in mm. */
export function breastAt({ x, z, inner, outer, up, down }: Breast, atX: number, atZ: number): number {
  const [dx, dz] = [atX - x, atZ - z];
  const square = (dx / (dx < 0 ? inner : outer)) ** 2 + (dz / (dz > 0 ? up : down)) ** 2;
  return square >= 1 ? 0 : (1 - square) ** 1.35;
}

/** Half breadth, half depth, middle and exponent of the section at a height. */
function sectionAt(skin: Skin, z: number): Superellipse & { readonly middle: number } {
  const { shoulder } = skin;
  if (z <= shoulder.z) {
    const b = xAt(skin.b, z);
    return { a: xAt(skin.a, z), b, n: xAt(skin.n, z), middle: xAt(skin.back, z) + b };
  }
  const t = Math.min(1, (z - shoulder.z) / 54);
  return {
    a: shoulder.half + (NECK.a - shoulder.half) * t,
    b: SHOULDER_DEPTH_MM + (NECK.b - SHOULDER_DEPTH_MM) * t,
    n: 2.2,
    middle: shoulder.back + SHOULDER_DEPTH_MM + 6 * t,
  };
}

const angles = new Float64Array(COLUMNS);
const pointX = new Float64Array(COLUMNS);
const pointY = new Float64Array(COLUMNS);

/**
 * The section at a height as distances from the axis, one for each column, mm.
 *
 * @param scale of the section about the axis
 * @param fullness how far the breast stands out at the bust point, mm
 */
export function sectionRadii(skin: Skin, z: number, scale: number, fullness: number): Float64Array {
  const section = sectionAt(skin, z);
  const { breast } = skin;
  for (let i = 0; i < COLUMNS; i += 1) {
    const sin = SINES[i]!;
    const cos = COSINES[i]!;
    const r = superellipseRadius(section, sin, cos) * scale;
    let x = r * sin;
    let y = r * cos + section.middle * scale;
    if (cos > -0.35 && fullness > 0) {
      const out = fullness * breastAt(breast, x, z) * Math.min(1, (cos + 0.35) / 0.35);
      if (out > 0) {
        y += out * 0.97;
        if (x > 1e-6) x += out * 0.24 * Math.max(-1, Math.min(1, (x - breast.x) / 60));
      }
    }
    angles[i] = i === COLUMNS - 1 ? Math.PI : Math.atan2(x, y);
    pointX[i] = x;
    pointY[i] = y;
    if (i > 0 && angles[i]! <= angles[i - 1]!) angles[i] = angles[i - 1]! + 1e-7;
  }
  return inColumns();
}

/** The points just found, as distances in the directions of the columns. */
function inColumns(): Float64Array {
  const radii = new Float64Array(COLUMNS);
  let k = 0;
  for (let i = 0; i < COLUMNS; i += 1) {
    while (k < COLUMNS - 2 && angles[k + 1]! < i * COLUMN_STEP) k += 1;
    const x0 = pointX[k]!;
    const y0 = pointY[k]!;
    const dx = pointX[k + 1]! - x0;
    const dy = pointY[k + 1]! - y0;
    const sin = SINES[i]!;
    const cos = COSINES[i]!;
    const across = dx * cos - dy * sin;
    const part = Math.abs(across) < 1e-9 ? 0 : Math.max(0, Math.min(1, (y0 * sin - x0 * cos) / across));
    radii[i] = Math.sqrt((x0 + part * dx) ** 2 + (y0 + part * dy) ** 2);
  }
  return radii;
}
