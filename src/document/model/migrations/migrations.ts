// The way from every version of the book before the present one.

import { fromVersion1 } from './fromVersion1';
import { fromVersion2 } from './fromVersion2';
import { fromVersion3 } from './fromVersion3';
import { fromVersion4 } from './fromVersion4';
import { fromVersion5 } from './fromVersion5';
import { fromVersion6 } from './fromVersion6';
import { fromVersion7 } from './fromVersion7';
import { fromVersion8 } from './fromVersion8';
import { fromVersion9 } from './fromVersion9';
import { fromVersion10 } from './fromVersion10';
import { fromVersion11 } from './fromVersion11';
import type { Migrations } from './migrate';

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
  10: fromVersion10,
  11: fromVersion11,
};
