// What a measurement is likely to be for a woman with her other ones, so that a slip is noticed and a gap can be filled.

import type { MeasurementName, Measurements } from '../../engine';
import { STATURE, SURVEY, type SurveyRow } from './survey';

/** mm; of women alike in the other measurements two in three lie within one `sd` of `mean`. */
export interface Expected {
  readonly mean: number;
  readonly sd: number;
  /** mm below the bust point, where the length is reckoned from there and not taken from the survey. */
  readonly belowBust?: number;
}

/** What careful readings of one body by tape differ by on large girths, mm: ISO 20685:2010's allowance. */
const TAPE_MM = 9;

/** One woman in a hundred is more than so many SDs away from the mean. */
const UNUSUAL_SDS = 2.58;

/** How far the under-bust line lies below the bust point, and how surely, mm: common practice, no source. */
const UNDER_BUST = { below: 75, sd: 10 } as const;
/** The most of the way from the bust point to the waist that it may take: common practice, no source. */
const UNDER_BUST_SHARE = 0.75;

/** The rows that may be built on. */
const ROWS: readonly SurveyRow[] = [...SURVEY, STATURE];

/**
 * What is to be expected of one measurement from all others of the survey that are known: the conditional mean and SD of a
 * multivariate normal. The survey has no under-bust line; its height is reckoned from that of the bust point. Null for any other
 * measurement that the survey does not have.
 *
 * @param without measurements not to be built on, as they were estimated themselves
 * @param stature mm; null where it is not known
 */
export function expectedOf(
  name: MeasurementName,
  measurements: Measurements,
  without: readonly MeasurementName[] = [],
  stature: number | null = null,
): Expected | null {
  if (name === 'neckToUnderBust') return underBustExpected(measurements, without, stature);
  const own = rowOf(name);
  if (own < 0) return null;
  const known = ROWS.flatMap((row, i) => {
    const value = row.name === 'stature' ? stature : measurements[row.name];
    const isTaken = row.name === 'stature' || !without.includes(row.name);
    const usable = i !== own && value !== null && Number.isFinite(value) && isTaken;
    return usable ? [{ i, z: (value - row.mean) / row.sd }] : [];
  });
  const rows = known.map(({ i }) => i);
  const { weights, explained } = regressionOn(rows, own);
  const z = weights.reduce((sum, weight, k) => sum + weight * (known[k]?.z ?? 0), 0);
  const { mean, sd } = SURVEY[own] as (typeof SURVEY)[number];
  return { mean: mean + sd * z, sd: sd * Math.sqrt(Math.max(0, 1 - explained)) };
}

/** From the measured lengths to bust point and waist, or from what is to be expected of them. */
function underBustExpected(
  measurements: Measurements,
  without: readonly MeasurementName[],
  stature: number | null,
): Expected | null {
  const known = (name: 'neckToBust' | 'neckToWaist'): Expected | null => {
    const value = measurements[name];
    return value === null || !Number.isFinite(value) || without.includes(name)
      ? expectedOf(name, measurements, without, stature)
      : { mean: value, sd: 0 };
  };
  const [bustPoint, waist] = [known('neckToBust'), known('neckToWaist')];
  if (!bustPoint || !waist || waist.mean <= bustPoint.mean) return null;
  const belowBust = Math.min(UNDER_BUST.below, UNDER_BUST_SHARE * (waist.mean - bustPoint.mean));
  return { mean: bustPoint.mean + belowBust, sd: Math.hypot(UNDER_BUST.sd, bustPoint.sd), belowBust };
}

/**
 * The measurements that are unusual for all others, with what was to be expected of each. One wrong measurement makes others look
 * unusual too. Therefore the most unusual one is found first, then those that are still unusual when it is not used.
 *
 * @param estimated measurements that were not taken: neither judged nor built on
 */
export function unusualOnes(
  measurements: Measurements,
  estimated: readonly MeasurementName[] = [],
): ReadonlyMap<MeasurementName, Expected> {
  const found = new Map<MeasurementName, Expected>();
  for (;;) {
    const without = [...estimated, ...found.keys()];
    let oddest: { name: MeasurementName; expected: Expected; sds: number } | null = null;
    for (const { name } of SURVEY) {
      const value = measurements[name];
      const expected =
        value === null || without.includes(name) ? null : expectedOf(name, measurements, without);
      if (value === null || expected === null) continue;
      const sd = Math.hypot(expected.sd, TAPE_MM);
      const sds = Math.abs(value - expected.mean) / sd;
      if (sds > (oddest?.sds ?? UNUSUAL_SDS)) oddest = { name, expected: { mean: expected.mean, sd }, sds };
    }
    if (!oddest) return found;
    found.set(oddest.name, oddest.expected);
  }
}

const rowOf = (name: MeasurementName): number => SURVEY.findIndex((row) => row.name === name);

const correlation = (a: number, b: number): number =>
  (ROWS[Math.max(a, b)]?.with[Math.min(a, b)] ?? 0) / 1000;

interface Regression {
  /** Of each known row, for its distance from the mean in SDs. */
  readonly weights: readonly number[];
  /** The part of the variance that the known rows explain. */
  readonly explained: number;
}

/** By the rows that are known and the one that is asked for: what a number is changes nothing of it, and numbers change at each key. */
const regressions = new Map<number, Regression>();
const MOST_REGRESSIONS = 1000;

/** @param known places in {@link ROWS} */
function regressionOn(known: readonly number[], own: number): Regression {
  const key = known.reduce((sum, i) => sum | (1 << i), 0) * ROWS.length + own;
  const found = regressions.get(key);
  if (found) return found;
  const weights = solveSymmetric(
    known.map((a) => known.map((b) => correlation(a, b))),
    known.map((i) => correlation(i, own)),
  );
  const explained = weights.reduce((sum, weight, k) => sum + weight * correlation(known[k] ?? own, own), 0);
  if (regressions.size >= MOST_REGRESSIONS) regressions.clear();
  regressions.set(key, { weights, explained });
  return { weights, explained };
}

/** x of a·x = b for a symmetric positive matrix, by elimination; eleven rows at most. */
function solveSymmetric(a: readonly (readonly number[])[], b: readonly number[]): number[] {
  const rows = a.map((row, i) => [...row, b[i] ?? 0]);
  const size = rows.length;
  const at = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let i = 0; i < size; i += 1)
    for (let k = i + 1; k < size; k += 1) {
      const factor = at(k, i) / at(i, i);
      rows[k] = (rows[k] ?? []).map((value, j) => value - factor * at(i, j));
    }
  const x: number[] = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i -= 1) {
    let rest = at(i, size);
    for (let j = i + 1; j < size; j += 1) rest -= at(i, j) * (x[j] ?? 0);
    x[i] = rest / at(i, i);
  }
  return x;
}
