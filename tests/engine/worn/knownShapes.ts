// Bodies and panels whose sewn shape is known: round bodies, and pieces cut for them by formula.

import type { Edge, Piece, Point } from '../../../src/engine';
import type { Surface } from '../../../src/engine/worn/body/surface';
import { COLUMNS } from '../../../src/engine/worn/body/tape';
import {
  type Construction,
  type GarmentEnergy,
  makeGarmentEnergy,
  USUAL_CLOTH,
} from '../../../src/engine/worn/cloth/garmentEnergy';
import { fieldsOf } from '../../../src/engine/worn/measure/fields';
import { type GarmentMesh, meshGarment } from '../../../src/engine/worn/mesh/garmentMesh';
import { type Rest, relaxing } from '../../../src/engine/worn/solve/relax';
import { toEnd } from '../../support/bodies/wornBodies';

/** A body round its axis with a radius (mm) by height, and the same pressure per depth (N/mm³) everywhere. */
export function roundBody(radius: (z: number) => number, stiffness: number, lowest: number, highest: number) {
  const step = 2;
  const rows = Math.ceil((highest - lowest) / step) + 1;
  const radii = new Float64Array(rows * COLUMNS);
  for (let j = 0; j < rows; j += 1) radii.fill(radius(lowest + j * step), j * COLUMNS, (j + 1) * COLUMNS);
  const surface: Surface = { radii, rows, lowest, step };
  return { surface, ground: new Float64Array(radii.length).fill(stiffness), waistZ: 0 };
}

type Side = Pick<Edge, 'role' | 'at'> & {
  readonly points: readonly Point[];
  readonly mate?: readonly [piece: string, edge: number];
};

/** A piece with these edges; everything that sewing does not read is left plain. */
export function plainPiece(id: string, block: Piece['block'], sides: readonly Side[]): Piece {
  const identity = { id, kind: 'panel', block, number: 1, side: null } as const;
  return {
    ...identity,
    cut: { count: 1, onFold: true },
    edges: sides.map(({ role, at, points, mate }) => ({
      role,
      at,
      isSideSeam: false,
      mate: mate ? { piece: { ...identity, id: mate[0] }, edge: mate[1] } : null,
      allowance: 0,
      points,
    })),
    darts: [],
    cutLine: [],
    grain: [
      { x: 0, y: 0 },
      { x: 0, y: 1 },
    ],
    marks: [],
  };
}

/** Points of a curve given by a parameter from 0 to 1. */
export const curve = (of: (t: number) => readonly [number, number], count = 60): Point[] =>
  Array.from({ length: count + 1 }, (_, i) => {
    const [x, y] = of(i / count);
    return { x, y };
  });

export const straight = (a: readonly [number, number], b: readonly [number, number]): Point[] =>
  curve((t) => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])], 1);

export const BARE: Construction = {
  open: { front: null, back: null },
  busk: false,
  waistY: null,
  bones: false,
  cloth: { ...USUAL_CLOTH, bend: 1, weight: 0 },
};

/** Pieces laid where a formula says (x, y on paper and the piece's index → x, y, z) and brought to rest on a body. */
export function laidAndAtRest(
  pieces: readonly Piece[],
  width: number,
  body: ReturnType<typeof roundBody>,
  laid: (x: number, y: number, piece: number) => readonly [number, number, number],
  construction: Construction = BARE,
): { mesh: GarmentMesh; places: Float64Array; garment: GarmentEnergy; rest: Rest } {
  const mesh = meshGarment(pieces, width, construction.facings);
  const places = new Float64Array(3 * mesh.count);
  for (const [i, v] of mesh.sewnAs.entries())
    places.set(
      laid(mesh.flat[2 * i] as number, mesh.flat[2 * i + 1] as number, mesh.panelOfVertex[i] as number),
      3 * v,
    );
  const garment = makeGarmentEnergy(mesh, body, construction, places);
  const rest = toEnd(relaxing(garment, places, { tolerance: 1e-3, mostFactors: 80 }));
  return { mesh, places, garment, rest };
}

/** Root of the mean square of a value by triangle, weighed by area. */
export function meanSquareRoot({ membrane }: GarmentEnergy, values: Float64Array): number {
  let [sum, area] = [0, 0];
  for (const [t, own] of membrane.areas.entries()) {
    sum += own * (values[t] as number) ** 2;
    area += own;
  }
  return Math.sqrt(sum / area);
}

export const sorted = (values: Float64Array): number[] => [...values].sort((a, b) => a - b);

const SPHERE_MM = 120;
/** Latitudes that gores begin and end at, rad. */
const [LOW, HIGH] = [-0.17, 0.7];

/** `n` gores on a sphere, meshed as finely as they are narrow: root mean square of the strain along their grain at rest. */
export function goresOnSphere(n: number): { readonly strain: number; readonly atRest: boolean } {
  const halfWidth = (latitude: number): number => ((Math.PI * SPHERE_MM) / n) * Math.cos(latitude);
  const latitude = (t: number): number => LOW + t * (HIGH - LOW);
  const gores = Array.from({ length: n / 2 }, (_, g) => {
    const edge = (sign: number, t: number): [number, number] => [
      sign * halfWidth(latitude(t)),
      -SPHERE_MM * latitude(t),
    ];
    const last = g === n / 2 - 1;
    return plainPiece(`g${g}`, g < n / 4 ? 'front' : 'back', [
      {
        role: g === 0 ? 'centre' : 'seam',
        at: 'inner',
        points: curve((t) => edge(-1, 1 - t)),
        ...(g === 0 ? {} : { mate: [`g${g - 1}`, 2] as const }),
      },
      { role: 'hem', at: 'hem', points: straight(edge(-1, 0), edge(1, 0)) },
      {
        role: last ? 'centre' : 'seam',
        at: 'outer',
        points: curve((t) => edge(1, t)),
        ...(last ? {} : { mate: [`g${g + 1}`, 0] as const }),
      },
      { role: 'top', at: 'top', points: straight(edge(1, 1), edge(-1, 1)) },
    ]);
  });
  const { garment, places, rest } = laidAndAtRest(
    gores,
    (2 * Math.PI * SPHERE_MM) / n / 4,
    roundBody((z) => Math.sqrt(Math.max(1, SPHERE_MM * SPHERE_MM - z * z)), 3e-3, -60, 110),
    (x, y, piece) => {
      const l = -y / SPHERE_MM;
      const t = ((piece + 0.5 + x / halfWidth(l) / 2) * 2 * Math.PI) / n;
      return [
        SPHERE_MM * Math.cos(l) * Math.sin(t),
        SPHERE_MM * Math.cos(l) * Math.cos(t),
        SPHERE_MM * Math.sin(l),
      ];
    },
  );
  return { strain: meanSquareRoot(garment, fieldsOf({ garment, places }).warp), atRest: rest.atRest };
}

/** The order with which a value falls from each count to the next. */
export const ordersOf = (counts: readonly number[], values: readonly number[]): number[] =>
  counts
    .slice(1)
    .map(
      (count, i) =>
        Math.log((values[i] as number) / (values[i + 1] as number)) / Math.log(count / (counts[i] as number)),
    );
