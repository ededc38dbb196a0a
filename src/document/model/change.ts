// What a step of the history did, as a code with the values its sentence needs.

import type {
  Allowances,
  Alteration,
  BlockName,
  BodySides,
  EdgeNodeName,
  Extras,
  LevelName,
  MeasurementName,
  StylePath,
  TopLevel,
} from '../../engine';
import type { DraftNotes } from './book';
import { delta } from './delta';

/** A wedge by where it stood when it was changed; `number` counts those of a block with the same place, from the centre. */
export interface WedgePlace {
  readonly block: BlockName;
  /** `inner`: between centre line and bust point. */
  readonly place: 'centre' | 'inner' | 'bustPoint' | 'side';
  readonly kind: 'wedge' | 'dart';
  readonly number: number;
}

/** Changes told by their code alone. */
type PlainCode =
  // What was shown in passing when the page was left.
  | 'passingChangeKept'
  | 'backupRestored'
  | 'unitSet'
  | 'clientAdded'
  | 'clientRenamed'
  | 'draftAdded'
  | 'draftRenamed'
  | 'measuringDaySet'
  | 'measurementSetBegun'
  | 'styleRenamed'
  | 'cautionAcknowledged'
  | 'newRulesRead'
  | 'comparisonSaved'
  | 'comparisonNamed'
  | 'topLineSet'
  | 'allBalanced'
  | 'wedgeLocked'
  | 'wedgeBalanced'
  | 'axisStraightened'
  | 'cupSet'
  | 'fittingAdded'
  | 'fittingRemoved'
  | 'fittingDated'
  | 'fittingNoted'
  | 'fittingsCarriedOver'
  | 'dartsBelowShoulders';

/** Changes of a client or a draft; `name` is hers or its own. */
type NamedCode =
  | 'clientOpened'
  | 'clientCopied'
  | 'clientArchived'
  | 'clientBroughtBack'
  | 'clientRemoved'
  | 'draftOpened'
  | 'draftCopied'
  | 'draftRemoved';

/** Changes of a style as a whole. `styleLaid`: it took the place of the open draft's style. */
type StyleCode = 'styleLaid' | 'styleKept' | 'styleRead' | 'styleRemoved';

type MeasuringChange =
  | { readonly code: 'measurementSet' | 'estimateTaken'; readonly measurement: MeasurementName }
  | { readonly code: 'numbersPasted' | 'clientsRead'; readonly count: number }
  | { readonly code: 'readingSet'; readonly measurement: MeasurementName; readonly which: 1 | 2 }
  | { readonly code: 'sidesSet'; readonly differing: boolean }
  | { readonly code: 'leftHalfSet'; readonly level: keyof BodySides['leftShare'] }
  | { readonly code: 'rightLowerSet'; readonly level: keyof BodySides['rightLower'] };

/** The paths of the lengths of the pieces beside the panels. */
export type ExtraLengthPath = Extract<StylePath, `extras.${string}.${string}`>;

/** The paths of the numbers in one group of the style, from that group on. */
type NumberIn<Group extends string> = StylePath extends infer Path
  ? Path extends `${Group}.${infer Rest}`
    ? Rest
    : never
  : never;

type GarmentChange =
  | { readonly code: 'garmentLengthSet'; readonly field: 'topAbove' | 'hemBelow' | 'closure.lacingGap' }
  | { readonly code: 'centreSet'; readonly block: BlockName }
  | { readonly code: 'sidePanelSet'; readonly joined: boolean }
  | { readonly code: 'sideZipSet'; readonly zipped: boolean }
  | { readonly code: 'rightWedgesSet'; readonly own: boolean }
  | { readonly code: 'easeSet' | 'panelWidthSet' | 'frontShareSet'; readonly level: LevelName }
  | { readonly code: 'topEdgeMoved'; readonly from: TopLevel }
  | { readonly code: 'hemMoved' }
  | { readonly code: 'edgeShapeSet'; readonly edge: 'top' | 'hem' }
  | { readonly code: 'edgeNodeSet'; readonly edge: 'top' | 'hem'; readonly node: EdgeNodeName }
  | { readonly code: 'shouldersSet'; readonly kind: 'strapless' | 'shoulders' | 'band' }
  | { readonly code: 'shoulderNumberSet'; readonly number: NumberIn<'shoulders'> }
  | { readonly code: 'extraSet'; readonly extra: keyof Extras }
  | { readonly code: 'extraLengthSet'; readonly path: ExtraLengthPath }
  | { readonly code: 'allowanceSet'; readonly edge: keyof Allowances }
  | { readonly code: 'turnedHemSet'; readonly turned: boolean };

/** Changes of what was fitted and written down of a draft; `on` tells whether it was switched on. */
type FittingChange =
  | { readonly code: 'fittingSwitched'; readonly on: boolean }
  | {
      readonly code: 'alterationAdded' | 'alterationSet' | 'alterationRemoved';
      readonly kind: Alteration['kind'];
    }
  | { readonly code: 'alterationSwitched'; readonly kind: Alteration['kind']; readonly on: boolean }
  | { readonly code: 'draftNoted'; readonly note: keyof DraftNotes };

/** Changes of one wedge. Those typed in its card tell the level alone, those of its handles the wedge too. */
type WedgeChange =
  | { readonly code: 'wedgeAdded'; readonly block: BlockName }
  | { readonly code: 'intakeSet' | 'axisSet'; readonly level: LevelName }
  | {
      readonly code: 'wedgeRemoved' | 'intakeTurned' | 'wedgeMoved' | 'upperEndSet';
      readonly wedge: WedgePlace | null;
    }
  | {
      readonly code: 'wedgeEndsSet';
      readonly wedge: WedgePlace | null;
      readonly ends: 'through' | 'openAtHem' | 'openAtTop' | 'closed';
    }
  | {
      readonly code: 'intakePulled' | 'axisBent';
      readonly wedge: WedgePlace | null;
      readonly level: LevelName;
    }
  | {
      readonly code: 'dartPointSet' | 'dartPointPulled' | 'dartSlanted';
      readonly wedge: WedgePlace | null;
      readonly end: 'upper' | 'lower';
    };

/** One kind of change and its values; `wedge` is null where the style had no such wedge. */
export type Change =
  | { readonly code: PlainCode }
  | { readonly code: NamedCode; readonly name: string }
  | { readonly code: StyleCode; readonly title: string }
  | MeasuringChange
  | GarmentChange
  | FittingChange
  | WedgeChange;

export type ChangeCode = Change['code'];

/** The change with one of these codes. */
export type ChangeOf<Code extends ChangeCode> = Change & { readonly code: Code };

/** Same code and same values. */
export const sameChange = (one: Change, other: Change): boolean => delta(one, other) === null;
