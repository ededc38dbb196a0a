// Measurements of the bust point corrected after a fitting.

import { levelsOf } from '../block/lines/levels';
import { checkBody } from '../body/body';
import type { Measurements } from '../body/measurements';
import { checkStyle } from '../style/checkStyle';
import type { Style } from '../style/style';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type BustPointAlteration,
  refused,
} from './terms/alteration';
import { keyOf } from './terms/alterationsOfSide';

/**
 * The measurements with the bust points moved out and down, mm. A correction that takes a measurement out of its span is refused
 * with all others of the bust point. `outcomes` has one for each alteration; null for one of another kind.
 */
export function correctedBody(
  measurements: Measurements,
  style: Style,
  alterations: readonly (Alteration | null)[],
): { measurements: Measurements; outcomes: (AlterationOutcome | null)[] } {
  const own = alterations
    .filter((each): each is BustPointAlteration => each?.kind === 'bustPoint')
    .sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
  const { neckToBust, bustPointWidth } = measurements ?? {};
  const [out, down] = [sumOf(own.map((each) => each.out)), sumOf(own.map((each) => each.down))];
  const corrected: Measurements =
    out === 0 && down === 0
      ? measurements
      : {
          ...measurements,
          neckToBust: moved(neckToBust, down),
          bustPointWidth: moved(bustPointWidth, 2 * out),
        };
  const isDrafted =
    corrected === measurements || hasLevels(corrected, style) || !hasLevels(measurements, style);
  const outcome = isDrafted ? APPLIED : refused('bustPointOutOfSpan');
  return {
    measurements: isDrafted ? corrected : measurements,
    outcomes: alterations.map((each) => (each?.kind === 'bustPoint' ? outcome : null)),
  };
}

function hasLevels(measurements: Measurements, style: Style): boolean {
  const { body } = checkBody(measurements);
  return body !== null && checkStyle(style).length === 0 && levelsOf(body, style).levels.length > 0;
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

const moved = (mm: number | null | undefined, by: number): number | null =>
  typeof mm === 'number' ? mm + by : null;
