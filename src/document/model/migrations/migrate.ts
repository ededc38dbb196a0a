// Bringing stored data of an earlier version up to this one, a version at a time.

import { fromVersion1 } from './fromVersion1';
import { fromVersion2 } from './fromVersion2';
import { fromVersion3 } from './fromVersion3';
import { fromVersion4 } from './fromVersion4';
import { fromVersion5 } from './fromVersion5';
import { fromVersion6 } from './fromVersion6';
import { fromVersion7 } from './fromVersion7';
import { fromVersion8 } from './fromVersion8';
import { fromVersion9 } from './fromVersion9';

/** Takes the data of one version and gives that of the next; may throw on data that is not of its version. */
type Migration = (old: unknown) => unknown;

/** A migration for each version before the present one, under the version it starts from. */
export type Migrations = Readonly<Record<number, Migration>>;

/**
 * The way from the first version to the present one. Each entry needs a book of the version it starts from in
 * tests/document/model/fixtures/book-v<version>.json.
 */
export const MIGRATIONS: Migrations = {
  1: fromVersion1,
  2: fromVersion2,
  3: fromVersion3,
  4: fromVersion4,
  5: fromVersion5,
  6: fromVersion6,
  7: fromVersion7,
  8: fromVersion8,
  9: fromVersion9,
};

/** The data as of version `to`, or null where a step of the way is missing or fails. */
export function migrate(data: unknown, from: number, to: number, steps: Migrations): unknown {
  let current = data;
  for (let version = from; version < to; version += 1) {
    const step = steps[version];
    if (!step) return null;
    try {
      current = step(current);
    } catch {
      // Data that calls itself of a version need not be of it: the caller says that it cannot be read.
      return null;
    }
  }
  return current;
}
