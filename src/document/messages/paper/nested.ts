// What is written on a nested print: one style in several sizes, one over another.

import { catalogue, listed, plural } from '../catalogue';

export const NESTED = catalogue({
  range: ({ first, last }: { first: string; last: string }) =>
    first === last ? `Size ${first}` : `Sizes ${first} to ${last}`,
  how: ({ level, count }: { level: string; count: number }) =>
    plural(count, {
      one: 'One size. Its number stands on its cut line.',
      other: `${count} sizes, one over another, aligned at the ${level} and on the grain or the fold. Each has a line and notches of its own, and its number on its cut line. Cut along one size all the way round.`,
    }),
  lines:
    'Cut lines: thick. Sew lines: thin, in the same dashes, half as long. Grain: line with two arrows. Balance marks cross the sew line.',
  laced: ({ sizes }: { sizes: readonly string[] }) =>
    plural(sizes.length, {
      one: `Size ${listed(sizes)} is laced in farther than usual.`,
      other: `Sizes ${listed(sizes)} are laced in farther than usual.`,
    }),
  key: 'The sizes: bust, waist, hip',
  /** Behind the line and the number of a size; the name is null where it is the number. */
  size: ({ name, girths, unit }: { name: string | null; girths: readonly string[]; unit: string }) =>
    `${name === null ? '' : `${name}: `}${girths.join(', ')} ${unit}`,
});
