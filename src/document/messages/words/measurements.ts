// Each measurement by its name, and how the tape is laid for it.

import type { MeasurementName } from '../../../engine';
import { catalogue } from '../catalogue';

export interface MeasurementWords {
  /** With a capital, as it stands on its own. */
  readonly label: string;
  /** As it is written within a sentence. */
  readonly name: string;
  /** One sentence: where the tape goes. */
  readonly how: string;
}

export const MEASUREMENT_WORDS: Readonly<Record<MeasurementName, MeasurementWords>> = catalogue({
  overBust: {
    label: 'Over-bust girth',
    name: 'over-bust girth',
    how: 'Round the chest close under the arms and above the fullness of the bust, the tape level and snug.',
  },
  bust: {
    label: 'Bust girth',
    name: 'bust girth',
    how: 'Round the fullest part of the bust, under the arms and level at the back, while she breathes as usual.',
  },
  underBust: {
    label: 'Under-bust girth',
    name: 'under-bust girth',
    how: 'Round the ribs straight below the bust, the tape level and snug.',
  },
  waist: {
    label: 'Waist girth',
    name: 'waist girth',
    how: 'Tie a tape where she bends; that is the waist of the draft. Measure along it without pulling in.',
  },
  highHip: {
    label: 'High hip girth',
    name: 'high hip girth',
    how: 'Round the body half way between the tied waist tape and the hip line, over the hip bones.',
  },
  hip: {
    label: 'Hip girth',
    name: 'hip girth',
    how: 'Round the fullest part of the seat, heels together, the tape level.',
  },
  neckToBust: {
    label: 'Neck to bust point',
    name: 'neck to bust point',
    how: 'From where the shoulder line meets the neck, straight down the front to the bust point.',
  },
  neckToUnderBust: {
    label: 'Neck to under-bust',
    name: 'neck to under-bust',
    how: 'From the same neck point over the bust point to the line straight below the bust.',
  },
  neckToWaist: {
    label: 'Neck to waist, front',
    name: 'neck to waist, front',
    how: 'From the same neck point over the bust point to the tied waist tape.',
  },
  neckToHip: {
    label: 'Neck to hip, front',
    name: 'neck to hip, front',
    how: 'From the same neck point over the bust point and the waist tape to the height of the hip girth.',
  },
  waistToHighHip: {
    label: 'Waist to high hip',
    name: 'waist to high hip',
    how: 'Down the side from the tied waist tape to the line where the high hip girth was taken; else that line is half way to the hip.',
  },
  bustPointWidth: {
    label: 'Bust point to bust point',
    name: 'bust point to bust point',
    how: 'Straight across from one bust point to the other, the tape not following the hollow between them.',
  },
  acrossShoulder: {
    label: 'Across back shoulder',
    name: 'across back shoulder',
    how: 'Across the back from the outer end of one shoulder to the outer end of the other.',
  },
  neckWidth: {
    label: 'Neck width',
    name: 'neck width',
    how: 'Straight across the back of the neck between the two points where shoulder line and neck meet.',
  },
  backNeckToWaist: {
    label: 'Back neck to waist',
    name: 'back neck to waist',
    how: 'From the bone at the nape of the neck down the middle of the back to the tied waist tape.',
  },
  underarmToWaist: {
    label: 'Underarm to waist',
    name: 'underarm to waist',
    how: 'From close under the arm straight down the side to the tied waist tape, the arm hanging.',
  },
  waistToLap: {
    label: 'Waist to lap, seated',
    name: 'waist to lap, seated',
    how: 'Sitting upright on a firm chair, from the tied waist tape down the front to the top of the thigh.',
  },
  hollowOfBack: {
    label: 'Hollow of the back',
    name: 'hollow of the back',
    how: 'Hold a straight rule upright against upper back and seat; from the rule straight forwards to the tied waist tape.',
  },
  frontOverBustArc: {
    label: 'Front over-bust arc',
    name: 'front over-bust arc',
    how: 'At the height of the over-bust girth across the front above the bust, from the right side mark to the left.',
  },
  frontBustArc: {
    label: 'Front bust arc',
    name: 'front bust arc',
    how: 'Mark both sides straight below the middle of the armpit. From the right side mark level across the fullest part of the bust to the left side mark.',
  },
  frontUnderBustArc: {
    label: 'Front under-bust arc',
    name: 'front under-bust arc',
    how: 'At the height of the under-bust girth across the front close under the bust, from the right side mark to the left.',
  },
  frontWaistArc: {
    label: 'Front waist arc',
    name: 'front waist arc',
    how: 'Along the tied waist tape across the front, from the right side mark to the left, where the side seams are to be.',
  },
  frontHipArc: {
    label: 'Front hip arc',
    name: 'front hip arc',
    how: 'At the height of the hip girth across the front, from where the right side seam is to be to the left one.',
  },
  shoulderLength: {
    label: 'Shoulder length',
    name: 'shoulder length',
    how: 'From where the shoulder line meets the neck to the outer end of the shoulder, the arm hanging.',
  },
  shoulderDrop: {
    label: 'Shoulder drop',
    name: 'shoulder drop',
    how: 'How much lower the outer end of the shoulder lies than the point where the shoulder line meets the neck, straight down.',
  },
  chestWidth: {
    label: 'Chest width',
    name: 'chest width',
    how: 'Across the front above the bust, half way down the armhole, from the crease of one arm to that of the other.',
  },
  backWidth: {
    label: 'Back width',
    name: 'back width',
    how: 'Across the back over the shoulder blades, half way down the armhole, from the crease of one arm to that of the other.',
  },
  upperArm: {
    label: 'Upper arm girth',
    name: 'upper arm girth',
    how: 'Round the fullest part of the upper arm, the arm hanging, the tape not tight.',
  },
});
