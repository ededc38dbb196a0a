// Reads the body of a record: inflated, migrated, checked. Fetched only where there is a record to read.

import {
  BOOK_VERSION,
  type Client,
  type FaultyPart,
  type Migrations,
  type OwnStyle,
  readOne,
  readParts,
  type UnopenedClient,
} from '../../../document';
import { unpack, unpackBody } from './packing';
import { type ClientHead, type Head, LAYOUT, splitRecord } from './record';

/** `notWhole`: the text is not as it was written. `earlier`: the record is of an earlier version, from which no step was given. */
export type ReadRecord<T> =
  | { readonly kind: 'read'; readonly value: T }
  | { readonly kind: 'faulty'; readonly part: FaultyPart }
  | { readonly kind: 'newer'; readonly version: number }
  | { readonly kind: 'earlier' }
  | { readonly kind: 'notWhole' };

/** The client of a record. Never throws. */
export function readClientRecord(text: string, steps: Migrations): ReadRecord<Client> {
  const found = bodyOf(text, steps);
  if (found.kind !== 'read') return found;
  const { head, data } = found.value;
  const book = { version: head.book, styles: [], clients: [data], openClient: head.id };
  const { read, faulty } = readOne(book, steps);
  if (read) return { kind: 'read', value: read };
  return faulty ? { kind: 'faulty', part: faulty } : { kind: 'notWhole' };
}

/** The style of a record and its place among the styles. Never throws. */
export function readStyleRecord(
  text: string,
  steps: Migrations,
): ReadRecord<{ style: OwnStyle; order: number }> {
  const found = bodyOf(text, steps);
  if (found.kind !== 'read') return found;
  const { head, data } = found.value;
  const read = readParts({ version: head.book, styles: [data], clients: [], openClient: '' }, steps);
  if (read.kind !== 'parts' || head.kind !== 'style') return { kind: 'notWhole' };
  const [style] = read.parts.styles;
  const [faulty] = read.parts.faultyStyles;
  if (style) return { kind: 'read', value: { style, order: head.order } };
  return faulty ? { kind: 'faulty', part: faulty } : { kind: 'notWhole' };
}

interface RecordBook {
  readonly version: number;
  readonly clients: readonly unknown[];
  readonly styles: readonly unknown[];
  readonly openClient: string;
}

/** A record as a book with nothing else in it, to be written into a file or looked into; null where it is not whole. */
export function bookOfRecord(text: string): RecordBook | null {
  const found = bodyOf(text);
  if (found.kind !== 'read') return null;
  const { head, data } = found.value;
  const isClient = head.kind === 'client';
  return {
    version: head.book,
    styles: isClient ? [] : [data],
    clients: isClient ? [data] : [],
    openClient: head.id,
  };
}

const PLAIN_OF: Readonly<Record<Head['form'], (body: string) => string>> = {
  plain: (body) => body,
  deflated: unpack,
  shared: unpackBody,
};

/** @param steps left out where the body is not to be read as a part of this version */
function bodyOf(
  text: string,
  steps?: Migrations,
): ReadRecord<{ readonly head: Head; readonly data: unknown }> {
  const split = splitRecord(text);
  if (!split) return { kind: 'notWhole' };
  const { head, body } = split;
  if (head.layout > LAYOUT) return { kind: 'newer', version: head.book };
  if (head.book > BOOK_VERSION) return { kind: 'newer', version: head.book };
  if (steps && head.book < BOOK_VERSION && !(head.book in steps)) return { kind: 'earlier' };
  try {
    return {
      kind: 'read',
      value: { head, data: JSON.parse(PLAIN_OF[head.form](body)) },
    };
  } catch {
    return { kind: 'notWhole' };
  }
}

/** What the list shows of a record's client. */
export const unopenedOf = (
  { id, name, archived, lastUsed, changed, draftNames }: ClientHead,
  record: string,
): UnopenedClient => ({
  id,
  name,
  archived,
  lastUsed,
  ...(changed === undefined ? {} : { changed }),
  draftNames,
  record,
});
