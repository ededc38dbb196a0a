// What a draft owes to measurements that are unusual for the body they were taken of, said where the draft is looked at.

import type { Draft, MeasurementName, Measurements } from '../../../engine';
import { unusualOnes } from '../../statistics/expected';
import { formatLength } from '../../units/formatLength';
import type { LengthUnit } from '../../units/lengthUnit';
import { catalogue } from '../catalogue';
import { LEVEL_WORDS } from '../words/levels';
import { MEASUREMENT_WORDS } from '../words/measurements';

/** What a draft is compared with, or takes only where it goes up to the shoulder. */
const NOT_DRAFTED_BY: ReadonlySet<MeasurementName> = new Set<MeasurementName>([
  'underarmToWaist',
  'waistToLap',
  'acrossShoulder',
  'neckWidth',
  'backNeckToWaist',
]);

/** The unusual measurements in one line; null where there are none. None of them stops the draft. */
export function unusualLine(
  measurements: Measurements,
  estimated: readonly MeasurementName[],
  unit: LengthUnit,
): string | null {
  const names = [...unusualOnes(measurements, estimated).keys()];
  if (names.length === 0) return null;
  const said = (which: readonly MeasurementName[]): string =>
    which
      .map((name) => {
        const mm = measurements[name] ?? Number.NaN;
        return UNUSUAL.measured({
          measurement: MEASUREMENT_WORDS[name].name,
          length: formatLength(mm, unit, { withUnit: true }),
        });
      })
      .join('; ');
  const followed = said(names.filter((name) => !NOT_DRAFTED_BY.has(name)));
  const others = said(names.filter((name) => NOT_DRAFTED_BY.has(name)));
  if (followed === '') return UNUSUAL.notDraftedBy({ others });
  return others === '' ? UNUSUAL.followed({ followed }) : UNUSUAL.both({ followed, others });
}

/** More than this is no rounding of the tape. mm */
const WIDER_MM = 1;

/** Where the cloth above the waist line or at it is wider than at the bust, so that wedges have nothing to take; or null. */
export function widerThanBustLine({ proof }: Pick<Draft, 'proof'>): string | null {
  const wider = proof.ledger
    .filter(({ level }) => level === 'underBust' || level === 'waist')
    .filter(({ taken }) => {
      const wedges = Object.values(taken.wedges).reduce((sum, each) => sum + each, 0);
      return wedges + taken.sideSeam.front + taken.sideSeam.back < -WIDER_MM;
    })
    .map(({ level }) => LEVEL_WORDS[level]);
  return wider.length === 0 ? null : UNUSUAL.widerAt({ levels: wider });
}

const UNUSUAL = catalogue({
  measured: ({ measurement, length }: { measurement: string; length: string }) => `${measurement} ${length}`,
  followed: ({ followed }: { followed: string }) =>
    `Unusual for her other measurements, and the draft follows it: ${followed}. Measure again; if she is built so, it is right.`,
  notDraftedBy: ({ others }: { others: string }) =>
    `Unusual for her other measurements: ${others}. Measure again; if she is built so, it is right.`,
  both: ({ followed, others }: { followed: string; others: string }) =>
    `Unusual for her other measurements, and the draft follows it: ${followed}. Unusual too: ${others}. Measure again; if she is built so, it is right.`,
  /** One level or two. */
  widerAt: ({ levels }: { levels: readonly string[] }) =>
    `At the ${levels.join(' and the ')} the cloth is wider than at the bust: the wedges find nothing to take in there, and the side seams run outwards. Look at the girths and the ease; if she is built so, it is right.`,
});
