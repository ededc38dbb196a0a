// Reads a style from a file: its fields replace those of the default style.

import {
  checkStyle,
  type DataOf,
  DEFAULT_STYLE,
  type Issue,
  type Side,
  STYLE,
  type Style,
  styleOfSide,
  WEDGE_IN_FILE,
  type Wedge,
  withPoints,
} from '../../engine';
import { FILES } from '../messages/book/files';
import { issueSentence } from '../messages/remarks/issues';
import { isObject, type JsonObject } from '../model/isObject';
import { type Fault, type Read, refuse } from './fault';
import { kindOf } from './json';
import { PartReader } from './partReader';
import { readFields } from './readFields';
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
  const needed = Object.keys(DEFAULT_STYLE);
  const parts = Object.keys(STYLE.fields).filter((name) => !needed.includes(name));
  read.knownOnly(data, '', ['unit', 'name', ...parts, ...needed]);
  // A wedge is known by its id on whichever side it is.
  const ids = new Set<string>(data.wedges === undefined ? DEFAULT_STYLE.wedges.map(({ id }) => id) : []);
  const wedges =
    data.wedges === undefined ? DEFAULT_STYLE.wedges : readWedges(data.wedges, 'wedges', ids, read);
  const right =
    data.rightWedges === undefined
      ? {}
      : { rightWedges: readWedges(data.rightWedges, 'rightWedges', ids, read) };
  const others = readFields(STYLE.fields, data, '', read) as Omit<Style, 'wedges' | 'rightWedges'>;
  return { ...others, wedges, ...right };
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
      read.knownOnly(given, path, Object.keys(WEDGE_IN_FILE.fields));
      for (const field of ['block', 'station'])
        if (given[field] === undefined) read.refuse(`${path}${field}`, FILES.style.wedgeFieldMissing);
      if (id === '') read.refuse(`${path}id`, FILES.style.wedgeIdMissing);
      else if (ids.has(id)) read.refuse(`${path}id`, FILES.style.wedgeIdTwice({ id }));
    }
    ids.add(id);
    const { upper, lower, ...own } = readFields(
      WEDGE_IN_FILE.fields,
      { ...given, id, sizing: sizingOf(given) },
      path,
      read,
    ) as DataInFile;
    return withPoints(own, { upper, lower });
  });
}

type DataInFile = DataOf<typeof WEDGE_IN_FILE>;

/** A wedge whose intake is written down is meant to have it. */
function sizingOf({ sizing, intake }: JsonObject): unknown {
  if (sizing === undefined) return intake === undefined ? 'balanced' : 'manual';
  return sizing === EARLIER_MANUAL ? 'manual' : sizing;
}

/** What the check says of a style; where the right half has wedges of its own, of each half. */
function outOfSpan(style: Style, unit: FileUnit): Fault[] {
  return issuesOf(style).map((issue) => ({
    path: issue.at.field ?? 'wedges',
    message: issueSentence(issue, { unit, style }),
  }));
}

function issuesOf(style: Style): Issue[] {
  const left = checkStyle(style);
  if (!style.rightWedges || left.some(({ at }) => at.field !== undefined)) return left;
  const right = checkStyle(styleOfSide(style, 'right'));
  const onSide = (side: Side, issue: Issue): Issue =>
    issue.at.block === undefined ? issue : { ...issue, at: { ...issue.at, side } };
  return [...left.map((issue) => onSide('left', issue)), ...right.map((issue) => onSide('right', issue))];
}
