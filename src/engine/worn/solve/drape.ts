// Brings the panels of one half to rest on a body, from a coarse mesh to a fine one.

import type { Piece } from '../../pieces/piece';
import { zOf } from '../body/shape';
import type { WornBody } from '../body/wornBody';
import { type Construction, energyAt, type GarmentEnergy, makeGarmentEnergy } from '../cloth/garmentEnergy';
import { carriedOver, type PlacedMesh } from '../mesh/carriedOver';
import { type GarmentMesh, meshGarment } from '../mesh/garmentMesh';
import { placeOn, type Start } from '../mesh/placing';
import { type Rest, relaxing } from './relax';

export interface DrapeChoice {
  /** Width of the finest mesh, mm. */
  readonly width: number;
  /** A rest of the same panels to start from; else cloth starts laid round the body. */
  readonly from?: PlacedMesh | undefined;
  /** A start beside the usual ones, to see whether it leads to a rest of less energy. */
  readonly start?: Start | undefined;
  /** Moves the places of the first mesh before it is brought to rest. */
  readonly disturb?: ((places: Float64Array) => void) | undefined;
}

/** A half garment brought to rest. */
export interface Draped extends PlacedMesh {
  readonly mesh: GarmentMesh;
  /** x, y, z of each sewn vertex, mm. */
  readonly places: Float64Array;
  readonly garment: GarmentEnergy;
  readonly rest: Rest;
}

/** A coarse and the middle width of the mesh, mm. */
const COARSE_MM = 24;
const MIDDLE_MM = 12;
const FINER_MM = 6.5;

/** Net force over contact force on coarse meshes and on the last one. */
const COARSE_TOLERANCE = 1e-2;
const REST_TOLERANCE = 1e-3;

/**
 * The coarsest mesh also starts so much higher, and what has the lesser energy at rest goes on: the top edge of a corset that ends
 * under the bust can stand off in two ways. mm
 */
const HIGHER_MM = 20;
const FACTORS_HIGHER = 12;

/** Factors that a whole run may take, all meshes together. */
const MOST_FACTORS = 80;

/** The widths that lead to a mesh of the width `h`, coarse first, mm. */
function widthsTo(h: number): number[] {
  const coarser = h >= 20 ? [] : h >= 10 ? [COARSE_MM] : [COARSE_MM, MIDDLE_MM];
  return [...coarser, ...(h < 5 ? [FINER_MM] : []), h];
}

/**
 * Brings panels to rest on a body, from a coarse mesh to one of the width asked for. It pauses before every step, so that a caller
 * may stop it.
 *
 * @param pieces the panels of one half
 */
export function* draping(
  pieces: readonly Piece[],
  body: WornBody,
  construction: Construction,
  { width, from, start, disturb }: DrapeChoice,
): Generator<void, Draped> {
  const ground = { ...body, waistZ: zOf(body.levels, 'waist') };
  const gap = { front: construction.open.front ?? 0, back: construction.open.back ?? 0 };
  let placed = from;
  let [steps, factors] = [0, 0];
  for (const each of from ? [width] : widthsTo(width)) {
    const mesh = meshGarment(pieces, each);
    const tolerance = each === width ? REST_TOLERANCE : COARSE_TOLERANCE;
    const starts = placed
      ? [carriedOver(placed, mesh)]
      : [{}, { up: HIGHER_MM }, ...(start ? [start] : [])].map((one) => placeOn(mesh, body, gap, one));
    let best: (Draped & { readonly energy: number }) | null = null;
    for (const [i, places] of starts.entries()) {
      if (placed === from) disturb?.(places);
      const garment = makeGarmentEnergy(mesh, ground, construction, places);
      const rest = yield* relaxing(garment, places, {
        tolerance,
        mostFactors: i === 0 ? MOST_FACTORS - factors : FACTORS_HIGHER,
      });
      steps += rest.steps;
      factors += rest.factors;
      const { energy } = energyAt(garment, places, new Float64Array(places.length));
      if (!best || (rest.atRest && (!best.rest.atRest || energy < best.energy)))
        best = { mesh, places, garment, rest, energy };
    }
    if (!best) continue;
    placed = best;
    if (each === width) {
      const { places, garment, rest } = best;
      return { mesh, places, garment, rest: { ...rest, steps, factors } };
    }
  }
  throw new RangeError('a mesh has a width');
}
