// Where the tape lies for each measurement, on the drawing of the body: x from its middle, y down from the crown.

import type { MeasurementName } from '../../../engine';

export interface TapePath {
  /** The tape where it is seen. */
  readonly d: string;
  /** The tape where the body hides it; left out where it is seen whole. */
  readonly hidden?: string;
  /** Height of the tape's middle. */
  readonly y: number;
  /** x of the place from which a line leads to its reading. */
  readonly end: number;
  /** On the back, which is then what is drawn. */
  readonly behind?: true;
}

/** Round the body. */
const round = (y: number, half: number): TapePath => ({
  d: bow(y, half, 10),
  hidden: bow(y, half, -8),
  y,
  end: half,
});

/** Across the front, from side seam to side seam. */
const across = (y: number, half: number): TapePath => ({ d: bow(y, half, 10), y, end: half });

const bow = (y: number, half: number, sag: number): string =>
  `M${-half} ${y}C${-0.6 * half} ${y + sag} ${0.6 * half} ${y + sag} ${half} ${y}`;

/** From the neck point over the bust point. */
const fromNeck = (below: string, y: number): TapePath => ({ d: `M-16 59L-24 141${below}`, y, end: -10 });

export const TAPE_PATHS: Readonly<Record<MeasurementName, TapePath>> = {
  overBust: round(116, 50),
  bust: round(138, 54),
  underBust: round(168, 51),
  waist: round(213, 40),
  highHip: round(250, 48),
  hip: round(292, 60),
  neckToBust: fromNeck('', 100),
  neckToUnderBust: fromNeck('L-23 168', 112),
  neckToWaist: fromNeck('L-23 168L-19 214', 136),
  neckToHip: fromNeck('L-23 168L-19 214L-22 294', 176),
  waistToHighHip: { d: 'M41 214C42 226 45 238 49 252', y: 232, end: 46 },
  bustPointWidth: { d: 'M-24 141H24', y: 141, end: 24 },
  acrossShoulder: { d: 'M-60 76C-38 69 38 69 60 76', y: 72, end: 60, behind: true },
  neckWidth: { d: 'M-16 58H16', y: 58, end: 16, behind: true },
  backNeckToWaist: { d: 'M0 60V213', y: 136, end: 3, behind: true },
  underarmToWaist: { d: 'M53 134C51 170 45 192 40 213', y: 176, end: 51 },
  frontOverBustArc: across(116, 49),
  frontBustArc: across(138, 53),
  frontUnderBustArc: across(168, 50),
  frontWaistArc: across(213, 39),
  frontHipArc: across(292, 59),
  shoulderLength: { d: 'M16 59L60 77', y: 68, end: 60 },
  shoulderDrop: { d: 'M60 59V77', hidden: 'M16 59H60', y: 68, end: 62 },
  chestWidth: { d: 'M-51 106C-28 111 28 111 51 106', y: 107, end: 51 },
  backWidth: { d: 'M-52 108C-28 102 28 102 52 108', y: 106, end: 52, behind: true },
  upperArm: { d: 'M56 142C61 147 69 147 74 141', hidden: 'M56 142C61 137 69 137 74 141', y: 143, end: 74 },
  hollowOfBack: { d: 'M-9 213H9', hidden: 'M0 112V288', y: 213, end: 9, behind: true },
  waistToLap: { d: 'M0 213V300', y: 257, end: 3 },
};
