// A record: one client or one style as a text under a key of its own. Its first line is readable by itself and shows what a list
// needs to know; behind it comes the whole, plain or deflated. A sum at its head covers all of it.

import { BOOK_VERSION, type Client, type ClientEntry, entryOf, type OwnStyle } from '../../../document';
import { sumFrom, sumOf } from './sum';

/**
 * The layout of the storage: a key a client and a style, bodies deflated with what all records share. The first was one key for the
 * whole book; in the second each body was deflated by itself. Not the book's version.
 */
export const LAYOUT = 3;

/** Where the whole book lay in the first layout. */
export const BOOK_KEY = 'staywright.book';
/** Where the history lies. */
export const HISTORY_KEY = 'staywright.history';
/** The beginning of an earlier book that was deflated to make room for its records. */
export const DEFLATED_MARK = 'deflated ';
/** Which client is open; it also tells that the storage is in this layout. */
export const OPEN_KEY = 'staywright.open';

const PREFIX = { client: 'staywright.client.', style: 'staywright.style.' } as const;

export type RecordKind = keyof typeof PREFIX;

export const recordKey = (kind: RecordKind, id: string): string => PREFIX[kind] + id;

/** What lies under a key; null for a key of no record. */
export function recordAt(key: string): { readonly kind: RecordKind; readonly id: string } | null {
  for (const kind of ['client', 'style'] as const)
    if (key.startsWith(PREFIX[kind])) return { kind, id: key.slice(PREFIX[kind].length) };
  return null;
}

/** The kind of record that lies under a key; null for a key of anything else. */
export const kindOfKey = (key: string): RecordKind | null => recordAt(key)?.kind ?? null;

interface CommonHead {
  readonly layout: number;
  /** The version of the book that the body is of. */
  readonly book: number;
  /** How the body is written; `deflated` was that of the second layout. */
  readonly form: 'plain' | 'deflated' | 'shared';
}

export interface ClientHead extends CommonHead, ClientEntry {
  readonly kind: 'client';
}

interface StyleHead extends CommonHead {
  readonly kind: 'style';
  readonly id: string;
  readonly name: string;
  /** Its place among the styles. */
  readonly order: number;
}

export type Head = ClientHead | StyleHead;

/** Deflates a body into a text that a storage takes; null where that was not fetched yet. */
export type Pack = ((json: string) => string) | null;

export const clientRecord = (client: Client, pack: Pack): string =>
  recordOf({ ...COMMON, kind: 'client', ...entryOf(client) }, client, pack);

export const styleRecord = (style: OwnStyle, order: number, pack: Pack): string =>
  recordOf({ ...COMMON, kind: 'style', id: style.id, name: style.name, order }, style, pack);

const COMMON = { layout: LAYOUT, book: BOOK_VERSION } as const;

function recordOf(head: object, whole: object, pack: Pack): string {
  const json = JSON.stringify(whole);
  const rest = `${JSON.stringify({ ...head, form: pack ? 'shared' : 'plain' })}\n${pack ? pack(json) : json}`;
  return `${sumOf(rest)} ${rest}`;
}

/** A record's head and body; null where the text is not one as it was written. */
export function splitRecord(text: string): { readonly head: Head; readonly body: string } | null {
  const [gap, line] = [text.indexOf(' '), text.indexOf('\n')];
  if (gap < 0 || line < gap || text.slice(0, gap) !== sumFrom(gap + 1, text)) return null;
  try {
    const head = JSON.parse(text.slice(gap + 1, line));
    return { head, body: text.slice(line + 1) };
  } catch {
    return null;
  }
}

/** What lies under {@link OPEN_KEY}. */
export interface OpenMark {
  readonly layout: number;
  readonly open: string;
  /** The book of the first layout is being moved into records; the id that its invented client gets. */
  readonly moving?: string;
}

/** A mark that cannot be read tells nothing. */
export function readOpenMark(text: string | null): Partial<OpenMark> {
  try {
    const mark = JSON.parse(text ?? '{}');
    return typeof mark === 'object' && mark !== null ? mark : {};
  } catch {
    return {};
  }
}
