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
  ['even', body([905, 955, 810, 745, 1015], [272, 348, 408, 614, 390, 194], [192, 394])],
  ['middling', body([890, 900, 755, 720, 940], [254, 324, 370, 554, 354, 166], [182, 366])],
  ['slim, small cup', body([775, 755, 695, 645, 900], [240, 314, 380, 604, 344, 174], [174, 366])],
  ['fullest cup', body([905, 975, 720, 705, 1000], [276, 348, 388, 598, 350, 162], [208, 356])],
  [
    'slim ribs under a full bust',
    body([935, 1085, 775, 685, 990], [280, 356, 410, 612, 356, 166], [202, 366]),
  ],
  [
    'waist as large as the bust',
    body([970, 985, 850, 920, 1065], [306, 382, 438, 596, 414, 218], [184, 390]),
  ],
  ['apple', body([960, 1010, 900, 880, 965], [268, 346, 394, 604, 360, 166], [206, 386])],
  ['pear', body([885, 875, 765, 735, 1075], [270, 338, 360, 582, 354, 168], [182, 380])],
  ['long front, hollow back', body([955, 955, 805, 765, 1005], [244, 316, 414, 626, 342, 176], [182, 356])],
  ['round back', body([915, 920, 760, 755, 1055], [258, 338, 380, 638, 416, 166], [170, 392])],
  ['tall', body([980, 1010, 810, 835, 1090], [268, 342, 430, 620, 432, 216], [188, 372])],
  ['short', body([835, 890, 775, 735, 945], [244, 318, 366, 574, 304, 144], [180, 334])],
  ['stout', body([1050, 1075, 920, 920, 1075], [318, 390, 418, 632, 380, 182], [224, 374])],
];
