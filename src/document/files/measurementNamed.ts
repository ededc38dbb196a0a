// Which measurement a name in a file or in a pasted list means, as people write it.

import { MEASUREMENTS, type MeasurementName } from '../../engine';
import { MEASUREMENT_WORDS } from '../messages/words/measurements';

/**
 * The measurement of a name, whatever its case, spaces and hyphens: its label ("Neck to waist, front"), its name in files
 * ("neckToWaist"), and either without "girth" ("Bust"). Null for any other name.
 */
export const measurementNamed = (text: string): MeasurementName | null => NAMES.get(plainName(text)) ?? null;

/** Letters and digits alone, in lower case. */
export const plainName = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '')
    .toLowerCase();

const NAMES: ReadonlyMap<string, MeasurementName> = new Map(
  MEASUREMENTS.flatMap(({ name }): [string, MeasurementName][] =>
    [name, MEASUREMENT_WORDS[name].label].flatMap((text): [string, MeasurementName][] => [
      [plainName(text).replace(/girth$/u, ''), name],
      [plainName(text), name],
    ]),
  ),
);
