// The faults of a client or style file that is read from outside.

import { catalogue } from '../catalogue';

/** What a value of a JSON file is. */
export type ValueKind =
  | 'null'
  | 'list'
  | 'object'
  | 'string'
  | 'number'
  | 'boolean'
  | 'undefined'
  | 'bigint'
  | 'symbol'
  | 'function';

const KINDS: Readonly<Record<ValueKind, string>> = {
  null: 'null',
  list: 'a list',
  object: 'an object',
  string: 'a string',
  number: 'a number',
  boolean: 'a boolean',
  undefined: 'a undefined',
  bigint: 'a bigint',
  symbol: 'a symbol',
  function: 'a function',
};

interface Kind {
  /** What stands in the file instead. */
  readonly kind: ValueKind;
}

interface Names {
  /** The names there are. */
  readonly names: readonly string[];
}

export const FILES = catalogue({
  notJson: ({ reason }: { reason: string }) => `This is not JSON (${reason}).`,
  unitUnknown: 'The unit of a file is "mm" or "in".',

  field: {
    unknown: ({ names }: Names) => `There is no field of this name here; there are ${names.join(', ')}.`,
    notObject: ({ kind }: Kind) => `This must be an object, not ${KINDS[kind]}.`,
    notNumber: ({ kind }: Kind) => `This must be a number, not ${KINDS[kind]}.`,
    notBoolean: ({ kind }: Kind) => `This must be true or false, not ${KINDS[kind]}.`,
    notOneOf: ({ names }: Names) => `This must be one of ${names.join(', ')}.`,
    notInches: ({ kind }: Kind) =>
      `This must be a number of inches or a text such as "34 1/2", not ${KINDS[kind]}.`,
    notMm: ({ kind }: Kind) => `This must be a number of mm, not ${KINDS[kind]}.`,
    textNotMm: ({ kind }: Kind) =>
      `This must be a number of mm, not ${KINDS[kind]}; fractions as text need "unit": "in".`,
  },

  style: {
    notObject: ({ kind }: Kind) => `A style must be an object, not ${KINDS[kind]}.`,
    wedgesNotList: ({ kind }: Kind) => `The wedges must be a list, not ${KINDS[kind]}.`,
    wedgeNotObject: ({ kind }: Kind) => `A wedge must be an object, not ${KINDS[kind]}.`,
    wedgeFieldMissing: 'Each wedge needs this.',
    wedgeIdMissing: 'Each wedge needs an id of its own, a text.',
    wedgeIdTwice: ({ id }: { id: string }) => `Another wedge has the id “${id}”.`,
  },

  fittings: {
    notObject: ({ kind }: Kind) => `A file of fittings must be an object, not ${KINDS[kind]}.`,
    notList: ({ kind }: Kind) => `This must be a list, not ${KINDS[kind]}.`,
    tooFew: ({ least }: { least: number }) =>
      least === 1 ? 'This needs one entry at the least.' : `This needs ${least} entries at the least.`,
    notText: ({ kind }: Kind) => `This must be a text, not ${KINDS[kind]}.`,
    notDate: 'A day is written as "2026-11-26".',
    missing: 'This is missing.',
    outOfSpan: ({ most, unit }: { most: number; unit: 'mm' | 'in' }) =>
      `This must be from −${most} to ${most} ${unit}.`,
    seamUnknown:
      'A seam is named by its two panels, as ["front-2", "front-3"] or ["front-2", "side"], a dart by its wedge, as ["front-dart"].',
    placeUnknown:
      'A place is "centreFront", "bustLine", "side", "centreBack", or a seam, as ["front-2", "front-3"].',
    heightUnknown: 'A height is given as a "level", as "edge" or as "belowWaist", one of the three.',
    betweenUnknown: ({ names }: Names) =>
      `This must be two of these, the upper one first: ${names.join(', ')}.`,
  },

  client: {
    notObject: ({ kind }: Kind) => `A client must be an object, not ${KINDS[kind]}.`,
    nameMissing: 'The client needs a name: it stands on every sheet.',
    measurementsMissing: 'The measurements are missing.',
    measurementsNotObject: ({ kind }: Kind) => `The measurements must be an object, not ${KINDS[kind]}.`,
    measurementUnknown: ({ names }: Names) =>
      `There is no measurement of this name; there are ${names.join(', ')}.`,
    estimatedNotList: ({ kind }: Kind) => `This must be a list of names, not ${KINDS[kind]}.`,
    estimatedNotGiven: ({ name }: { name: string }) => `There is no ${name} among the measurements.`,
  },
});
