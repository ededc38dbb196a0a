// What the engine has to say about a draft. It carries a code, a place and the numbers; the words live in the document layer.

import type { PieceIdentity, SeamIdentity } from './identity';
import type { BlockName, LevelName, Side } from './names';

/** `error`: the draft must not be cut. `warn`: the maker should look. `note`: the draft tells what it did. */
export type Severity = 'error' | 'warn' | 'note';

export type IssueCode =
  | 'measurementMissing'
  | 'measurementOutOfRange'
  | 'styleOutOfRange'
  | 'overBustEstimated'
  | 'sidesOutOfRange'
  | 'halvesNotOnFold'
  | 'centresUneven'
  | 'frontArcImpossible'
  | 'frontArcUnusual'
  | 'levelsOutOfOrder'
  | 'levelLeftOut'
  | 'girthUsedUp'
  | 'bustPointOffBlock'
  | 'tooManyWedges'
  | 'panelTooNarrow'
  | 'panelCrossed'
  | 'intakeNotPlaced'
  | 'dartTooShort'
  | 'dartTakesNothing'
  | 'dartEndsAtEdge'
  | 'dartOffPanel'
  | 'sidePanelAtCentre'
  | 'shoulderNeedsTop'
  | 'shoulderNeedsSideSeam'
  | 'shoulderWedges'
  | 'shoulderOffBlock'
  | 'armholeEstimated'
  | 'armholeLength'
  | 'armholeTight'
  | 'topAboveArmpit'
  | 'armpitUnknown'
  | 'garmentTooShort'
  | 'edgeTooSteep'
  | 'hemTooLongToSit'
  | 'sittingUnknown'
  | 'seamTooUneven'
  | 'buskNeedsStraightCentre'
  | 'foldBecomesSeam'
  | 'noOpening'
  | 'sideZipNeedsSeam'
  | 'zipNeedsAllowance'
  | 'waistReduction'
  | 'waistReductionHigh'
  | 'ribReductionHigh'
  | 'girthReductionHigh'
  | 'extraHasNoRoom'
  | 'hemNeedsAllowance'
  | 'hemTurnsShort'
  | 'cutLineUnsure';

/** Where an issue stands; only the parts that apply are there. */
interface Place {
  readonly field?: string;
  readonly block?: BlockName;
  /** Which half, where the two differ. */
  readonly side?: Side;
  readonly piece?: PieceIdentity;
  readonly level?: LevelName;
  /** Id of a wedge of the style. */
  readonly wedge?: string;
  readonly seam?: SeamIdentity;
}

export interface Issue {
  readonly code: IssueCode;
  readonly severity: Severity;
  readonly at: Place;
  /** Numbers the sentence needs; lengths in mm, shares as fractions. */
  readonly values: Readonly<Record<string, number>>;
}

/** Makes an issue; `at` and `values` may be left out where there is nothing to say. */
export function issue(
  code: IssueCode,
  severity: Severity,
  at: Place = {},
  values: Readonly<Record<string, number>> = {},
): Issue {
  return { code, severity, at, values };
}
