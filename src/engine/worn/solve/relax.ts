// Brings a garment to rest: Newton's method with a kept factor, judged by the balance of forces.

import { energyAt, type GarmentEnergy, makeCurvature } from '../cloth/garmentEnergy';
import { type Factor, factorize, makeFactor } from './cholesky';
import { makeFronts } from './fronts';
import { dot, forget, type Memory, remember, twoLoops } from './memory';
import { neighboursOf } from './neighbours';
import { substitute } from './substitute';

/** How a garment came to rest, or did not. */
export interface Rest {
  readonly atRest: boolean;
  /** Net force over contact force, no unit; contact force is the root of the sum of squares over all vertices. */
  readonly residual: number;
  readonly steps: number;
  readonly factors: number;
}

export interface RelaxLimits {
  /** Net force over contact force at which the garment is at rest. */
  readonly tolerance: number;
  readonly mostFactors: number;
}

/** The most that a vertex moves in one step, mm. */
const MOST_STEP_MM = 25;
/** The factor is renewed after so many steps. */
const KEPT_STEPS = 4;
/** It is renewed at once after a step that leaves more than this part of the net force. */
const SLOW = 0.35;
/** Where net force over contact force is below this, the true second derivative is used. */
const NEAR_REST = 0.3;
const MOST_STEPS = 300;
const MOST_HALVINGS = 25;
/** Armijo's condition: a step must lower the energy by at least this part of its length times the slope. */
const WON = 1e-4;

/**
 * Minimises the energy from the places `X`, which it moves, and pauses before every step, so that a caller may stop it. Far from
 * rest each term of the second derivative is made positive, near rest it is the true one; between factors the BFGS formula corrects
 * the kept one; a line search halves steps (L. Armijo, Pacific Journal of Mathematics 16, 1966).
 */
export function* relaxing(
  garment: GarmentEnergy,
  X: Float64Array,
  limits: RelaxLimits,
): Generator<void, Rest> {
  const { factor, curvature } = prepared(garment, X);
  const memory: Memory = { steps: [], changes: [], inverses: [] };
  let G = new Float64Array(X.length);
  let [next, nextG] = [new Float64Array(X.length), new Float64Array(X.length)];
  const d = new Float64Array(X.length);
  let at = energyAt(garment, X, G);
  let force = Math.sqrt(dot(G, G));
  // Steps since the factor was made; infinite where it is to be renewed.
  let [factors, stepsKept, before, roundsWithoutTrue] = [0, Number.POSITIVE_INFINITY, force, 0];
  let isTrue = false;
  const residual = (): number => force / Math.max(at.contact, 1e-9);
  const rest = (steps: number): Rest => ({
    atRest: at.contact > 0 && residual() < limits.tolerance,
    residual: residual(),
    steps,
    factors,
  });
  /**
   * Renews the factor; false where the matrix cannot be made positive. Where the true second derivative is not positive, the next
   * `roundsWithoutTrue` factors are made without it.
   */
  const renew = (): boolean => {
    isTrue = residual() < NEAR_REST && roundsWithoutTrue <= 0;
    curvature.assemble(X, isTrue);
    factors += 1;
    let isPositive = factorize(factor, curvature.blocks, 1e-7);
    if (!isPositive && isTrue) {
      isTrue = false;
      roundsWithoutTrue = 2;
      curvature.assemble(X, false);
      factors += 1;
      isPositive = factorize(factor, curvature.blocks, 1e-6);
    } else roundsWithoutTrue = Math.max(0, roundsWithoutTrue - 1);
    if (!isPositive) {
      factors += 1;
      isPositive = factorize(factor, curvature.blocks, 1e-3);
    }
    stepsKept = 0;
    forget(memory);
    return isPositive;
  };

  for (let step = 0; step < MOST_STEPS; step += 1) {
    if (residual() < limits.tolerance && at.contact > 0) return rest(step);
    yield;
    if (stepsKept >= KEPT_STEPS || (stepsKept >= 1 && force > SLOW * before)) {
      if (factors >= limits.mostFactors || !renew()) return rest(step);
    }
    before = force;
    for (let i = 0; i < d.length; i += 1) d[i] = -G[i]!;
    twoLoops(memory, d, (v) => substitute(factor, v));
    const slope = dot(G, d);
    if (!(slope < 0)) {
      if (memory.steps.length === 0) return rest(step);
      stepsKept = Number.POSITIVE_INFINITY;
      continue;
    }
    let length = Math.min(1, MOST_STEP_MM / farthest(d));
    let halvings = 0;
    let found = at;
    for (; halvings < MOST_HALVINGS; halvings += 1) {
      for (let i = 0; i < X.length; i += 1) next[i] = X[i]! + length * d[i]!;
      found = energyAt(garment, next, nextG);
      if (found.energy <= at.energy + WON * length * slope + 1e-12 * Math.abs(at.energy)) break;
      length *= halvings < 3 ? 0.5 : 0.25;
    }
    if (halvings === MOST_HALVINGS) {
      if (stepsKept === 0 && !isTrue) return rest(step);
      if (stepsKept === 0) roundsWithoutTrue = 3;
      stepsKept = Number.POSITIVE_INFINITY;
      continue;
    }
    remember(memory, [X, next], [G, nextG]);
    X.set(next);
    [G, nextG] = [nextG, G];
    at = found;
    force = Math.sqrt(dot(G, G));
    stepsKept += 1;
  }
  return rest(MOST_STEPS);
}

/** The farthest that a step moves a vertex, mm. */
function farthest(d: Float64Array): number {
  let most = 0;
  for (let i = 0; i < d.length; i += 3)
    most = Math.max(most, d[i]! * d[i]! + d[i + 1]! * d[i + 1]! + d[i + 2]! * d[i + 2]!);
  return Math.sqrt(most);
}

/** Radius at which directions round the body are laid out flat for the dissection, mm. */
const LAID_OUT_MM = 130;

function prepared(garment: GarmentEnergy, X: Float64Array) {
  const count = garment.fixed.length;
  const round = Float64Array.from(
    { length: count },
    (_, v) => LAID_OUT_MM * Math.atan2(X[3 * v]!, X[3 * v + 1]!),
  );
  const up = Float64Array.from({ length: count }, (_, v) => X[3 * v + 2]!);
  const tree = makeFronts(neighboursOf(garment), round, up);
  const factor: Factor = makeFactor(tree);
  return { factor, curvature: makeCurvature(garment, tree.pattern) };
}
