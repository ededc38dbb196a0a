// The cutting table's tools, its handles by name, and the girth ledger beside it.

import type { LevelName } from '../../../../engine';
import { catalogue } from '../../catalogue';
import { LEVEL_WORDS } from '../../words/levels';

interface AtLevel {
  readonly level: LevelName;
}

interface OfWedge {
  /** The wedge's name, to begin a sentence. */
  readonly wedge: string;
}

interface FromLevel extends AtLevel {
  /** How far, with its unit. */
  readonly length: string;
}

export const CANVAS = catalogue({
  empty: 'The blocks are drawn as soon as the tape’s numbers and the garment’s allow it.',
  joinedSide: 'no side seam',
  keys: 'Page Down and Page Up go from handle to handle; arrow keys move the one in hand.',
  /** Where a handle that is pulled comes to rest; empty where that is no place of its own. */
  places: {
    grid: '',
    free: '',
    bustLine: 'on the bust-point line',
    mirrored: 'across from a wedge of the other block',
    level: 'on a level line',
    even: 'even with another dart',
    straight: 'where the axis is straight',
    start: 'where it was',
    limit: 'as far as it can be cut',
  },
  /** Which of the half blocks a narrow window shows. */
  shown: { legend: 'Blocks shown', front: 'Front', back: 'Back', both: 'Both' },
  levels: {
    down: ({ length }: { length: string }) => `${length} down`,
    outOfScale: 'not to scale',
  },
  tools: {
    label: 'Table',
    zoomOut: 'Zoom out',
    zoomIn: 'Zoom in',
    /** The scale of the drawing, of real size. */
    scale: ({ percent }: { percent: string }) => `${percent} %`,
    fit: 'Whole drawing',
    realSize: 'Real size',
    measureScreen: 'Measure the screen again',
    addWedge: 'Add a wedge here',
    adding: 'Press on the panel that the new wedge is to part; Escape leaves it.',
    bend: 'Bend the axis',
    bending: 'Pull the points on the wedge’s axis to bend it.',
    worn: 'See it as worn',
    save: 'Save to compare',
    more: 'More tools',
    compare: ({ name, day }: { name: string; day: string }) => `Compare with ${name}, saved ${day}`,
    compareUnnamed: ({ day }: { day: string }) => `Compare with ${day}`,
    comparedName: 'Dotted lines: name of what was saved',
  },
  handles: {
    /** `under`: how far under that line its usual place is, with the unit; null at the line. */
    topEdge: ({ level, under }: AtLevel & { under: string | null }) =>
      under === null
        ? `Top edge above the ${LEVEL_WORDS[level]} line`
        : `Top edge above its usual place, ${under} under the ${LEVEL_WORDS[level]} line`,
    hem: 'Hem below the waist line',
    axis: ({ wedge }: OfWedge) => `${wedge}: distance from the centre line`,
    axisAt: ({ wedge, level }: OfWedge & AtLevel) =>
      `${wedge}: axis from the centre line at the ${LEVEL_WORDS[level]}`,
    point: {
      upper: ({ wedge }: OfWedge) => `${wedge}, upper point`,
      lower: ({ wedge }: OfWedge) => `${wedge}, lower point`,
    },
    pointAcross: {
      upper: ({ wedge }: OfWedge) => `${wedge}, upper point: distance from the centre line`,
      lower: ({ wedge }: OfWedge) => `${wedge}, lower point: distance from the centre line`,
    },
    opening: ({ wedge }: OfWedge) => `${wedge}: where it opens, below the armhole`,
    short: ({ wedge }: OfWedge) => `${wedge}: how far its point ends short of the bust point`,
    intake: ({ wedge, level }: OfWedge & AtLevel) => `${wedge}: intake at the ${LEVEL_WORDS[level]}`,
    /** Both legs of a wedge are the same number: told apart by where they are. */
    leg: {
      inner: ({ intake }: { intake: string }) => `${intake}, inner leg`,
      outer: ({ intake }: { intake: string }) => `${intake}, outer leg`,
    },
    onLevel: ({ level }: AtLevel) => `on the ${LEVEL_WORDS[level]} line`,
    aboveLevel: ({ length, level }: FromLevel) => `${length} above the ${LEVEL_WORDS[level]}`,
    belowLevel: ({ length, level }: FromLevel) => `${length} below the ${LEVEL_WORDS[level]}`,
  },
  ledger: {
    title: 'Girth ledger',
    asAsked: 'as asked',
    /** What fittings add to a girth, with its sign. */
    altered: ({ length }: { length: string }) => `altered ${length}`,
    /** Stands for a girth that the garment does not have. */
    none: '–',
    off: ({ difference }: { difference: string }) => `${difference} off`,
    heads: { ease: 'Ease' },
    body: ({ length }: { length: string }) => `body ${length}`,
    /** By what part of the body the garment is smaller. */
    takenIn: ({ percent }: { percent: string }) => `less ${percent} %`,
    percentToo: 'The ease can be typed in per cent of the body too, as -7 %.',
    ease: 'ease',
    /** Of a girth whose row opens when it is pressed. */
    open: ({ level, sewn, remarks }: AtLevel & { sewn: string; remarks: readonly string[] }) =>
      `${[`${LEVEL_WORDS[level]} ${sewn}`, ...remarks].join(', ')}: ease and what is taken in`,
    /** On a girth that is not as asked, where there is no room for words. */
    offSign: '≠',
    easeAt: ({ level }: AtLevel) => `Ease at the ${LEVEL_WORDS[level]}`,
    /** What was taken in from the bust. */
    wedges: ({ length }: { length: string }) => `wedges take ${length}`,
    side: ({ length }: { length: string }) => `side seams ${length}`,
  },
});
