// Realistic bodies for property tests: drawn from the published means, SDs and correlations of a survey, so that
// no person's row is in the project.

import type { Measurements } from '../../../src/engine';
import { normal, type Random, randomFrom } from '../random';
import { CORRELATIONS, SURVEY, type SurveyName } from './survey1988';

/** A drawn body. Every measurement the survey gives is there; high hip, lap and shoulder widths are not. */
export type DrawnBody = Measurements & {
  readonly [name in 'bust' | 'underBust' | 'waist' | 'hip' | 'neckToBust' | 'neckToWaist']: number;
};

/**
 * `count` bodies of a seeded multivariate normal sample. A draw outside the survey's least and most in any variable
 * is drawn again.
 */
export function drawBodies(count: number, seed: number): DrawnBody[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => bodyOf(drawn(random)));
}

/** The body with every variable at its mean. */
export const MEAN_BODY: DrawnBody = bodyOf(
  Object.fromEntries(SURVEY.map(({ name, mean }) => [name, mean])) as Record<SurveyName, number>,
);

function drawn(random: Random): Record<SurveyName, number> {
  for (;;) {
    const z = SURVEY.map(() => normal(random));
    const row = SURVEY.map(({ name, mean, sd }, i): [SurveyName, number] => [
      name,
      mean + sd * (ROOT[i] as number[]).reduce((sum, part, j) => sum + part * (z[j] as number), 0),
    ]);
    if (row.every(([, value], i) => value >= (SURVEY[i]?.least ?? 0) && value <= (SURVEY[i]?.most ?? 0)))
      return Object.fromEntries(row) as Record<SurveyName, number>;
  }
}

/**
 * The tape's lengths follow the front; the survey gives heights above the floor. The drop from bust to waist is taken
 * 3 % longer along the body, and the under-bust 75 mm below the bust point: common practice, no source.
 */
function bodyOf(row: Record<SurveyName, number>): DrawnBody {
  const neckToWaist = row.neckToBust + 1.03 * (row.bustHeight - row.waistHeight);
  return {
    bust: row.bust,
    overBust: row.overBust,
    underBust: row.underBust,
    waist: row.waist,
    highHip: null,
    hip: row.hip,
    waistToHighHip: null,
    bustPointWidth: row.bustPointWidth,
    neckToBust: row.neckToBust,
    neckToUnderBust: row.neckToBust + 75,
    neckToWaist,
    neckToHip: neckToWaist + (row.waistHeight - row.hipHeight),
    acrossShoulder: null,
    neckWidth: null,
    backNeckToWaist: null,
    underarmToWaist: row.armpitHeight - row.waistHeight,
    waistToLap: null,
    hollowOfBack: null,
    frontOverBustArc: null,
    frontBustArc: null,
    frontUnderBustArc: null,
    frontWaistArc: null,
    frontHipArc: null,
    shoulderLength: null,
    shoulderDrop: null,
    chestWidth: null,
    backWidth: null,
    upperArm: null,
  };
}

/** The lower triangular root of the correlations (Cholesky). */
const ROOT: readonly number[][] = rootOf(CORRELATIONS);

function rootOf(matrix: readonly (readonly number[])[]): number[][] {
  const root: number[][] = matrix.map(() => []);
  for (const [i, row] of matrix.entries())
    for (let j = 0; j <= i; j += 1) {
      const [p, q] = [root[i] as number[], root[j] as number[]];
      let sum = row[j] as number;
      for (let k = 0; k < j; k += 1) sum -= (p[k] as number) * (q[k] as number);
      if (i === j && sum <= 0) throw new Error('the correlations are not those of any sample');
      p[j] = i === j ? Math.sqrt(sum) : sum / (q[j] as number);
    }
  return root;
}
