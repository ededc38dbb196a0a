// The texts of Measure.

import { catalogue, plural } from '../catalogue';

interface OfMeasurement {
  /** As it is written within a sentence. */
  readonly measurement: string;
}

interface AtLevel {
  /** As it is written within a sentence. */
  readonly level: string;
}

interface Counts {
  readonly taken: number;
  readonly all: number;
  readonly needed: number;
}

export const MEASURE = catalogue({
  client: 'Client',
  rows: 'Measurements',
  demo: {
    invented: 'She is invented, to try things out on: change what you like.',
    beginOwn: 'Begin with your own client',
  },
  figure: {
    label: 'The field in hand',
    front: 'Seen from the front',
    behind: 'Seen from behind',
    none: 'Choose a field to see where the tape goes.',
  },
  groups: {
    round: { title: 'Round the body', intro: 'The tape level and snug, never pulled in.' },
    down: {
      title: 'Down from the neck',
      intro: 'All from the point where the shoulder line meets the neck.',
    },
    across: {
      title: 'Across the front',
      intro: 'Side seam to side seam; left empty, the usual share is taken.',
    },
    fit: {
      title: 'Across, and for fit',
      intro: 'How far apart, how high under the arm, how long to sit in.',
    },
    shoulders: {
      title: 'Shoulders and arms',
      intro: 'For a block that goes up to the shoulder, and for a band round the arm.',
    },
  },
  also: {
    label: 'Also measured',
    across: 'Front arcs',
    shoulders: 'Shoulders and arms',
  },
  tapeDay: {
    measuredOn: 'Measured on',
    beginSet: 'Measure her again',
    whatBeginning: 'The numbers of now are kept under their day, and the new set begins from them.',
    unknownDay: 'a day not written down',
    earlier: ({ days }: { days: readonly string[] }) => `Before: ${days.join('; ')}.`,
  },
  row: {
    /** The button of a row's menu. */
    more: ({ measurement }: OfMeasurement) => `More for ${measurement}`,
    unusual: ({ range }: { range: string }) => `unusual; ${range} would be usual`,
    usual: ({ estimate }: { estimate: string }) => `${estimate} would be usual`,
    taken: ({ length }: { length: string }) => `${length} is taken`,
    estimated: ({ spread }: { spread: string }) => `estimated: ${spread}`,
    /** Readings in the order in which they were taken. */
    read: ({ lengths }: { lengths: readonly string[] }) =>
      lengths.length > 2 ? `read three times: ${lengths.join(', ')}` : `read twice: ${lengths.join(', ')}`,
    takeOff: 'Take the number off',
    keys: 'Alt and arrow down opens the menu of the row.',
  },
  usual: ({ range }: { range: string }) => `Usual for her other measurements: ${range}.`,
  /** `day` is null where it was not written down. */
  since: {
    same: ({ day }: { day: string | null }) => (day === null ? 'as last time' : `as on ${day}`),
    before: ({ length, day }: { length: string; day: string | null }) =>
      day === null ? `${length} last time` : `${length} on ${day}`,
    changed: ({ length, day, difference }: { length: string; day: string | null; difference: string }) =>
      day === null ? `${length} last time, now ${difference}` : `${length} on ${day}, now ${difference}`,
  },
  estimate: {
    use: 'Use it for now',
    offer: ({ length }: { length: string }) => `Use the estimate, ${length}`,
    offerOf: ({ measurement }: OfMeasurement) => `Use the estimate for ${measurement}`,
  },
  readings: {
    second: 'Second reading',
    third: 'Third reading',
    secondOf: ({ measurement }: OfMeasurement) => `Second reading of ${measurement}`,
    thirdOf: ({ measurement }: OfMeasurement) => `Third reading of ${measurement}`,
    open: 'Look at the readings',
    differ: ({ most }: { most: string }) =>
      `The two differ by more than ${most}. Lay the tape a third time; the middle one of the three holds.`,
    which: ({ first, second }: { first: string; second: string }) =>
      `${first} first and ${second} now cannot both be right. Which is meant?`,
    meant: ({ length }: { length: string }) => `${length} is meant`,
  },
  /** The keys of fractions under a finger. */
  keys: { label: 'Keys of fractions', next: 'Next' },
  pasted: {
    /** `from` and `to`: the first and the last measurement that was filled, as within a sentence. */
    filled: ({ count, from, to }: { count: number; from: string; to: string }) =>
      plural(count, {
        one: `One number was pasted: ${from}.`,
        other: `${count} numbers were pasted, from ${from} to ${to}.`,
      }),
    unread: ({ texts }: { texts: readonly string[] }) =>
      `No length, and left out: ${texts.map((text) => `“${text}”`).join(', ')}.`,
    tooMany: ({ count }: { count: number }) =>
      plural(count, {
        one: 'One number more than there are fields was left out.',
        other: `${count} numbers more than there are fields were left out.`,
      }),
    none: 'Nothing in what was pasted is a length.',
  },
  next: {
    draft: 'Next: Draft',
    taken: ({ taken, all, needed }: Counts) => `${taken} of ${all} taken, all ${needed} that are needed`,
    others: 'The draft reckons the others and names them in the print.',
    missing: ({ count }: { count: number }) =>
      plural(count, { one: 'One number is still needed', other: `${count} numbers are still needed` }),
    first: ({ measurements }: { measurements: readonly string[] }) => `${measurements.join(', ')}.`,
    refused: ({ measurement }: OfMeasurement) => `Look at ${measurement} first`,
    refusedWhy: 'The draft cannot be made with that number.',
    /** `length`: with its unit. */
    unreadWhy: ({ length }: { length: string }) =>
      `What is typed there cannot be read; the draft goes on with ${length}.`,
    unreadNone: 'What is typed there cannot be read; the draft goes on with none.',
  },
  sides: {
    title: 'Left and right',
    differ: 'Her two sides differ',
    intro:
      'Of each girth, what lies on her left from centre front round to centre back; left empty, half. The lengths down from the neck above are those of her left.',
    leftHalf: ({ level }: AtLevel) => `Left half at the ${level}`,
    leftHalfHow: ({ level }: AtLevel) =>
      `Of the tape round her at the ${level}, the half on her left only: from centre front round to centre back.`,
    rightLower: ({ level }: AtLevel) => `Right ${level} line lower by`,
    rightLowerHow: ({ level }: AtLevel) =>
      `How much lower the ${level} line lies on her right than on her left; with a minus, higher.`,
  },
});
