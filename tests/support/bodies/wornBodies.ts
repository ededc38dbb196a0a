// Drafts sewn on bodies for tests and bench: a style drafted for one body may be worn by another.

import { draftWhole, type Measurements, type Style } from '../../../src/engine';
import { checkBody } from '../../../src/engine/body/body';
import { makeWornBody, type WornBody } from '../../../src/engine/worn/body/wornBody';
import { energyAt } from '../../../src/engine/worn/cloth/garmentEnergy';
import { constructionOf } from '../../../src/engine/worn/construction';
import { fieldsOf } from '../../../src/engine/worn/measure/fields';
import { type FitFigures, figuresOf } from '../../../src/engine/worn/measure/figures';
import { meshGarment } from '../../../src/engine/worn/mesh/garmentMesh';
import { placeOn, type Start } from '../../../src/engine/worn/mesh/placing';
import { type DrapeChoice, type Draped, draping } from '../../../src/engine/worn/solve/drape';
import { randomFrom } from '../random';

/** What work in steps comes to. */
export function toEnd<T>(work: Generator<void, T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/** The body of measurements that are known to be good. */
export function bodyFor(measurements: Measurements): WornBody {
  const { body } = checkBody(measurements);
  if (!body) throw new Error('the measurements make no body');
  return makeWornBody(body);
}

export interface Worn {
  readonly draped: Draped;
  readonly figures: FitFigures;
}

/** A style drafted for `drawn` and worn by `body`. */
export function wear(
  drawn: Measurements,
  style: Style,
  body: WornBody,
  choice: Partial<DrapeChoice> = {},
): Worn {
  const drafted = draftWhole(drawn, style);
  const draped = toEnd(
    draping(drafted.pieces, body, constructionOf(style, drafted), { width: 12, ...choice }),
  );
  return { draped, figures: figuresOf(draped, fieldsOf(draped), body, drafted) };
}

/** A start alone: where the cloth is laid, and how it is moved from there. */
interface LoneStart {
  readonly start: Start;
  readonly move?: (places: Float64Array) => void;
}

/** Turned round the axis by so much for each mm of height, rad, about so far below the shoulder level, mm. */
const TWIST_PER_MM = 5e-4;
const TWISTED_ABOUT_MM = 400;
/** The span within which each coordinate is off at random, mm. */
const NOISE_MM = 8;

/** Starts 20 mm high and low, 15 mm off, twisted and noisy. */
export const LONE_STARTS: ReadonlyMap<string, LoneStart> = new Map<string, LoneStart>([
  ['high', { start: { up: 20 } }],
  ['low', { start: { up: -20 } }],
  ['off', { start: { off: 15 } }],
  ['twisted', { start: {}, move: twist }],
  ['noisy', { start: {}, move: addNoise }],
]);

function twist(places: Float64Array): void {
  for (let v = 0; v < places.length; v += 3) {
    const [x = 0, y = 0, z = 0] = places.subarray(v, v + 3);
    const angle = TWIST_PER_MM * (z + TWISTED_ABOUT_MM);
    places[v] = x * Math.cos(angle) - y * Math.sin(angle);
    places[v + 1] = x * Math.sin(angle) + y * Math.cos(angle);
  }
}

function addNoise(places: Float64Array): void {
  const random = randomFrom(4);
  places.set(places.map((x) => x + NOISE_MM * (random() - 0.5)));
}

/** The rest to which one start alone leads, by way of the coarse mesh. */
export function restFrom(
  drawn: Measurements,
  style: Style,
  body: WornBody,
  { start, move }: LoneStart,
): Draped {
  const drafted = draftWhole(drawn, style);
  const construction = constructionOf(style, drafted);
  const mesh = meshGarment(drafted.pieces, 24, construction.facings);
  const { front, back } = construction.open;
  const places = placeOn(mesh, body, { front: front ?? 0, back: back ?? 0 }, start);
  move?.(places);
  const coarse = toEnd(draping(drafted.pieces, body, construction, { width: 24, from: { mesh, places } }));
  return toEnd(draping(drafted.pieces, body, construction, { width: 12, from: coarse }));
}

/** The farthest that a vertex lies from its place in another rest of the same mesh, mm. */
export function farthestApart(a: Draped, b: Draped): number {
  let most = 0;
  for (let v = 0; v < a.places.length; v += 3) {
    const [p, q] = [a.places.subarray(v, v + 3), b.places.subarray(v, v + 3)];
    most = Math.max(most, Math.hypot(...p.map((x, j) => x - (q[j] ?? Number.NaN))));
  }
  return most;
}

/** The energy of a rest, N·mm. */
export const energyOf = ({ garment, places }: Draped): number =>
  energyAt(garment, places, new Float64Array(places.length)).energy;
