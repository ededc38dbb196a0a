// The body as cloth feels it: a smooth surface that pushes back what sinks into it.

import type { Surface } from '../body/surface';
import { COLUMN_STEP, COLUMNS } from '../body/tape';

/**
 * Uniform cubic B-splines over the columns and rows of a surface, continuous to the second derivative (C. de Boor, A Practical
 * Guide to Splines, 1978). Four numbers a node: the distance of the skin from the axis, R; ½·pressure per depth × the square of
 * the skin's slant; the slant g, which turns a distance along a radius into one square to the skin; and pressure per depth.
 */
export interface Ground {
  readonly nodes: Float64Array;
  readonly columns: number;
  readonly rows: number;
  readonly lowest: number;
  readonly step: number;
}

const PARTS = 4;
/** Rounds of correction that make the spline run through the surface, within 1e-3 mm. */
const ROUNDS = 8;

/** @param stiffness pressure per depth at each place of the surface, N/mm³ */
export function groundOf(surface: Surface, stiffness: Float64Array): Ground {
  const { radii, rows } = surface;
  const slant = slantOf(surface);
  const half = stiffness.map((k, i) => 0.5 * k * slant[i]! * slant[i]!);
  const columns = COLUMNS + 4;
  const nodes = new Float64Array(PARTS * columns * (rows + 4));
  for (const [part, values] of [through(radii, rows), half, slant, stiffness].entries())
    for (let j = -2; j < rows + 2; j += 1)
      for (let i = -2; i < COLUMNS + 2; i += 1)
        nodes[PARTS * ((j + 2) * columns + i + 2) + part] =
          values[held(j, rows) * COLUMNS + mirroredColumn(i)]!;
  return { nodes, columns, rows, lowest: surface.lowest, step: surface.step };
}

/** Columns go on beyond front and back in the mirror image, rows stay as they are beyond the ends. */
const mirroredColumn = (i: number): number => (i < 0 ? -i : i > COLUMNS - 1 ? 2 * (COLUMNS - 1) - i : i);
const held = (j: number, rows: number): number => Math.max(0, Math.min(rows - 1, j));

/** 1/√(1 + (R′θ/R)² + R′z²) at each place: how much nearer the skin is than along the radius. */
function slantOf({ radii, rows, step }: Surface): Float64Array {
  return radii.map((radius, o) => {
    const j = Math.floor(o / COLUMNS);
    const i = o - j * COLUMNS;
    const round =
      (radii[j * COLUMNS + mirroredColumn(i + 1)]! - radii[j * COLUMNS + mirroredColumn(i - 1)]!) /
      (2 * COLUMN_STEP * radius);
    const [above, below] = [held(j + 1, rows), held(j - 1, rows)];
    const up = (radii[above * COLUMNS + i]! - radii[below * COLUMNS + i]!) / ((above - below) * step);
    return 1 / Math.sqrt(1 + round * round + up * up);
  });
}

/** Nodes of the spline that runs through the values. */
function through(values: Float64Array, rows: number): Float64Array {
  const nodes = values.slice();
  const across = new Float64Array(values.length);
  for (let round = 0; round < ROUNDS; round += 1) {
    for (let j = 0; j < rows; j += 1)
      for (let i = 0; i < COLUMNS; i += 1) {
        const o = j * COLUMNS;
        across[o + i] =
          (nodes[o + mirroredColumn(i - 1)]! + 4 * nodes[o + i]! + nodes[o + mirroredColumn(i + 1)]!) / 6;
      }
    for (let j = 0; j < rows; j += 1)
      for (let i = 0; i < COLUMNS; i += 1) {
        const [up, down] = [held(j + 1, rows) * COLUMNS, held(j - 1, rows) * COLUMNS];
        const o = j * COLUMNS + i;
        nodes[o]! += values[o]! - (across[up + i]! + 4 * across[o]! + across[down + i]!) / 6;
      }
  }
  return nodes;
}

const wx = new Float64Array(12);
const wz = new Float64Array(12);

/** Weights of four nodes for a value, its first and its second derivative at `t` of the way between the middle two. */
function weigh(w: Float64Array, t: number): void {
  const q = 1 - t;
  w[0] = (q * q * q) / 6;
  w[1] = (3 * t * t * t - 6 * t * t + 4) / 6;
  w[2] = (3 * q * q * q - 6 * q * q + 4) / 6;
  w[3] = (t * t * t) / 6;
  w[4] = (-q * q) / 2;
  w[5] = (3 * t * t - 4 * t) / 2;
  w[6] = -(3 * q * q - 4 * q) / 2;
  w[7] = (t * t) / 2;
  w[8] = q;
  w[9] = 3 * t - 2;
  w[10] = 3 * q - 2;
  w[11] = t;
}

/** Where a place stands over the ground: the first of its nodes, with the weights kept for {@link valueAt}. */
function locate({ columns, rows, lowest, step }: Ground, x: number, y: number, z: number): number {
  const u = Math.min(Math.atan2(Math.abs(x), y) / COLUMN_STEP, COLUMNS - 1.0001);
  const v = Math.max(0, Math.min(rows - 1.001, (z - lowest) / step));
  const [i, j] = [Math.floor(u), Math.floor(v)];
  weigh(wx, u - i);
  weigh(wz, v - j);
  return PARTS * ((j + 1) * columns + i + 1);
}

/** The spline `part` at the place located, its derivative of order `dx` round and `dz` up, per column and row. */
function valueAt({ nodes, columns }: Ground, from: number, part: number, dx: number, dz: number): number {
  let sum = 0;
  for (let j = 0; j < 4; j += 1) {
    const o = from + PARTS * j * columns + part;
    sum +=
      wz[4 * dz + j]! *
      (wx[4 * dx]! * nodes[o]! +
        wx[4 * dx + 1]! * nodes[o + PARTS]! +
        wx[4 * dx + 2]! * nodes[o + 2 * PARTS]! +
        wx[4 * dx + 3]! * nodes[o + 3 * PARTS]!);
  }
  return sum;
}

/** Distance of a place from the skin, mm, below zero inside; and pressure there, N/mm². */
export function standOffAt(
  ground: Ground,
  x: number,
  y: number,
  z: number,
): { off: number; pressure: number } {
  const from = locate(ground, x, y, z);
  const off = (Math.hypot(x, y) - valueAt(ground, from, 0, 0, 0)) * valueAt(ground, from, 2, 0, 0);
  return { off, pressure: off < 0 ? -off * valueAt(ground, from, 3, 0, 0) : 0 };
}

/**
 * Energy of a place per area of cloth, N/mm: s·(r − R)² inside the skin, which is ½·k·d² with the distance d; 0 outside.
 * Inside, `gradient` takes x, y, z and, where asked for, `curvature` its nine second derivatives.
 */
export function groundEnergy(
  ground: Ground,
  x: number,
  y: number,
  z: number,
  gradient: Float64Array,
  curvature: Float64Array | null,
): number {
  const from = locate(ground, x, y, z);
  const r = Math.sqrt(x * x + y * y);
  const h = r - valueAt(ground, from, 0, 0, 0);
  if (h >= 0) return 0;
  const [du, dv] = [1 / COLUMN_STEP, 1 / ground.step];
  const Rt = du * valueAt(ground, from, 0, 1, 0);
  const Rz = dv * valueAt(ground, from, 0, 0, 1);
  const s = valueAt(ground, from, 1, 0, 0);
  const st = du * valueAt(ground, from, 1, 1, 0);
  const sz = dv * valueAt(ground, from, 1, 0, 1);
  const [sin, cos] = [Math.abs(x) / r, y / r];
  const side = x < 0 ? -1 : 1;
  const er = 2 * s * h;
  const et = (st * h * h - 2 * s * h * Rt) / r;
  gradient[0] = side * (er * sin + et * cos);
  gradient[1] = er * cos - et * sin;
  gradient[2] = sz * h * h - 2 * s * h * Rz;
  if (curvature) {
    const Rtt = du * du * valueAt(ground, from, 0, 2, 0);
    const Rtz = du * dv * valueAt(ground, from, 0, 1, 1);
    const Rzz = dv * dv * valueAt(ground, from, 0, 0, 2);
    const stt = du * du * valueAt(ground, from, 1, 2, 0);
    const stz = du * dv * valueAt(ground, from, 1, 1, 1);
    const szz = dv * dv * valueAt(ground, from, 1, 0, 2);
    // Along the radius, round the axis and upwards.
    const rr = 2 * s;
    const rt = (2 * st * h - 2 * s * Rt - et) / r;
    const rz = 2 * sz * h - 2 * s * Rz;
    const tt = (stt * h * h - 4 * st * h * Rt + 2 * s * Rt * Rt - 2 * s * h * Rtt) / (r * r) + er / r;
    const tz = (stz * h * h - 2 * st * h * Rz - 2 * sz * h * Rt + 2 * s * Rt * Rz - 2 * s * h * Rtz) / r;
    curvature[0] = rr * sin * sin + 2 * rt * sin * cos + tt * cos * cos;
    curvature[4] = rr * cos * cos - 2 * rt * sin * cos + tt * sin * sin;
    curvature[8] = szz * h * h - 4 * sz * h * Rz + 2 * s * Rz * Rz - 2 * s * h * Rzz;
    curvature[1] = side * ((rr - tt) * sin * cos + rt * (cos * cos - sin * sin));
    curvature[2] = side * (rz * sin + tz * cos);
    curvature[5] = rz * cos - tz * sin;
    curvature[3] = curvature[1];
    curvature[6] = curvature[2];
    curvature[7] = curvature[5];
  }
  return s * h * h;
}
