// The texts of Measure.

import { catalogue } from '../catalogue';

interface OfMeasurement {
  /** As it is written within a sentence. */
  readonly measurement: string;
}

interface AtLevel {
  /** As it is written within a sentence. */
  readonly level: string;
}

export const MEASURE = catalogue({
  client: 'Client',
  demo: {
    invented: 'She is invented, to try things out on: change what you like.',
    beginOwn: 'Begin with your own client',
  },
  figure: {
    behind: 'Seen from behind.',
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
      intro: 'From side seam to side seam. Left empty, the front takes its usual part of the girth.',
    },
    fit: {
      title: 'Across, and for fit',
      intro: 'How far apart, how high under the arm, how long to sit in.',
    },
  },
  tapeDay: {
    measuredOn: 'Measured on',
    beginSet: 'Begin a new set',
    whatBeginning:
      'For measuring her again: the numbers of now are kept under their day, and the new set begins from them.',
    unknownDay: 'a day not written down',
    earlier: ({ days }: { days: readonly string[] }) =>
      `Before: ${days.join('; ')}. What changed stands beside each number.`,
  },
  /** `day` is null where it was not written down. */
  since: {
    same: ({ day }: { day: string | null }) => (day === null ? 'As last time' : `As on ${day}`),
    before: ({ length, day }: { length: string; day: string | null }) =>
      day === null ? `${length} last time` : `${length} on ${day}`,
    changed: ({ length, day, difference }: { length: string; day: string | null; difference: string }) =>
      day === null ? `${length} last time, now ${difference}` : `${length} on ${day}, now ${difference}`,
  },
  estimate: {
    use: 'Use it for now',
    offerOf: ({ measurement }: OfMeasurement) => `Use the estimate for ${measurement}`,
  },
  readings: {
    second: 'Second reading',
    third: 'Third reading',
    secondOf: ({ measurement }: OfMeasurement) => `Second reading of ${measurement}`,
    thirdOf: ({ measurement }: OfMeasurement) => `Third reading of ${measurement}`,
    first: ({ length }: { length: string }) => `First read as ${length}.`,
    differ: ({ most }: { most: string }) =>
      `The two differ by more than ${most}. Lay the tape a third time; the middle one of the three holds.`,
  },
  sides: {
    title: 'Left and right',
    differ: 'Her two sides differ',
    intro:
      'Of each girth, what lies on her left from centre front round to centre back; left empty, half. The lengths down from the neck above are those of her left.',
    leftHalf: ({ level }: AtLevel) => `Left half at the ${level}`,
    leftHalfHint: 'Along the girth’s own line, on her left only.',
    leftHalfHow: ({ level }: AtLevel) =>
      `Of the tape round her at the ${level}, the half on her left only: from centre front round to centre back.`,
    rightLower: ({ level }: AtLevel) => `Right ${level} line lower by`,
    rightLowerHint: 'Than on her left; with a minus, higher.',
    rightLowerHow: ({ level }: AtLevel) =>
      `How much lower the ${level} line lies on her right than on her left; with a minus, higher.`,
  },
});
