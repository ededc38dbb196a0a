// Brings the panels of one half to rest on a body, from a coarse mesh to a fine one.

import type { Piece } from '../../pieces/piece';
import { zOf } from '../body/shape';
import type { WornBody } from '../body/wornBody';
import { type Construction, energyAt, type GarmentEnergy, makeGarmentEnergy } from '../cloth/garmentEnergy';
import { carriedOver, type PlacedMesh } from '../mesh/carriedOver';
import { type GarmentMesh, meshGarment } from '../mesh/garmentMesh';
import { placeOn } from '../mesh/placing';
import { pushesOf } from './pushes';
import { type Rest, relaxing } from './relax';

export interface DrapeChoice {
  /** Width of the finest mesh, mm. */
  readonly width: number;
  /** A rest of the same panels to start from; else cloth starts laid round the body. */
  readonly from?: PlacedMesh | undefined;
  /** Moves the cloth of each start before it comes to rest, to see whether it rests in the same place. x, y and z of each vertex, mm. */
  readonly disturb?: ((places: Float64Array) => void) | undefined;
}

/** A half garment brought to rest. */
export interface Draped extends PlacedMesh {
  readonly mesh: GarmentMesh;
  /** x, y, z of each sewn vertex, mm. */
  readonly places: Float64Array;
  readonly garment: GarmentEnergy;
  /** Steps and factors are those of the start that led to it, all meshes together. */
  readonly rest: Rest;
  /** Another rest of more energy that was found on the way; null where every start led to this one. */
  readonly other: OtherRest | null;
}

/** Another way in which the garment can lie. */
interface OtherRest {
  /** The farthest that a vertex lies from its place in this rest, mm. */
  readonly apart: number;
  readonly vertex: number;
}

/** A coarse and the middle width of the mesh, mm. */
const COARSE_MM = 24;
const MIDDLE_MM = 12;
const FINER_MM = 6.5;

/** Net force over contact force on coarse meshes and on the last one. */
const COARSE_TOLERANCE = 1e-2;
const REST_TOLERANCE = 1e-3;

/**
 * How much higher than the body's marks the coarsest mesh starts. What came to rest there with the least energy is pushed and comes to
 * rest again. Where these rests are unlike, the two of least energy go on to the finer mesh, and there the one of less is taken: the top
 * edge of a corset that ends under the bust can ripple in two ways, and the back of a bodice that ends at the waist can lie in the
 * hollow or stand off.
 */
const STARTS_UP_MM: readonly number[] = [0, 20];
/** Factors that the second start and each push may take on the coarsest mesh. */
const FACTORS_OF_OTHERS = 20;

/** So many unlike rests of the coarsest mesh go on to the finer one, those of least energy. */
const MOST_RESTS = 2;

/** Rests are unlike where a vertex lies farther apart on a coarse mesh and on the last one, mm. */
const UNLIKE_COARSE_MM = 3;
const UNLIKE_MM = 0.5;

/** Factors that one start may take, all meshes together. */
const MOST_FACTORS = 80;

/** The widths that lead to a mesh of the width `h`, coarse first, mm. */
function widthsTo(h: number): number[] {
  const coarser = h >= 20 ? [] : h >= 10 ? [COARSE_MM] : [COARSE_MM, MIDDLE_MM];
  return [...coarser, ...(h < 5 ? [FINER_MM] : []), h];
}

/**
 * Brings panels to rest on a body, from a coarse mesh to one of the width asked for. It pauses before every step, so that a caller
 * may stop it. A mesh as coarse as those of a pull starts once: of two rests it may show either.
 *
 * @param pieces the panels of one half
 */
export function* draping(
  pieces: readonly Piece[],
  body: WornBody,
  construction: Construction,
  { width, from, disturb }: DrapeChoice,
): Generator<void, Draped> {
  const ground = { ...body, waistZ: zOf(body.levels, 'waist') };
  const gap = { front: construction.open.front ?? 0, back: construction.open.back ?? 0 };
  const first = (mesh: GarmentMesh): Started[] =>
    (from
      ? [carriedOver(from, mesh)]
      : (width < COARSE_MM ? STARTS_UP_MM : STARTS_UP_MM.slice(0, 1)).map((up) =>
          placeOn(mesh, body, gap, up),
        )
    ).map((places, i) => {
      disturb?.(places);
      return { places, steps: 0, factors: 0, most: i === 0 ? MOST_FACTORS : FACTORS_OF_OTHERS };
    });
  let rests: Found[] | null = null;
  for (const each of from ? [width] : widthsTo(width)) {
    const mesh = meshGarment(pieces, each, construction.facings);
    const tolerance = each === width ? REST_TOLERANCE : COARSE_TOLERANCE;
    const unlike = each === width ? UNLIKE_MM : UNLIKE_COARSE_MM;
    const starts: Started[] = rests
      ? rests.map((rest) => ({ places: carriedOver(rest, mesh), ...rest.rest, most: MOST_FACTORS }))
      : first(mesh);
    const relaxed = function* ({ places, steps, factors, most }: Started): Generator<void, Found> {
      const garment = makeGarmentEnergy(mesh, ground, construction, places);
      const rest = yield* relaxing(garment, places, { tolerance, mostFactors: most - factors });
      const { energy } = energyAt(garment, places, new Float64Array(places.length));
      const all = { ...rest, steps: steps + rest.steps, factors: factors + rest.factors };
      return { mesh, places, garment, rest: all, energy };
    };
    const found: Found[] = [];
    for (const start of starts) found.push(yield* relaxed(start));
    const [least] = unlikeRests(found, unlike);
    if (!rests && starts.length > 1 && least?.rest.atRest) {
      const most = least.rest.factors + FACTORS_OF_OTHERS;
      for (const places of pushesOf(least.places, least.garment.ground))
        found.push(yield* relaxed({ ...least.rest, places, most }));
    }
    rests = unlikeRests(found, unlike);
  }
  const [least, second] = rests ?? [];
  if (!least) throw new RangeError('a mesh has a width');
  const { mesh, places, garment, rest } = least;
  const other = second ? farthestApart(places, second.places) : null;
  return { mesh, places, garment, rest, other };
}

/** Places to start from, what led to them, and how many factors all may take together. */
interface Started extends Pick<Rest, 'steps' | 'factors'> {
  readonly places: Float64Array;
  readonly most: number;
}

type Found = Omit<Draped, 'other'> & { readonly energy: number };

/** What came to rest, the one of least energy first, each farther than `apart` mm from those before it; the first where none did. */
function unlikeRests(found: readonly Found[], apart: number): Found[] {
  const kept: Found[] = [];
  for (const one of found.filter(({ rest }) => rest.atRest).sort((a, b) => a.energy - b.energy))
    if (kept.every(({ places }) => farthestApart(places, one.places).apart > apart)) kept.push(one);
  return kept.length > 0 ? kept.slice(0, MOST_RESTS) : found.slice(0, 1);
}

/** The vertex whose places in two rests of one mesh are farthest apart, mm. */
function farthestApart(a: Float64Array, b: Float64Array): OtherRest {
  let [apart, vertex] = [0, 0];
  for (let v = 0; 3 * v < a.length; v += 1) {
    const distance = Math.hypot(
      a[3 * v]! - b[3 * v]!,
      a[3 * v + 1]! - b[3 * v + 1]!,
      a[3 * v + 2]! - b[3 * v + 2]!,
    );
    if (distance > apart) [apart, vertex] = [distance, v];
  }
  return { apart, vertex };
}
