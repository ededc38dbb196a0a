// The wedges as a list, and the numbers of the selected one.

import type { LevelName } from '../../../../engine';
import { catalogue } from '../../catalogue';
import { LEVEL_WORDS } from '../../words/levels';

interface AtLevel {
  readonly level: LevelName;
}

interface OfWedge {
  /** The wedge's name within a sentence. */
  readonly wedge: string;
}

export const WEDGE_CARDS = catalogue({
  list: {
    title: 'Wedges',
    blocks: { front: 'Front wedges', back: 'Back wedges' },
    shortBlocks: { front: 'Front', back: 'Back' },
    dart: '(dart)',
    add: '+',
    addTo: { front: 'Add a front wedge', back: 'Add a back wedge' },
    balanceAll: 'Balance all from the girths',
    choose: 'Choose a wedge here or on the table to see its numbers.',
    takeOff: 'Take off',
    takeOffWedge: ({ wedge }: OfWedge) => `Take off the ${wedge}`,
  },
  sizing: {
    legend: 'How its intake is set',
    balanced: 'Balanced',
    balancedHint: 'Follows the girths; the scales under a wedge say so',
    manual: 'By hand',
    manualHint: 'Stays as it was set; the padlock under a wedge says so',
  },
  upperEnd: {
    legend: 'Ends above in',
    legendOfDart: 'Opens in',
    edges: {
      usual: 'As usual',
      neckline: 'Neckline',
      shoulder: 'Shoulder',
      armhole: 'Armhole',
      side: 'Side seam',
    },
    along: 'Place along it, from the centre to the underarm',
    part: ({ percent }: { percent: number }) => `${percent} %`,
    side: {
      below: 'Below the armhole',
      belowFull: 'Where the dart opens in the side seam, below the armhole',
      short: 'Short of the bust point',
      shortFull: 'How far the dart’s point ends short of the bust point',
      opens: ({ length, degrees }: { length: string; degrees: number }) =>
        `It opens ${length} at the side seam, ${degrees}° about the bust point, and is folded down.`,
      width: 'How wide it opens is set with the shoulders, as the front wedge at its upper end.',
    },
  },
  numbers: {
    lengths: { in: 'inches', cm: 'centimetres' },
    intake: 'Intake',
    less: ({ level }: AtLevel) => `Less at the ${LEVEL_WORDS[level]}`,
    more: ({ level }: AtLevel) => `More at the ${LEVEL_WORDS[level]}`,
    intakeAt: ({ level }: AtLevel) => `Intake at the ${LEVEL_WORDS[level]}`,
    fromCentre: 'From centre',
    axisAt: ({ level }: AtLevel) => `Axis from the centre line at the ${LEVEL_WORDS[level]}`,
    straighten: 'Straighten the axis',
    notCrossed: 'beyond its points',
  },
  ends: {
    onCentre: 'On the centre line a wedge runs through from edge to edge.',
    legend: 'Where it ends',
    belowThe: 'below the',
    fromCentreLine: 'from the centre line',
    upper: {
      point: 'Upper point',
      below: ({ level }: AtLevel) => `Upper point below the ${LEVEL_WORDS[level]}`,
      from: 'Level the upper point is measured from',
      across: 'Upper point from the centre line',
    },
    lower: {
      point: 'Lower point',
      below: ({ level }: AtLevel) => `Lower point below the ${LEVEL_WORDS[level]}`,
      from: 'Level the lower point is measured from',
      across: 'Lower point from the centre line',
    },
    takesNothing: 'It takes nothing yet: pull its legs apart, or give it an intake at a level.',
    endsAt: ({ level }: AtLevel) =>
      `It takes nothing at the ${LEVEL_WORDS[level]} and ends there; give it an intake there to go on.`,
    beyondEdge: 'One of its points lies beyond the edge, where it is open.',
  },
  /** One line: Fuller cup takes [intake] at [length] below the bust line. */
  cup: {
    title: 'Fuller cup',
    takes: 'takes',
    intake: 'Intake of the fuller cup',
    at: 'at',
    below: 'Fuller cup below the bust line',
    belowBustLine: 'below the bust line',
  },
  /** One line: Turn [intake] of it at the [level] to the [wedge] at the [level]. */
  turn: {
    fold: 'Turn part of it into another wedge',
    turn: 'Turn',
    intake: 'Intake to turn about the bust point',
    ofIt: 'of it at the',
    fromLevel: 'Level it is taken at',
    toThe: 'to the',
    toWedge: 'Wedge it goes to',
    atThe: 'at the',
    toLevel: 'Level it goes to',
    done: 'Turn',
    turned: ({ degrees, intake }: { degrees: number; intake: string }) =>
      `About the bust point, ${degrees}°: it takes ${intake} there.`,
    takesOnly: ({ level, intake }: AtLevel & { intake: string }) =>
      `At the ${LEVEL_WORDS[level]} this wedge takes only ${intake}.`,
    notReached: ({ wedge, level }: OfWedge & AtLevel) =>
      `The ${wedge} does not reach the ${LEVEL_WORDS[level]}.`,
  },
});
