// What another tab kept, from its record.

import type { Client, Migrations, Outside, OwnStyle } from '../../../document';
import { readClientRecord, readStyleRecord, unopenedOf } from './readRecord';
import { splitRecord } from './record';

interface Found {
  readonly outside: Outside;
  /** What of the book the record is, where it is not opened. */
  readonly entry: object;
  /** The same where it is. */
  readonly opened: Client | OwnStyle;
  readonly order: { readonly order?: number };
}

/** Null where the record cannot be read, also where steps from its version are missing. */
export function outsideOf(text: string, steps: Migrations): Found | null {
  const head = splitRecord(text)?.head;
  if (head?.kind === 'client') {
    const read = readClientRecord(text, steps);
    if (read.kind !== 'read') return null;
    const unopened = unopenedOf(head, text);
    const client = read.value;
    return {
      outside: { kind: 'client', id: head.id, now: { client, unopened } },
      entry: unopened,
      opened: client,
      order: {},
    };
  }
  const read = readStyleRecord(text, steps);
  if (read.kind !== 'read') return null;
  const { style, order } = read.value;
  return {
    outside: { kind: 'style', id: style.id, now: style },
    entry: style,
    opened: style,
    order: { order },
  };
}
