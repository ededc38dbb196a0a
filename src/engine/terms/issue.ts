// What the engine reports about a draft: a code, a place and the numbers of the sentence. The sentences are the document layer's.

import type { PieceIdentity, SeamIdentity } from './identity';
import type { BlockName, LevelName, Side } from './names';

/** `error`: the draft must not be cut. `warn`: the maker should look. `note`: the draft tells what it did. */
export type Severity = 'error' | 'warn' | 'note';

interface IssueKind {
  readonly severity: Severity;
  /** The severity that single issues of this code have instead. */
  readonly otherSeverity?: Severity;
  /** The numbers that the sentence needs: lengths in mm, angles in rad, shares as fractions. */
  readonly values: readonly string[];
  /** Some issues of this code have none of the values, and another sentence. */
  readonly valuesOptional?: true;
}

/** Every code, with its severity and the names of its values. */
export const ISSUE_KINDS = {
  measurementMissing: { severity: 'error', values: [] },
  measurementOutOfRange: { severity: 'error', values: ['least', 'most'] },
  styleOutOfRange: { severity: 'error', values: ['least', 'most'], valuesOptional: true },
  overBustEstimated: { severity: 'note', values: ['overBust', 'within'] },
  sidesOutOfRange: { severity: 'error', values: ['least', 'most'] },
  halvesNotOnFold: { severity: 'note', values: [] },
  centresUneven: { severity: 'error', values: ['apart'] },
  frontArcImpossible: { severity: 'error', values: ['arc', 'girth', 'least', 'most'] },
  frontArcUnusual: { severity: 'warn', values: ['arc', 'girth', 'least', 'most'] },
  levelsOutOfOrder: { severity: 'error', values: [] },
  levelLeftOut: { severity: 'warn', values: [] },
  girthUsedUp: { severity: 'error', values: ['target'] },
  bustPointOffBlock: { severity: 'error', values: [] },
  tooManyWedges: { severity: 'error', values: ['count', 'most'] },
  panelTooNarrow: { severity: 'error', values: ['width', 'least'] },
  panelCrossed: { severity: 'error', values: ['width', 'least'], valuesOptional: true },
  intakeNotPlaced: { severity: 'note', values: ['left'] },
  wedgesTakeLess: { severity: 'note', values: ['least'] },
  wedgesMovedIn: { severity: 'note', values: ['least'] },
  panelsUnlike: { severity: 'warn', values: ['width', 'beside'] },
  dartLeftOut: { severity: 'note', values: [] },
  dartClosedEarly: { severity: 'note', values: [] },
  dartTooShort: { severity: 'error', values: ['least'] },
  dartTakesNothing: { severity: 'warn', values: [] },
  dartEndsAtEdge: { severity: 'error', values: [] },
  sideDartOffSeam: { severity: 'error', values: ['least', 'most'] },
  sideDartMeets: { severity: 'error', values: [] },
  dartOffPanel: { severity: 'error', values: [] },
  sidePanelAtCentre: { severity: 'error', values: [] },
  shoulderNeedsTop: { severity: 'error', values: [] },
  shoulderNeedsSideSeam: { severity: 'error', values: [] },
  shoulderWedges: { severity: 'error', values: [] },
  shoulderOffBlock: { severity: 'error', values: [] },
  armholeEstimated: { severity: 'note', values: ['within'] },
  armholeLength: { severity: 'note', values: ['length', 'upperArm'] },
  armholeTight: { severity: 'warn', values: ['length', 'upperArm', 'least'] },
  topAboveArmpit: { severity: 'warn', values: ['over'] },
  topLineEstimated: { severity: 'warn', values: ['above'] },
  topOnBreast: { severity: 'warn', values: ['over'] },
  armpitUnknown: { severity: 'note', values: ['height'] },
  garmentTooShort: { severity: 'error', values: ['height', 'least'] },
  edgeTooSteep: { severity: 'error', values: [] },
  hemTooLongToSit: { severity: 'warn', values: ['over'] },
  sittingUnknown: { severity: 'note', values: ['depth'] },
  seamTooUneven: { severity: 'warn', otherSeverity: 'error', values: ['lengthDifference'] },
  seamBendsTightly: { severity: 'warn', values: ['radius', 'least'] },
  edgeBendsTightly: { severity: 'warn', values: ['radius', 'least'] },
  seamLeansFar: { severity: 'warn', values: ['angle'] },
  armholeTip: { severity: 'warn', values: ['angle'] },
  underarmBeak: { severity: 'warn', values: ['angle'] },
  letOutPastAllowance: { severity: 'note', values: ['out', 'allowance'] },
  sidePushedOut: { severity: 'note', values: ['by'] },
  bandUneven: { severity: 'warn', values: ['bands', 'panels'] },
  buskNeedsStraightCentre: { severity: 'error', values: [] },
  foldBecomesSeam: { severity: 'note', values: [] },
  noOpening: { severity: 'warn', values: [] },
  sideZipNeedsSeam: { severity: 'error', values: [] },
  zipNeedsAllowance: { severity: 'warn', values: ['least'] },
  waistReduction: { severity: 'note', values: ['reduction', 'share'] },
  waistReductionHigh: { severity: 'warn', values: ['reduction', 'share'] },
  ribReductionHigh: { severity: 'warn', values: ['reduction', 'share'] },
  girthReductionHigh: { severity: 'warn', values: ['reduction', 'share'] },
  sleeveNeedsArm: { severity: 'warn', values: [] },
  sleeveNeedsTop: { severity: 'warn', values: [] },
  extraHasNoRoom: { severity: 'warn', values: [] },
  hemNeedsAllowance: { severity: 'warn', values: [] },
  hemTurnsShort: { severity: 'warn', values: [] },
  cutLineUnsure: { severity: 'error', values: [] },
} as const satisfies Readonly<Record<string, IssueKind>>;

type IssueKinds = typeof ISSUE_KINDS;

export type IssueCode = keyof IssueKinds;

type ValueName = IssueKinds[IssueCode]['values'][number];

/** The named values and no other. */
type ValuesNamed<Name extends ValueName> = { readonly [Needed in Name]: number } & {
  readonly [Other in Exclude<ValueName, Name>]?: never;
};

type ValuesByCode = {
  readonly [Code in IssueCode]:
    | ValuesNamed<IssueKinds[Code]['values'][number]>
    | (IssueKinds[Code] extends { readonly valuesOptional: true } ? ValuesNamed<never> : never);
};

/** The numbers that the sentence of a code needs. */
export type IssueValues<Code extends IssueCode> = ValuesByCode[Code];

type SeverityOf<Kind extends IssueKind> =
  | Kind['severity']
  | (Kind extends { readonly otherSeverity: infer Other extends Severity } ? Other : never);

/** An edge of a piece that is sewn to no other. */
export type EdgeName = 'top' | 'neckline' | 'hem' | 'armhole';

/** Where an issue stands; only the parts that apply are there. */
interface Place {
  readonly field?: string;
  readonly block?: BlockName;
  /** Which half, where the two differ. */
  readonly side?: Side;
  readonly piece?: PieceIdentity;
  readonly edge?: EdgeName;
  readonly level?: LevelName;
  /** Id of a wedge of the style. */
  readonly wedge?: string;
  readonly seam?: SeamIdentity;
}

/** An issue of one of these codes, of any code where none is given: its values go by its code. */
export type Issue<Codes extends IssueCode = IssueCode> = {
  readonly [Code in Codes]: {
    readonly code: Code;
    readonly severity: SeverityOf<IssueKinds[Code]>;
    readonly at: Place;
    readonly values: IssueValues<Code>;
  };
}[Codes];

/** Makes an issue, of the severity that its code has where none is given. */
export function issue<Code extends IssueCode>(
  code: Code,
  values: IssueValues<Code>,
  at: Place,
  severity: Severity & SeverityOf<IssueKinds[Code]> = ISSUE_KINDS[code].severity,
): Issue<Code> {
  return { code, severity, at, values } as Issue<Code>;
}
