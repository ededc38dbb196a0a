// A table of sizes computed from the survey: bust girths in even steps, and what women of that bust measure elsewhere.

import { MEASUREMENTS, type MeasurementName, type Measurements, UNMEASURED } from '../../engine';
import { expectedOf } from './expected';
import { SURVEYED_BUST } from './survey';

/** Intervals of bust girth, mm: 40 up to 104 cm and 60 from there on. EN 13402-3:2017. */
const STEPS = { small: 40, large: 60, largeFrom: 1040 } as const;

/** The bust girths of a chart, mm: the least and the greatest that are offered. */
const LEAST_CHART_BUST = 720;
const MOST_CHART_BUST = 1520;

/** Bust girths of sizes from the least to the greatest offered, mm. */
export const CHART_BUSTS: readonly number[] = bustsFrom(LEAST_CHART_BUST);

function bustsFrom(least: number): number[] {
  const found: number[] = [];
  for (let bust = least; bust <= MOST_CHART_BUST; bust += bust < STEPS.largeFrom ? STEPS.small : STEPS.large)
    found.push(bust);
  return found;
}

export interface ChartChoice {
  /** Bust girths of the smallest and the largest size, mm. */
  readonly from: number;
  readonly to: number;
  /** Bust less waist of a bust of 92 cm, mm; null for what the survey has. Other sizes differ from the survey by as much. */
  readonly drop: number | null;
  /** mm; null for what the survey has at each bust. */
  readonly stature: number | null;
}

/** The bust girth for which a drop is chosen, mm. */
const DROP_AT_BUST = 920;

/** What may be chosen, mm: wide of what the survey has. */
export const CHART_SPANS = {
  drop: [60, 320],
  stature: [1450, 1850],
} as const;

export interface ChartSize {
  /** The bust in whole centimetres. */
  readonly name: string;
  readonly measurements: Measurements;
  /** mm, for each estimated measurement: two in three women of this size lie within so much of it. */
  readonly within: Partial<Readonly<Record<MeasurementName, number>>>;
  /** No woman of the survey had this bust: what is told of it goes beyond what was measured. */
  readonly isBeyond: boolean;
}

/**
 * The sizes of a chart, each measurement the survey's expectation for bust, stature and, where a drop is chosen, waist. Measurements
 * that the survey has not are left out. All but the bust, and a chosen waist, are estimates.
 */
export const sizeChart = ({ from, to, drop, stature }: ChartChoice): ChartSize[] =>
  CHART_BUSTS.filter((bust) => bust >= from && bust <= to).map((bust): ChartSize => {
    const waist = drop === null ? null : chosenWaist(bust, drop, stature);
    const known: Measurements = { ...UNMEASURED, bust, waist };
    const found = MEASUREMENTS.flatMap(({ name }) => {
      const expected = known[name] === null ? expectedOf(name, known, [], stature) : null;
      return expected ? [{ name, expected }] : [];
    });
    return {
      name: String(Math.round(bust / 10)),
      measurements: {
        ...known,
        ...Object.fromEntries(found.map(({ name, expected }) => [name, Math.round(expected.mean)])),
      },
      within: Object.fromEntries(found.map(({ name, expected }) => [name, Math.round(expected.sd)])),
      isBeyond: bust < SURVEYED_BUST.least || bust > SURVEYED_BUST.most,
    };
  });

/** The waist of a bust, mm: as far from the survey's as the drop chosen is. */
function chosenWaist(bust: number, drop: number, stature: number | null): number {
  const usual = (girth: number): number =>
    expectedOf('waist', { ...UNMEASURED, bust: girth }, [], stature)?.mean ?? girth - drop;
  return Math.round(usual(bust) + DROP_AT_BUST - drop - usual(DROP_AT_BUST));
}
