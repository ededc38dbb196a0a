// A computed chart of sizes as a table that can be changed and read again.

import { MEASUREMENTS } from '../../engine';
import { SIZES } from '../messages/book/sizes';
import { MEASUREMENT_WORDS } from '../messages/words/measurements';
import type { ChartSize } from '../statistics/sizeChart';
import { plainLength } from '../units/formatLength';
import type { LengthUnit } from '../units/lengthUnit';

/** The sizes with semicolons between the cells, a row of headings and one of units; measurements that none of them has are left out. */
export function chartCsv(sizes: readonly ChartSize[], unit: LengthUnit): string {
  const names = MEASUREMENTS.map(({ name }) => name).filter((name) =>
    sizes.some(({ measurements }) => measurements[name] !== null),
  );
  const rows = [
    [SIZES.size, ...names.map((name) => MEASUREMENT_WORDS[name].label)],
    ['', ...names.map(() => unit)],
    ...sizes.map(({ name, measurements }) => [
      name,
      ...names.map((each) => {
        const mm = measurements[each];
        return mm === null ? '' : plainLength(mm, unit);
      }),
    ]),
  ];
  return rows.map((cells) => `${cells.join(';')}\n`).join('');
}
