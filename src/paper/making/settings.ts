// Settings of the making list: the workshop's figures, each with a default and a range.

import { MAKING_FIGURES, type Unit } from '../../document';
import { inches } from '../../engine';

/**
 * What the deduction from the length of a bone is counted from. `betweenBindings`: the distance between the bindings. `channel`:
 * the channel from sewn edge to sewn edge, whatever the bindings.
 */
type BoneRule = 'betweenBindings' | 'channel';

/** Lengths in mm, shares as fractions, counts whole. */
export interface MakingSettings {
  readonly rule: BoneRule;
  readonly bindingDepth: number;
  readonly bindingsSlack: number;
  readonly channelSlack: number;
  readonly boneStep: number;
  readonly boneWidth: number;
  readonly bonesOnSeam: number;
  readonly bonesAtCentre: number;
  readonly bonesAtLacing: number;
  readonly buskStep: number;
  readonly eyeletSpacing: number;
  readonly waistSpacing: number;
  readonly waistReach: number;
  readonly eyeletInset: number;
  /** Diameter of an eyelet's flange. */
  readonly eyeletFlange: number;
  readonly eyeletEnd: number;
  readonly laceOpening: number;
  readonly laceEnds: number;
  readonly bindingSpare: number;
  readonly tapeEnds: number;
  readonly casingSpare: number;
  readonly fashion: number;
  readonly strength: number;
  readonly lining: number;
  readonly selvedge: number;
  readonly clothSpare: number;
}

type MakingNumber = Exclude<keyof MakingSettings, 'rule'>;

export interface MakingField {
  readonly name: MakingNumber;
  readonly group: 'bones' | 'eyelets' | 'trimmings' | 'cloth';
  readonly kind: 'length' | 'share' | 'count';
  readonly label: string;
  readonly least: number;
  readonly most: number;
}

const length = (
  group: MakingField['group'],
  name: MakingNumber,
  least: number,
  most: number,
): MakingField => ({ name, group, kind: 'length', label: MAKING_FIGURES[name], least, most });

const count = (group: MakingField['group'], name: MakingNumber, most: number): MakingField => ({
  name,
  group,
  kind: 'count',
  label: MAKING_FIGURES[name],
  least: 0,
  most,
});

const share = (group: MakingField['group'], name: MakingNumber): MakingField => ({
  name,
  group,
  kind: 'share',
  label: MAKING_FIGURES[name],
  least: 0,
  most: 0.5,
});

/** Every number of the settings, in the order of the form. */
export const MAKING_FIELDS: readonly MakingField[] = [
  length('bones', 'bindingDepth', 0, 40),
  length('bones', 'bindingsSlack', 0, 60),
  length('bones', 'channelSlack', 0, 80),
  length('bones', 'boneStep', 1, 60),
  length('bones', 'boneWidth', 3, 20),
  count('bones', 'bonesOnSeam', 2),
  count('bones', 'bonesAtCentre', 2),
  count('bones', 'bonesAtLacing', 2),
  length('bones', 'buskStep', 1, 80),
  length('eyelets', 'eyeletSpacing', 8, 30),
  length('eyelets', 'waistSpacing', 8, 30),
  length('eyelets', 'waistReach', 0, 150),
  length('eyelets', 'eyeletInset', 5, 25),
  length('eyelets', 'eyeletFlange', 5, 20),
  length('eyelets', 'eyeletEnd', 5, 60),
  length('trimmings', 'laceOpening', 0, 600),
  length('trimmings', 'laceEnds', 0, 3000),
  share('trimmings', 'bindingSpare'),
  length('trimmings', 'tapeEnds', 0, 300),
  length('trimmings', 'casingSpare', 0, 100),
  count('cloth', 'fashion', 4),
  count('cloth', 'strength', 4),
  count('cloth', 'lining', 4),
  length('cloth', 'selvedge', 0, 60),
  share('cloth', 'clothSpare'),
];

const SHARED = {
  rule: 'betweenBindings',
  /** McCunn, How to Make Sewing Patterns: bones are 1/2 in shorter than the distance between the bindings. */
  bindingsSlack: inches(0.5),
  /** A maker's published page: bones are 3 cm shorter than their channel. */
  channelSlack: 30,
  bonesOnSeam: 1,
  bonesAtCentre: 1,
  bonesAtLacing: 2,
  /** Published advice: at most 3 cm. */
  eyeletSpacing: 25,
  waistSpacing: 20,
  waistReach: 50,
  bindingSpare: 0.1,
  clothSpare: 0.05,
  fashion: 1,
  strength: 1,
  lining: 1,
} as const;

/**
 * The defaults, in round numbers of the unit; common practice where no source is named. Spiral bones are sold 4 to 15 mm wide.
 * Eyelets are within 15 mm of the edge (published advice), and their flanges clear of the bones on both sides.
 */
export function usualMaking(unit: Unit): MakingSettings {
  const byUnit = (inch: number, mm: number): number => (unit === 'in' ? inches(inch) : mm);
  return {
    ...SHARED,
    bindingDepth: byUnit(1 / 4, 6),
    boneStep: byUnit(1 / 4, 5),
    boneWidth: byUnit(1 / 4, 6),
    buskStep: byUnit(1 / 2, 10),
    eyeletInset: byUnit(9 / 16, 15),
    eyeletFlange: byUnit(3 / 8, 10),
    eyeletEnd: byUnit(1 / 2, 15),
    laceOpening: byUnit(6, 150),
    laceEnds: byUnit(36, 900),
    tapeEnds: byUnit(2, 50),
    casingSpare: byUnit(1, 25),
    selvedge: byUnit(1 / 2, 15),
  };
}

export interface MakingFault {
  readonly field: MakingField | null;
}

/**
 * Checks settings that may have been typed or stored by another version. Every number outside its range is a fault, and so is an
 * unknown rule; `field` is null for the rule, and where there are no settings.
 */
export function checkMaking(
  given: unknown,
): { ok: true; settings: MakingSettings } | { ok: false; faults: MakingFault[] } {
  if (typeof given !== 'object' || given === null) return { ok: false, faults: [{ field: null }] };
  const record = given as Readonly<Record<string, unknown>>;
  const faults: MakingFault[] = MAKING_FIELDS.filter((field) => !isWithin(field, record[field.name])).map(
    (field) => ({ field }),
  );
  if (record.rule !== 'betweenBindings' && record.rule !== 'channel') faults.push({ field: null });
  return faults.length > 0 ? { ok: false, faults } : { ok: true, settings: given as MakingSettings };
}

function isWithin({ kind, least, most }: MakingField, value: unknown): boolean {
  if (typeof value !== 'number' || !(value >= least && value <= most)) return false;
  return kind !== 'count' || Number.isInteger(value);
}
