// What the last steps told of the curvature: limited memory of the BFGS formula round a kept factor.

/** Pairs of steps and changes of the gradient, newest last. */
export interface Memory {
  steps: Float64Array[];
  changes: Float64Array[];
  inverses: number[];
}

const MOST_PAIRS = 6;

/** Empties the memory. */
export const forget = (memory: Memory): void => {
  memory.steps = [];
  memory.changes = [];
  memory.inverses = [];
};

/** Keeps a step `from` → `to` with its change of the gradient, where the energy bends upwards along it. */
export function remember(
  memory: Memory,
  [from, to]: readonly [Float64Array, Float64Array],
  [before, after]: readonly [Float64Array, Float64Array],
): void {
  const step = to.map((x, i) => x - from[i]!);
  const change = after.map((g, i) => g - before[i]!);
  let [along, square] = [0, 0];
  for (let i = 0; i < step.length; i += 1) {
    along += step[i]! * change[i]!;
    square += change[i]! * change[i]!;
  }
  if (along <= 1e-12 * square) return;
  memory.steps.push(step);
  memory.changes.push(change);
  memory.inverses.push(1 / along);
  if (memory.steps.length <= MOST_PAIRS) return;
  memory.steps.shift();
  memory.changes.shift();
  memory.inverses.shift();
}

/**
 * Turns the downhill gradient `d` into a step by the two-loop recursion (J. Nocedal, "Updating quasi-Newton matrices with limited
 * storage", Mathematics of Computation 35, 1980).
 *
 * @param solve applies the inverse of the kept curvature, in place
 */
export function twoLoops(
  { steps, changes, inverses }: Memory,
  d: Float64Array,
  solve: (d: Float64Array) => void,
): void {
  const parts = new Float64Array(steps.length);
  for (let k = steps.length - 1; k >= 0; k -= 1) {
    parts[k] = inverses[k]! * dot(steps[k]!, d);
    add(d, changes[k]!, -parts[k]!);
  }
  solve(d);
  for (let k = 0; k < steps.length; k += 1) add(d, steps[k]!, parts[k]! - inverses[k]! * dot(changes[k]!, d));
}

/** The scalar product of two lists of one length. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
}

function add(a: Float64Array, b: Float64Array, part: number): void {
  for (let i = 0; i < a.length; i += 1) a[i]! += part * b[i]!;
}
