// Reads a style from a file: its fields replace those of the default style.

import {
  BACK_CLOSURES,
  balancedWedge,
  DART_LEVELS,
  type DartPoint,
  DEFAULT_STYLE,
  draftWhole,
  EDGE_NODES,
  type EdgeShape,
  type Extras,
  FRONT_CLOSURES,
  type Style,
  TOP_LEVELS,
  USUAL_BAND_ABOVE,
  USUAL_CUP,
  USUAL_EXTRAS,
  USUAL_SHOULDERS,
  type Wedge,
} from '../../engine';
import { FILES } from '../messages/files';
import { issueSentence } from '../messages/issues';
import { isObject, type JsonObject } from '../model/isObject';
import { DEMO_CLIENT } from '../presets/demo';
import { type Fault, type Read, refuse } from './fault';
import { kindOf } from './json';
import { PartReader } from './partReader';
import { type FileUnit, readUnit } from './readLength';

export interface FileStyle {
  /** The name of the draft on paper. */
  readonly title: string;
  readonly style: Style;
}

/** Reads a style; each thing wrong with it, and each number out of its span, is a fault at its field. */
export function readStyle(data: unknown, title: string): Read<FileStyle> {
  if (!isObject(data)) return refuse('', FILES.style.notObject({ kind: kindOf(data) }));
  const unit = readUnit(data.unit);
  if (!unit.ok) return unit;
  const faults: Fault[] = [];
  const style = mergeStyle(data, new PartReader(unit.value, faults));
  if (faults.length === 0) faults.push(...outOfSpan(style, unit.value));
  if (faults.length > 0) return { ok: false, faults };
  const named = typeof data.name === 'string' && data.name.trim() !== '';
  return { ok: true, value: { title: named ? String(data.name) : title, style } };
}

function mergeStyle(data: JsonObject, read: PartReader): Style {
  const base = DEFAULT_STYLE;
  read.knownOnly(data, '', [
    'unit',
    'name',
    'joinedSide',
    'turnedHem',
    'shoulders',
    'rightWedges',
    'extras',
    ...Object.keys(base),
  ]);
  const closure = read.group(data, 'closure', ['front', 'back', 'lacingGap', 'sideZip']);
  // The id of a wedge is unique among the wedges of both sides.
  const ids = new Set<string>(data.wedges === undefined ? base.wedges.map(({ id }) => id) : []);
  return {
    ease: read.numbers(data, 'ease', base.ease, 'length'),
    frontShare: read.numbers(data, 'frontShare', base.frontShare, 'share'),
    overBustAbove: read.number(data, 'overBustAbove', '', base.overBustAbove, 'length'),
    topFrom: read.word(data, 'topFrom', '', TOP_LEVELS, base.topFrom),
    topShape: readEdge(data, 'topShape', read),
    hemShape: readEdge(data, 'hemShape', read),
    topAbove: read.number(data, 'topAbove', '', base.topAbove, 'length'),
    hemBelow: read.number(data, 'hemBelow', '', base.hemBelow, 'length'),
    closure: {
      front: read.word(closure, 'front', 'closure.', FRONT_CLOSURES, base.closure.front),
      back: read.word(closure, 'back', 'closure.', BACK_CLOSURES, base.closure.back),
      ...(closure.sideZip === undefined ? {} : { sideZip: read.flag(closure, 'sideZip', 'closure.', false) }),
      lacingGap: read.number(closure, 'lacingGap', 'closure.', base.closure.lacingGap, 'length'),
    },
    ...(data.joinedSide === undefined ? {} : { joinedSide: read.flag(data, 'joinedSide', '', false) }),
    wedges: data.wedges === undefined ? base.wedges : readWedges(data.wedges, 'wedges', ids, read),
    ...(data.rightWedges === undefined
      ? {}
      : { rightWedges: readWedges(data.rightWedges, 'rightWedges', ids, read) }),
    balance: readBalance(data, read),
    allowances: read.numbers(data, 'allowances', base.allowances, 'length'),
    ...(data.turnedHem === undefined ? {} : { turnedHem: read.flag(data, 'turnedHem', '', false) }),
    ...readShoulders(data, read),
    ...readExtras(data, read),
  };
}

/** Shoulders, where a style has them; numbers left out are the usual ones. */
function readShoulders(data: JsonObject, read: PartReader): Pick<Style, 'shoulders'> {
  if (data.shoulders === undefined) return {};
  const given = read.group(data, 'shoulders', ['drop', 'armholeIn', 'intake', 'bandAbove']);
  const intake = read.group(given, 'intake', ['front', 'back'], 'shoulders.');
  const part = (from: JsonObject, field: string, prefix: string, usual: number): number =>
    read.number(from, field, prefix, usual, 'length');
  return {
    shoulders: {
      drop: part(given, 'drop', 'shoulders.', USUAL_SHOULDERS.drop),
      armholeIn: part(given, 'armholeIn', 'shoulders.', USUAL_SHOULDERS.armholeIn),
      intake: {
        front: part(intake, 'front', 'shoulders.intake.', USUAL_SHOULDERS.intake.front),
        back: part(intake, 'back', 'shoulders.intake.', USUAL_SHOULDERS.intake.back),
      },
      ...(given.bandAbove === undefined
        ? {}
        : { bandAbove: part(given, 'bandAbove', 'shoulders.', USUAL_BAND_ABOVE) }),
    },
  };
}

/** Pieces beside the panels that the file names; numbers left out are the usual ones. */
function readExtras(data: JsonObject, read: PartReader): Pick<Style, 'extras'> {
  if (data.extras === undefined) return {};
  const asked = read.group(data, 'extras', Object.keys(USUAL_EXTRAS));
  const part = <Name extends keyof Extras>(name: Name): Pick<Extras, Name> => {
    if (asked[name] === undefined) return {} as Pick<Extras, Name>;
    const usual: Readonly<Record<string, number>> = USUAL_EXTRAS[name];
    const given = read.group(asked, name, Object.keys(usual), 'extras.');
    const numbers = Object.entries(usual).map(([field, mm]) => [
      field,
      read.number(given, field, `extras.${name}.`, mm, 'length'),
    ]);
    return { [name]: Object.fromEntries(numbers) } as Pick<Extras, Name>;
  };
  return { extras: { ...part('modesty'), ...part('facing'), ...part('straps') } };
}

/** The nodes of an edge that are given; the others stay level. */
function readEdge(data: JsonObject, name: 'topShape' | 'hemShape', read: PartReader): EdgeShape {
  const shape = read.group(data, name, EDGE_NODES);
  const nodes = EDGE_NODES.map((node) => {
    const { beyond, kind } = DEFAULT_STYLE[name][node];
    const path = `${name}.${node}`;
    const given = read.group(shape, node, ['beyond', 'kind'], `${name}.`);
    return [
      node,
      {
        beyond: read.number(given, 'beyond', `${path}.`, beyond, 'length'),
        kind: read.word(given, 'kind', `${path}.`, ['smooth', 'corner'], kind),
      },
    ];
  });
  return Object.fromEntries(nodes) as EdgeShape;
}

function readBalance(data: JsonObject, read: PartReader): Style['balance'] {
  const { sideShare, cap } = DEFAULT_STYLE.balance;
  const balance = read.group(data, 'balance', ['sideShare', 'cap']);
  return {
    sideShare: read.number(balance, 'sideShare', 'balance.', sideShare, 'share'),
    cap: read.number(balance, 'cap', 'balance.', cap, 'length'),
  };
}

/** The fullness of the cup, where a wedge has one: both its numbers. */
function readCup(given: JsonObject, path: string, read: PartReader): Pick<Wedge, 'cup'> {
  if (given.cup === undefined) return {};
  const cup = read.group(given, 'cup', ['below', 'intake'], path);
  const part = (name: 'below' | 'intake', usual: number): number =>
    read.number(cup, name, `${path}cup.`, usual, 'length');
  return { cup: { below: part('below', USUAL_CUP.below), intake: part('intake', USUAL_CUP.intake) } };
}

/** The points of a dart, where a wedge has them: from which level, and how far below it. */
function readPoints(given: JsonObject, path: string, read: PartReader): Pick<Wedge, 'upper' | 'lower'> {
  const point = (end: 'upper' | 'lower'): DartPoint => {
    const at = read.group(given, end, ['from', 'below'], path);
    return {
      from: read.word(at, 'from', `${path}${end}.`, DART_LEVELS, 'waist'),
      below: read.number(at, 'below', `${path}${end}.`, 0, 'length'),
    };
  };
  return {
    ...(given.upper === undefined ? {} : { upper: point('upper') }),
    ...(given.lower === undefined ? {} : { lower: point('lower') }),
  };
}

/** How style files written before version 5 of the book spell `manual`. */
const EARLIER_MANUAL = 'hand';

/** A list of wedges replaces the default's; each needs id, block and station. */
function readWedges(
  data: unknown,
  list: 'wedges' | 'rightWedges',
  ids: Set<string>,
  read: PartReader,
): Wedge[] {
  if (!Array.isArray(data)) {
    read.refuse(list, FILES.style.wedgesNotList({ kind: kindOf(data) }));
    return [];
  }
  return data.map((each: unknown, i) => {
    const path = `${list}.${i}.`;
    if (!isObject(each)) read.refuse(`${list}.${i}`, FILES.style.wedgeNotObject({ kind: kindOf(each) }));
    const given: JsonObject = isObject(each) ? each : {};
    const id = typeof given.id === 'string' ? given.id : '';
    if (isObject(each)) {
      read.knownOnly(given, path, [
        'id',
        'block',
        'station',
        'stationAt',
        'sizing',
        'intake',
        'cup',
        'upper',
        'lower',
        'weight',
      ]);
      for (const field of ['block', 'station'])
        if (given[field] === undefined) read.refuse(`${path}${field}`, FILES.style.wedgeFieldMissing);
      if (id === '') read.refuse(`${path}id`, FILES.style.wedgeIdMissing);
      else if (ids.has(id)) read.refuse(`${path}id`, FILES.style.wedgeIdTwice({ id }));
    }
    ids.add(id);
    return {
      ...balancedWedge(
        id,
        read.word(given, 'block', path, ['front', 'back'], 'front'),
        read.number(given, 'station', path, 0, 'share'),
        read.number(given, 'weight', path, 1, 'share'),
      ),
      stationAt: read.someLevels(given, 'stationAt', path, 'share'),
      ...readCup(given, path, read),
      ...readPoints(given, path, read),
      // A wedge with an intake in the file is sized manually unless the file says otherwise.
      sizing: read.word(
        given.sizing === EARLIER_MANUAL ? { ...given, sizing: 'manual' } : given,
        'sizing',
        path,
        ['balanced', 'manual'],
        given.intake === undefined ? 'balanced' : 'manual',
      ),
      intake: read.someLevels(given, 'intake', path, 'length'),
    };
  });
}

/** Faults of numbers out of span, found by drafting the demo client: they do not depend on the body. */
function outOfSpan(style: Style, unit: FileUnit): Fault[] {
  return draftWhole(DEMO_CLIENT.measurements, style)
    .issues.filter(({ code }) => code === 'styleOutOfRange' || code === 'tooManyWedges')
    .map((issue) => ({ path: issue.at.field ?? 'wedges', message: issueSentence(issue, { unit, style }) }));
}
