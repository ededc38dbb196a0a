// What the maker should be told before cloth is cut: fit, sitting room, and the wearer's safety.

import type { Level } from '../block/lines/levels';
import type { Body } from '../body/body';
import type { FinishedSeam } from '../pieces/finishedSeam';
import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { LevelName } from '../terms/names';
import { inches, TAPE_TOLERANCE_MM } from '../terms/units';
import { type Armhole, roomForArm } from './armhole';

/** Up to this much reduction of the natural waist is a usual fashion fit; common practice, no source. */
export const USUAL_REDUCTION_MM = inches(2);
/** The usual ceiling for an experienced wearer, made to measure, whichever is less; common practice, no source. */
export const MOST_REDUCTION_MM = inches(4);
export const MOST_REDUCTION_SHARE = 0.1;

/**
 * Mates that differ by more than this before truing are not eased: their wedge should stand elsewhere. Common practice, no source.
 * mm
 */
const UNEVEN_MM = inches(0.25);

/** Mates that differ by more than this cannot be trued: an end would leave the drafted edge by half of it. Our own bound. */
const MOST_UNEVEN_MM = inches(4);

/**
 * Cautions that follow from body, style and seams.
 *
 * @param top height of the level top edge, mm
 * @param armhole of a shouldered block
 */
export function cautions(
  body: Body,
  style: Style,
  levels: readonly Level[],
  seams: readonly FinishedSeam[],
  top: number,
  armhole: Armhole | null,
): Issue[] {
  return [
    ...reductions(levels),
    ...(armhole ? roomForArm(body, armhole) : armpit(body, style, levels, top)),
    ...onBreast(style, levels, top),
    ...topLine(style, levels, top),
    ...sitting(body, style),
    ...seams
      .filter((seam) => Math.abs(seam.lengthDifference) > UNEVEN_MM + TAPE_TOLERANCE_MM)
      .map(({ seam, lengthDifference }) =>
        issue(
          'seamTooUneven',
          { lengthDifference: Math.abs(lengthDifference) },
          { seam },
          Math.abs(lengthDifference) > MOST_UNEVEN_MM ? 'error' : 'warn',
        ),
      ),
  ];
}

/** How far the garment is drawn in at each level: of the natural waist, and of the other girths. */
export function reductions(levels: readonly Drawn[]): Issue[] {
  const waist = levels.find(({ name }) => name === 'waist');
  return [...(waist ? waistReduction(waist) : []), ...reductionBeside(levels)];
}

/** A girth of the body and what the garment has more than it, mm. */
type Drawn = Pick<Level, 'name' | 'bodyGirth' | 'ease'>;

/** A note above the usual, a warning to be acknowledged above the ceiling. */
function waistReduction({ bodyGirth, ease }: Drawn): Issue[] {
  const values = { reduction: -ease, share: -ease / bodyGirth };
  const place = { level: 'waist', field: 'ease.waist' } as const;
  if (pastCeiling(-ease, bodyGirth)) return [issue('waistReductionHigh', values, place)];
  return -ease > USUAL_REDUCTION_MM + TAPE_TOLERANCE_MM ? [issue('waistReduction', values, place)] : [];
}

const pastCeiling = (reduced: number, girth: number): boolean =>
  reduced > Math.min(MOST_REDUCTION_MM, MOST_REDUCTION_SHARE * girth) + TAPE_TOLERANCE_MM;

/** There is no ceiling known for the other girths, so the waist's is taken; over the ribs it has to be acknowledged too. */
function reductionBeside(levels: readonly Drawn[]): Issue[] {
  return levels
    .filter(({ name, bodyGirth, ease }) => name !== 'waist' && pastCeiling(-ease, bodyGirth))
    .map(({ name, bodyGirth, ease }) =>
      issue(
        name === RIBS ? 'ribReductionHigh' : 'girthReductionHigh',
        { reduction: -ease, share: -ease / bodyGirth },
        { level: name, field: `ease.${name}` },
      ),
    );
}

/** Where a garment presses on the ribs. */
const RIBS: LevelName = 'underBust';

function armpit(body: Body, style: Style, levels: readonly Level[], top: number): Issue[] {
  const waist = levels.find((level) => level.name === 'waist');
  if (!waist) return [];
  const height = waist.y - top + style.topShape.underarm.beyond;
  if (body.underarmToWaist === null)
    return [issue('armpitUnknown', { height }, { field: 'underarmToWaist' })];
  if (height <= body.underarmToWaist + TAPE_TOLERANCE_MM) return [];
  return [issue('topAboveArmpit', { over: height - body.underarmToWaist }, { field: 'topAbove' })];
}

/** So far above the under-bust line an edge still lies under the breast; common practice, no source. mm */
const UNDER_BREAST_MM = inches(0.5);

/** A top edge that is a length above the waist ends on the breast where the waist is near the under-bust line. */
function onBreast({ topFrom, shoulders }: Style, levels: readonly Level[], top: number): Issue[] {
  const [bust, underBust] = [
    levels.find(({ name }) => name === 'bust'),
    levels.find(({ name }) => name === 'underBust'),
  ];
  if (topFrom !== 'waist' || shoulders || !bust || !underBust || top <= bust.y) return [];
  const over = underBust.y - top;
  if (over <= UNDER_BREAST_MM + TAPE_TOLERANCE_MM) return [];
  return [issue('topOnBreast', { over }, { field: 'topAbove' })];
}

/** A top edge that is measured from the under-bust where the draft goes without that level. */
function topLine({ topFrom, topAbove }: Style, levels: readonly Level[], top: number): Issue[] {
  const waist = levels.find(({ name }) => name === 'waist');
  if (topFrom !== 'underBust' || !waist || levels.some(({ name }) => name === 'underBust')) return [];
  return [issue('topLineEstimated', { above: waist.y - top - topAbove }, { field: 'topFrom' })];
}

/** How far the hem goes at centre front, where the lap folds. */
function sitting(body: Body, style: Style): Issue[] {
  const depth = style.hemBelow + style.hemShape.centreFront.beyond;
  if (depth <= 0) return [];
  if (body.waistToLap === null) return [issue('sittingUnknown', { depth }, { field: 'waistToLap' })];
  if (depth <= body.waistToLap + TAPE_TOLERANCE_MM) return [];
  return [issue('hemTooLongToSit', { over: depth - body.waistToLap }, { field: 'hemBelow' })];
}
