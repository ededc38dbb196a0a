// Reads a book client by client and style by style, so that a bad part of one leaves the others readable.

import { BOOK_VERSION, type Client, type OwnStyle } from '../book';
import { isObject, type JsonObject } from '../isObject';
import { type Migrations, migrate } from '../migrations/migrate';
import { type BadPart, mendClient, mendStyle } from './mend';
import { type BookFault, readBookData, versionOf } from './readBookData';
import { withIdsApart } from './withIdsApart';

/** A client or a style that cannot be read as it is. */
export interface FaultyPart<T = Client | OwnStyle> {
  /** As it stands there; empty where that cannot be read either. */
  readonly name: string;
  /** What cannot be read; empty where it is not known what it is. */
  readonly bad: readonly BadPart[];
  /** All the rest of it; null where nothing else can be read. */
  readonly mended: T | null;
  /** A book of its version with nothing else in it. */
  readonly book: unknown;
}

interface BookParts {
  readonly clients: readonly Client[];
  readonly styles: readonly OwnStyle[];
  readonly openClient: string;
  readonly faultyClients: readonly FaultyPart<Client>[];
  readonly faultyStyles: readonly FaultyPart<OwnStyle>[];
}

export type ReadParts =
  | { readonly kind: 'parts'; readonly parts: BookParts }
  | { readonly kind: 'unreadable'; readonly fault: BookFault }
  | { readonly kind: 'newer'; readonly version: number };

/**
 * Reads what can be read of a book's data. Never throws. A book in which no list of clients is to be found is unreadable.
 *
 * @param steps from the version of the data to this one; where they are missing, nothing can be read
 */
export function readParts(data: unknown, steps: Migrations): ReadParts {
  const version = versionOf(data);
  if (version === null || !isObject(data)) return { kind: 'unreadable', fault: { code: 'noVersion' } };
  if (version > BOOK_VERSION) return { kind: 'newer', version };
  if (!Array.isArray(data.clients))
    return { kind: 'unreadable', fault: { code: 'wrongShape', path: 'clients' } };
  const whole = readBookData(data, steps);
  if (whole.kind === 'book') {
    const { clients, styles, openClient } = whole.book;
    return { kind: 'parts', parts: { clients, styles, openClient, faultyClients: [], faultyStyles: [] } };
  }
  const clients = data.clients.map((client: unknown) => readOne(aloneIn(data, version, client), steps));
  const styles = (Array.isArray(data.styles) ? data.styles : []).map((style: unknown) =>
    styleOf(data, style, steps),
  );
  const apart = withIdsApart({
    version: BOOK_VERSION,
    clients: clients.flatMap(({ read }) => (read ? [read] : [])),
    styles: styles.flatMap(({ read }) => (read ? [read] : [])),
    openClient: typeof data.openClient === 'string' ? data.openClient : '',
  });
  return {
    kind: 'parts',
    parts: {
      clients: apart.clients,
      styles: apart.styles,
      openClient: apart.openClient,
      faultyClients: clients.flatMap(({ faulty }) => (faulty ? [faulty] : [])),
      faultyStyles: styles.flatMap(({ faulty }) => (faulty ? [faulty] : [])),
    },
  };
}

interface ReadOne<T> {
  readonly read: T | null;
  readonly faulty: FaultyPart<T> | null;
}

/** A book with one client and nothing else. */
const aloneIn = (data: JsonObject, version: number, client: unknown): JsonObject => ({
  ...data,
  ...(version < FIRST_WITH_STYLES ? {} : { styles: [] }),
  clients: [client],
});

/** Books before this version know no styles of the maker's own. */
const FIRST_WITH_STYLES = 3;

/** The one client of a book with nothing else in it. */
export function readOne(book: JsonObject, steps: Migrations): ReadOne<Client> {
  const read = readBookData(book, steps);
  if (read.kind === 'book') return { read: read.book.clients[0] ?? null, faulty: null };
  const [client] = book.clients as readonly unknown[];
  const name = nameOf(client);
  const mended = mendClient(migratedClient(book, client, steps));
  // What cannot be read is of the book, as the client who is open in one that is cut off.
  if (mended && mended.bad.length === 0) return { read: mended.value, faulty: null };
  return {
    read: null,
    faulty: { name, bad: mended?.bad ?? [], mended: mended?.value ?? null, book },
  };
}

/** The client in the shape of this version; where a bad part stops a migration, the drafts that have it are left behind. */
function migratedClient(book: JsonObject, client: unknown, steps: Migrations): unknown {
  const migrated = (each: unknown): unknown => {
    const data = migrate({ ...book, clients: [each] }, versionOf(book) ?? 0, BOOK_VERSION, steps);
    return isObject(data) && Array.isArray(data.clients) ? data.clients[0] : null;
  };
  const whole = migrated(client);
  if (whole !== null || !isObject(client)) return whole;
  const list = Array.isArray(client.sheets) ? 'sheets' : 'drafts';
  const drafts = Array.isArray(client[list]) ? client[list] : [];
  const good = drafts.filter((draft: unknown) => migrated({ ...client, [list]: [draft] }) !== null);
  const stands = good.length < drafts.length ? migrated({ ...client, [list]: good }) : null;
  if (!isObject(stands) || !Array.isArray(stands.drafts)) return null;
  // A place that holds nothing stands for each draft left behind, so that it is named among the bad parts.
  return { ...stands, drafts: [...stands.drafts, ...drafts.slice(good.length).map(() => null)] };
}

function styleOf(data: JsonObject, style: unknown, steps: Migrations): ReadOne<OwnStyle> {
  const version = versionOf(data) ?? 0;
  const book = { ...data, styles: [style], clients: [] };
  const migrated = migrate(book, version, BOOK_VERSION, steps);
  const [own] = isObject(migrated) && Array.isArray(migrated.styles) ? migrated.styles : [null];
  const mended = mendStyle(own);
  if (mended && mended.bad.length === 0) return { read: mended.value, faulty: null };
  return {
    read: null,
    faulty: { name: nameOf(style), bad: mended?.bad ?? [], mended: mended?.value ?? null, book },
  };
}

const nameOf = (data: unknown): string => (isObject(data) && typeof data.name === 'string' ? data.name : '');
