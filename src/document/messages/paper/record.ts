// The record behind a print: what it was drafted from, so that it can be told later what was cut. Lengths come written.

import type { Closure } from '../../../engine';
import { catalogue } from '../catalogue';

type CentreClosure = Closure['front'] | Closure['back'];

const CLOSED = {
  seam: 'a seam',
  fold: 'on the fold',
  busk: 'a busk',
  lacing: 'lacing',
  hooks: 'hooks and tape',
  zip: 'a zip',
} satisfies Record<CentreClosure, string>;

export const RECORD = catalogue({
  title: 'Record of this print',
  why: 'What was cut, from which tape: keep it with the garment.',
  /** On a page that has little room. */
  item: ({ what, amount }: { what: string; amount: string }) => `${what}: ${amount}`,
  all: ({ items }: { items: readonly string[] }) => items.join('; '),
  program: 'Program',
  printed: 'Printed',
  style: {
    heading: 'Style',
    panels: 'Panels',
    panelsOf: ({ front, back }: { front: number; back: number }) => `${front} front, ${back} back`,
    closure: 'Closes',
    closureOf: ({ front, back, side }: Closes) =>
      [
        `centre front ${CLOSED[front]}`,
        `centre back ${CLOSED[back]}`,
        ...(side ? ['a zip in the left side seam'] : []),
      ].join('; '),
    gap: 'Lacing gap',
    gapNone: 'none',
    reduction: 'Waist reduction',
    reductionOf: ({ length, percent }: { length: string; percent: number }) => `${length}, ${percent} %`,
    reductionAltered: ({ asked, altered }: { asked: string; altered: string }) =>
      `${asked}; with the alterations ${altered}`,
    reductionNone: 'none: the waist is not drawn in',
    mockup: 'Mock-up',
    mockupOf: ({ number, allowance }: { number: number | null; allowance: string }) =>
      number === null ? `${allowance} on every edge` : `number ${number}, ${allowance} on every edge`,
  },
  tape: {
    heading: 'Tape',
    taken: 'Taken',
    notWritten: 'the day was not written down',
    estimated: ({ length }: { length: string }) => `${length}, estimated`,
    sides: 'Left and right',
    apart: 'They are drafted apart and cut once each.',
    differs: 'The body differs left to right; each half is drafted from its own.',
  },
  fittings: {
    heading: 'Alterations after fittings',
    of: ({ date }: { date: string }) => `Fitting of ${date}`,
    notMade: ({ words }: { words: string }) => `${words}: not made in this draft`,
  },
  girths: {
    heading: 'Girths',
    columns: {
      level: 'Level',
      body: 'Body',
      ease: 'Ease',
      asked: 'Asked, gap counted in',
      alteredBy: 'Altered',
      cloth: 'Cloth, gap left out',
    },
    outside: 'outside the garment',
  },
});

interface Closes {
  readonly front: CentreClosure;
  readonly back: CentreClosure;
  readonly side: boolean;
}
