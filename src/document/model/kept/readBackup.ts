// Reads a backup, a bare book, or what was put aside, client by client: what cannot be read of one leaves the others as they are.
// Of a text that is cut off, the clients before that place are read.

import { BOOK_VERSION, type Client, type OwnStyle } from '../book';
import { isObject, type JsonObject } from '../isObject';
import { MIGRATIONS } from '../migrations/migrations';
import { SHARED_ID } from '../newClient';
import { fittingsOfBackup } from './fittingForm';
import type { BookFault } from './readBookData';
import { type FaultyPart, readParts } from './readParts';
import { wholePartOf } from './wholePart';
import { withIdsApart } from './withIdsApart';
import { BACKUP_KIND } from './writeBackup';

/** Why a text is no backup. `backupNotWhole`: it is not JSON, and no part of it is. `notBackup`: it is something else. The others are of its book. */
export type BackupFault = BookFault | { readonly code: 'backupNotWhole' | 'notBackup' };

/** Every client and style that can be had of a backup, each with an id of its own. */
export interface Backup {
  readonly clients: readonly Client[];
  readonly styles: readonly OwnStyle[];
  /** What could not be read of those of {@link clients} and {@link styles} that are not whole, by id. */
  readonly faulty: ReadonlyMap<string, FaultyPart>;
  /** Those of which nothing can be had. */
  readonly lost: readonly FaultyPart[];
  /** ISO day; null where that is not written in it. */
  readonly madeOn: string | null;
  /** The text is cut off or damaged, and there may have been more in it. */
  readonly isPart: boolean;
}

export type ReadBackup =
  | { readonly kind: 'backup'; readonly backup: Backup }
  | { readonly kind: 'unreadable'; readonly fault: BackupFault }
  | { readonly kind: 'newer'; readonly version: number };

/**
 * Reads a backup or a book of this or an earlier version. Never throws.
 *
 * @param newId gives an id for each client and style that has none of its own
 */
export function readBackup(text: string, newId: () => string): ReadBackup {
  const json = text.replace(/^\ufeff/, '');
  let isPart = false;
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch {
    const part = wholePartOf(json);
    if (!isObject(part)) return { kind: 'unreadable', fault: { code: 'backupNotWhole' } };
    // What was cut off may be the clients altogether.
    data = { clients: [], ...part };
    isPart = true;
  }
  if (!isObject(data) || !Array.isArray(data.clients) || !(data.kind === BACKUP_KIND || 'version' in data))
    return { kind: 'unreadable', fault: { code: 'notBackup' } };
  const read = readParts(data.kind === BACKUP_KIND ? bookIn(data) : data, MIGRATIONS);
  if (read.kind !== 'parts') return read;
  const { parts } = read;
  const mendedClients = parts.faultyClients.filter(({ mended }) => mended !== null);
  const mendedStyles = parts.faultyStyles.filter(({ mended }) => mended !== null);
  const own = <T extends { readonly id: string }>(each: T): T =>
    each.id === '' || each.id === SHARED_ID ? { ...each, id: newId() } : each;
  const { clients, styles } = withIdsApart({
    version: BOOK_VERSION,
    clients: [...parts.clients, ...mendedClients.map(({ mended }) => mended as Client)].map(own),
    styles: [...parts.styles, ...mendedStyles.map(({ mended }) => mended as OwnStyle)].map(own),
    openClient: '',
  });
  return {
    kind: 'backup',
    backup: {
      clients,
      styles,
      faulty: new Map([
        ...byId(clients.slice(parts.clients.length), mendedClients),
        ...byId(styles.slice(parts.styles.length), mendedStyles),
      ]),
      lost: [...parts.faultyClients, ...parts.faultyStyles].filter(({ mended }) => mended === null),
      madeOn: typeof data.madeOn === 'string' ? data.madeOn : null,
      isPart,
    },
  };
}

/** The book that a backup holds: in a backup `unit` is that of the numbers, and the one a client is shown in stands beside it. */
function bookIn({ kind: _kind, madeOn: _madeOn, clients, ...rest }: JsonObject): JsonObject {
  const shown = (clients as readonly unknown[]).map((client) => {
    if (!isObject(client)) return client;
    const { shownIn, ...others } = client;
    return {
      ...others,
      unit: shownIn,
      ...(Array.isArray(client.drafts) ? { drafts: client.drafts.map(draftIn) } : {}),
      ...(Array.isArray(client.prints) ? { prints: client.prints.map(withFittings) } : {}),
    };
  });
  return { ...rest, clients: shown };
}

function draftIn(draft: unknown): unknown {
  const own = withFittings(draft);
  return isObject(own) && own.comparison ? { ...own, comparison: withFittings(own.comparison) } : own;
}

const withFittings = (data: unknown): unknown =>
  isObject(data) && data.fittings !== undefined
    ? { ...data, fittings: fittingsOfBackup(data.fittings) }
    : data;

const byId = (
  mended: readonly { readonly id: string }[],
  parts: readonly FaultyPart[],
): [string, FaultyPart][] =>
  mended.flatMap(({ id }, i): [string, FaultyPart][] => {
    const part = parts[i];
    return part ? [[id, part]] : [];
  });
