// Drafts sewn on bodies for tests and bench: a style drafted for one body may be worn by another.

import { draftWhole, type Measurements, type Style } from '../../../src/engine';
import { checkBody } from '../../../src/engine/body/body';
import { makeWornBody, type WornBody } from '../../../src/engine/worn/body/wornBody';
import { energyAt } from '../../../src/engine/worn/cloth/garmentEnergy';
import { constructionOf } from '../../../src/engine/worn/construction';
import { fieldsOf } from '../../../src/engine/worn/measure/fields';
import { type FitFigures, figuresOf } from '../../../src/engine/worn/measure/figures';
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

/** Turned round the axis by so much for each mm of height, rad, about so far below the shoulder level, mm. */
const TWIST_PER_MM = 5e-4;
const TWISTED_ABOUT_MM = 400;
/** The span within which each coordinate is off at random, mm. */
const NOISE_MM = 8;
const MOVED_MM = 20;
const OFF_MM = 15;

type Move = (x: number, y: number, z: number) => readonly [x: number, y: number, z: number];

const each =
  (move: Move) =>
  (places: Float64Array): void => {
    for (let v = 0; v < places.length; v += 3) {
      const [x = 0, y = 0, z = 0] = places.subarray(v, v + 3);
      places.set(move(x, y, z), v);
    }
  };

const twisted: Move = (x, y, z) => {
  const angle = TWIST_PER_MM * (z + TWISTED_ABOUT_MM);
  return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle), z];
};

const fartherOff: Move = (x, y, z) => {
  const part = 1 + OFF_MM / Math.hypot(x, y);
  return [part * x, part * y, z];
};

const noisy = (places: Float64Array): void => {
  const random = randomFrom(4);
  places.set(places.map((x) => x + NOISE_MM * (random() - 0.5)));
};

/** Ways to disturb every start of the solver: 20 mm higher and lower, 15 mm farther off, twisted and noisy. */
export const DISTURBED: ReadonlyMap<string, (places: Float64Array) => void> = new Map([
  ['high', each((x, y, z) => [x, y, z + MOVED_MM])],
  ['low', each((x, y, z) => [x, y, z - MOVED_MM])],
  ['off', each(fartherOff)],
  ['twisted', each(twisted)],
  ['noisy', noisy],
]);

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
