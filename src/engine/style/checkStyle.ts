// A style from outside is checked before anything is computed, so that the draft never meets a number it cannot carry.
// What comes in is taken for unknown: it may have been typed, or read from a file. The fields are walked without a parse by
// their schema, because every redraft makes this check.

import { type Issue, issue } from '../terms/issue';
import { LEVEL_NAMES } from '../terms/names';
import type { Field, Fields, Span } from './fields';
import { MOST_WEDGES, STYLE, type Style } from './style';
import { WEDGE_FIELDS } from './wedgeFields';
import { kindFrom } from './wedgeKind';

/**
 * A blocking issue for each field that cannot be drafted; none where the style can be. For a number out of its span it has the span
 * as `least` and `most`; for an unknown word, a missing part or a wedge's id that another wedge has, it has no values. The wedges
 * of the right half are not checked.
 */
export function checkStyle(style: Style): Issue[] {
  const given = record(style);
  const issues: Issue[] = [];
  checkFields(inOrder(STYLE.fields, NUMBERS_FIRST), given, '', issues);
  if (!Array.isArray(given.wedges)) issues.push(refused('wedges'));
  const wedges = Array.isArray(given.wedges) ? Array.from(given.wedges, record) : [];
  const taken = new Set<string>();
  for (const [i, wedge] of wedges.entries()) {
    const path = `wedges.${typeof wedge.id === 'string' ? wedge.id : i}`;
    if (typeof wedge.id !== 'string' || taken.has(wedge.id)) issues.push(refused(`${path}.id`));
    else taken.add(wedge.id);
    checkWedge(wedge, path, issues);
  }
  for (const block of ['front', 'back'] as const) {
    const count = wedges.filter((wedge) => wedge.block === block).length;
    if (count > MOST_WEDGES) issues.push(issue('tooManyWedges', { count, most: MOST_WEDGES }, { block }));
  }
  return issues;
}

type Unchecked = Readonly<Record<string, unknown>>;
type Entries = readonly (readonly [name: string, field: Field])[];

/** Which kinds of field are checked first, those of one place in the order in which they stand. */
type Order = readonly (readonly Field['kind'][])[];

/** In a style and its parts, numbers before words and parts. */
const NUMBERS_FIRST: Order = [
  ['number', 'levels'],
  ['choice', 'flag', 'group'],
];

/** In a wedge, what it is before its numbers, and those of its levels last. */
const WORDS_FIRST: Order = [['choice'], ['number'], ['group', 'absent'], ['levels']];

const ordered = new WeakMap<Fields, Entries>();

/** The fields of a group that are checked, in order; the list is made once. */
function inOrder(fields: Fields, order: Order): Entries {
  const known = ordered.get(fields);
  if (known) return known;
  const entries = Object.entries(fields);
  const list = order.flatMap((kinds) => entries.filter(([, { kind }]) => kinds.includes(kind)));
  ordered.set(fields, list);
  return list;
}

/** Checks each field of a group in turn; fields by level that follow one another are checked together, level by level. */
function checkFields(fields: Entries, given: Unchecked, prefix: string, issues: Issue[]): void {
  const byLevel: [path: string, field: LevelsField, value: unknown][] = [];
  for (const [name, field] of fields) {
    const value = given[name];
    const path = prefix + name;
    if (field.optional && value === undefined) continue;
    if (field.kind === 'levels') {
      byLevel.push([path, field, value]);
      continue;
    }
    if (byLevel.length > 0) checkLevels(byLevel.splice(0), issues);
    switch (field.kind) {
      case 'number':
        if (!isWithin(value, field.span))
          issues.push(outOfSpan(field.isMain ? prefix.slice(0, -1) : path, field.span));
        break;
      case 'choice':
        if (!field.words.some((word) => word === value)) issues.push(refused(path));
        break;
      case 'flag':
        if (typeof value !== 'boolean') issues.push(refused(path));
        break;
      case 'group':
        checkFields(inOrder(field.fields, NUMBERS_FIRST), record(value), `${path}.`, issues);
        break;
      case 'absent':
        issues.push(refused(path));
        break;
    }
  }
  if (byLevel.length > 0) checkLevels(byLevel, issues);
}

type LevelsField = Extract<Field, { kind: 'levels' }>;

function checkLevels(
  fields: readonly (readonly [path: string, field: LevelsField, value: unknown])[],
  issues: Issue[],
): void {
  for (const [path, { usual }, value] of fields)
    if (usual === null && !isRecord(value)) issues.push(refused(path));
  for (const level of LEVEL_NAMES)
    for (const [path, { span, usual }, value] of fields) {
      const number = record(value)[level];
      const isLeftOut = usual === null && (number === undefined || number === null);
      // The path is only written where it is needed: every redraft checks every level of every field.
      if (!isLeftOut && !isWithin(number, span)) issues.push(outOfSpan(`${path}.${level}`, span));
    }
}

/** Checks a wedge; one of an unknown kind is checked as a wedge of the kind that has its points. */
function checkWedge(wedge: Unchecked, path: string, issues: Issue[]): void {
  const { kind, station } = wedge;
  const known = typeof kind === 'string' && Object.hasOwn(WEDGE_FIELDS, kind);
  const fits = known && (kind === 'through' || station !== -1);
  if (!fits) issues.push(refused(`${path}.kind`));
  const fields = WEDGE_FIELDS[known ? (kind as keyof typeof WEDGE_FIELDS) : kindFrom(0, wedge)];
  checkFields(inOrder(fields.fields, WORDS_FIRST), wedge, `${path}.`, issues);
}

const isWithin = (value: unknown, [least, most]: Span): boolean =>
  typeof value === 'number' && value >= least && value <= most;

const outOfSpan = (field: string, [least, most]: Span): Issue =>
  issue('styleOutOfRange', { least, most }, { field });

const refused = (field: string): Issue => issue('styleOutOfRange', {}, { field });

const isRecord = (value: unknown): value is Unchecked => typeof value === 'object' && value !== null;

const record = (value: unknown): Unchecked => (isRecord(value) ? value : {});
