// Bodies on which a draft shows its faults: invented numbers, each of a kind that a cutter meets and a mean body hides. No person's.

import { type Measurements, UNMEASURED } from '../../../src/engine';

/** Over-bust, bust, under-bust, waist and hip, mm. */
type Girths = readonly [number, number, number, number, number];
/** From the neck down to bust point, under-bust, waist and hip; from back neck to waist and from underarm to waist, mm. */
type Lengths = readonly [number, number, number, number, number, number];
/** Bust point to bust point, and across the shoulders, mm. */
type Widths = readonly [number, number];

const body = (
  [overBust, bust, underBust, waist, hip]: Girths,
  [neckToBust, neckToUnderBust, neckToWaist, neckToHip, backNeckToWaist, underarmToWaist]: Lengths,
  [bustPointWidth, acrossShoulder]: Widths,
): Measurements => ({
  ...UNMEASURED,
  ...{ overBust, bust, underBust, waist, hip },
  ...{ neckToBust, neckToUnderBust, neckToWaist, neckToHip, backNeckToWaist, underarmToWaist },
  ...{ bustPointWidth, acrossShoulder },
});

export const TELLING_BODIES: readonly (readonly [kind: string, body: Measurements])[] = [
  ['even', body([880, 925, 785, 725, 985], [265, 338, 396, 596, 378, 188], [186, 382])],
  ['middling', body([920, 935, 780, 745, 975], [264, 336, 384, 574, 366, 172], [188, 380])],
  ['slim, small cup', body([745, 725, 670, 620, 865], [230, 302, 366, 580, 330, 168], [168, 352])],
  ['fullest cup', body([935, 1005, 740, 725, 1030], [284, 358, 400, 616, 360, 168], [214, 366])],
  [
    'slim ribs under a full bust',
    body([970, 1125, 805, 710, 1025], [290, 368, 424, 634, 368, 172], [210, 380]),
  ],
  [
    'waist as large as the bust',
    body([935, 950, 820, 890, 1030], [296, 370, 424, 576, 400, 210], [178, 376]),
  ],
  ['apple', body([925, 970, 865, 845, 930], [258, 332, 378, 580, 346, 160], [198, 372])],
  ['pear', body([860, 850, 745, 715, 1045], [262, 328, 350, 566, 344, 164], [176, 368])],
  ['long front, hollow back', body([985, 985, 830, 790, 1035], [252, 326, 426, 646, 352, 182], [188, 368])],
  ['round back', body([885, 890, 735, 730, 1020], [250, 326, 368, 616, 402, 160], [164, 378])],
  ['tall', body([1010, 1040, 835, 860, 1125], [276, 352, 444, 640, 446, 222], [194, 384])],
  ['short', body([805, 855, 745, 705, 910], [234, 306, 352, 552, 292, 138], [174, 322])],
  ['stout', body([1085, 1110, 950, 950, 1110], [328, 402, 430, 652, 392, 188], [230, 386])],
];
