// The energy of a sewn garment on a body: cloth, bones, waist tape, weight and what the body pushes back.

import type { WornBody } from '../body/wornBody';
import type { GarmentMesh } from '../mesh/garmentMesh';
import type { Facing } from '../mesh/layers';
import { addBones, addChannelCurvature, type Channels, channelEnergy, channelSlots } from './bones';
import { type Ground, groundEnergy, groundOf } from './ground';
import { addHinges } from './hinges';
import { type Membrane, makeMembrane, membraneEnergy, membraneSlots } from './membrane';
import { addMembraneCurvature } from './membraneCurvature';
import type { BlockPattern } from './pattern';
import { addStencilCurvature, emptyStencils, packed, type Stencils, stencilEnergy } from './stencils';
import { CLOTH, type ClothStiffness } from './stiffness';
import { addTapeCurvature, type TapeMarks, tapeEnergy, tapeMarks } from './waistTape';

/** How a garment is closed, and what the cloth is. */
export interface Construction {
  /** Half of what is open at each centre, mm; null where it is closed. */
  readonly open: Readonly<Record<'front' | 'back', number | null>>;
  readonly busk: boolean;
  /** Height of the waist on paper, mm; null for a garment without a waist tape. */
  readonly waistY: number | null;
  readonly bones: boolean;
  readonly cloth: ClothStiffness;
  /** What lies behind the panels; left out where nothing does. */
  readonly facings?: readonly Facing[];
}

export const USUAL_CLOTH: ClothStiffness = CLOTH;

export interface GarmentEnergy {
  readonly mesh: GarmentMesh;
  readonly membrane: Membrane;
  readonly stencils: Stencils;
  readonly channels: Channels;
  readonly marks: TapeMarks;
  readonly ground: Ground;
  /** 1 for vertices whose x is given: they lie at a centre. */
  readonly fixed: Uint8Array;
}

export interface Equilibrium {
  /** N·mm */
  readonly energy: number;
  /** Square root of the sum of squares of what the body pushes at each vertex, N. */
  readonly contact: number;
}

/**
 * Prepares the energy of a mesh on a body.
 *
 * @param places x, y and z of each sewn vertex, mm; the x of vertices at a centre is set to where that centre stands
 */
export function makeGarmentEnergy(
  mesh: GarmentMesh,
  body: Pick<WornBody, 'surface' | 'ground'> & { readonly waistZ: number },
  construction: Construction,
  places: Float64Array,
): GarmentEnergy {
  const membrane = makeMembrane(mesh, construction.cloth);
  const fixed = new Uint8Array(mesh.count);
  const mirrored = new Uint8Array(mesh.count);
  for (const { kind, panel, sewn } of mesh.lines) {
    if (kind !== 'centre') continue;
    const open = construction.open[panel.piece.block];
    for (const v of sewn) {
      fixed[v] = 1;
      if (open === null) mirrored[v] = 1;
      places[3 * v] = open ?? 0;
    }
  }
  const list = emptyStencils();
  addHinges(list, mesh, membrane, mirrored);
  const bones = emptyStencils();
  const channels = addBones(construction.bones ? list : bones, mesh, construction.busk);
  const nothing = { ends: new Int32Array(0), parts: new Float64Array(0), heights: new Float64Array(0) };
  return {
    mesh,
    membrane,
    stencils: packed(list),
    channels: construction.bones
      ? channels
      : { ends: new Int32Array(0), lengths: new Float64Array(0), stiffness: new Float64Array(0) },
    marks: construction.waistY === null ? nothing : tapeMarks(mesh, construction.waistY, body.waistZ),
    ground: groundOf(body.surface, body.ground),
    fixed,
  };
}

const push = new Float64Array(3);

/**
 * The energy at places.
 *
 * @param X x, y and z of each sewn vertex, mm
 * @param G is overwritten by the gradient, N; 0 for an x that is given
 */
export function energyAt(garment: GarmentEnergy, X: Float64Array, G: Float64Array): Equilibrium {
  const { membrane, stencils, channels, marks, ground, fixed } = garment;
  const { vertexAreas, vertexAmounts, cloth } = membrane;
  G.fill(0);
  let energy =
    membraneEnergy(membrane, X, G) +
    stencilEnergy(stencils, X, G) +
    channelEnergy(channels, X, G) +
    tapeEnergy(marks, X, G);
  let contact = 0;
  for (let v = 0; v < fixed.length; v += 1) {
    const area = vertexAreas[v]!;
    const weight = cloth.weight * vertexAmounts[v]!;
    energy += weight * X[3 * v + 2]!;
    G[3 * v + 2]! += weight;
    const e = groundEnergy(ground, X[3 * v]!, X[3 * v + 1]!, X[3 * v + 2]!, push, null);
    if (e === 0) continue;
    energy += e * area;
    for (let j = 0; j < 3; j += 1) {
      G[3 * v + j]! += push[j]! * area;
      contact += (push[j]! * area) ** 2;
    }
  }
  for (let v = 0; v < fixed.length; v += 1) if (fixed[v]! === 1) G[3 * v] = 0;
  return { energy, contact: Math.sqrt(contact) };
}

/** The second derivative of the energy as blocks of a matrix. */
export interface Curvature {
  readonly pattern: BlockPattern;
  /** Nine numbers a block, row by row. */
  readonly blocks: Float64Array;
  /** Fills `blocks` for the places `X`: the true ones, or each term made positive. */
  readonly assemble: (X: Float64Array, isTrue: boolean) => void;
}

/** Prepares the second derivative of a garment's energy in a pattern that has a block for each two vertices it joins. */
export function makeCurvature(garment: GarmentEnergy, pattern: BlockPattern): Curvature {
  const { membrane, stencils, channels, marks, ground, fixed } = garment;
  const constant = new Float64Array(9 * pattern.blocks);
  addStencilCurvature(stencils, pattern, constant);
  addTapeCurvature(marks, pattern, constant);
  const [triangleSlots, boneSlots] = [membraneSlots(membrane, pattern), channelSlots(channels, pattern)];
  const own = Int32Array.from(fixed, (_, v) => 9 * pattern.slotOf(v, v));
  const blocks = new Float64Array(9 * pattern.blocks);
  const second = new Float64Array(9);
  const assemble = (X: Float64Array, isTrue: boolean): void => {
    blocks.set(constant);
    addMembraneCurvature(membrane, triangleSlots, X, isTrue, blocks);
    addChannelCurvature(channels, boneSlots, X, isTrue, blocks);
    for (let v = 0; v < fixed.length; v += 1) {
      const [x, y, z] = [X[3 * v]!, X[3 * v + 1]!, X[3 * v + 2]!];
      const e = groundEnergy(ground, x, y, z, push, isTrue ? second : null);
      if (e === 0) continue;
      const area = membrane.vertexAreas[v]!;
      for (let r = 0; r < 3; r += 1)
        for (let s = 0; s < 3; s += 1)
          blocks[own[v]! + 3 * r + s]! +=
            area * (isTrue ? second[3 * r + s]! : (push[r]! * push[s]!) / (2 * e));
    }
    holdFixed(pattern, fixed, blocks);
  };
  return { pattern, blocks, assemble };
}

/** Rows and columns of given coordinates are those of the unit matrix. */
function holdFixed({ rows, columns }: BlockPattern, fixed: Uint8Array, blocks: Float64Array): void {
  for (let p = 0; p < rows.length; p += 1) {
    const h = 9 * p;
    if (fixed[rows[p]!]! === 1) for (let s = 0; s < 3; s += 1) blocks[h + s] = 0;
    if (fixed[columns[p]!]! === 1) for (let r = 0; r < 3; r += 1) blocks[h + 3 * r] = 0;
    if (rows[p]! === columns[p]! && fixed[rows[p]!]! === 1) blocks[h] = 1;
  }
}
