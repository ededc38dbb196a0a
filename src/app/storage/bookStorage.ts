// Keeping the book in the browser: the only reader and writer of local storage. What is kept is never written over
// unless this tab read or wrote it last, or it lies whole under another key as well.

import { type Book, DEMO_BOOK, type ReadBook } from '../../document';
import { isQuarantineKey, listQuarantined, type QuarantinedText, quarantine } from './quarantine';
import { type Notice, type SaveStatus, saveFaultOf } from './saveStatus';
import type { StorageLike } from './storageLike';

/** Where the book lies. */
export const BOOK_KEY = 'staywright.book';

/** Changes that come faster than this are kept together. */
const DEBOUNCE_MS = 300;

/** Reads a book from text. */
type BookReader = (text: string) => ReadBook;

export interface BookStorageOptions {
  /** Null where the browser has none. */
  readonly storage: StorageLike | null;
  readonly now: () => Date;
}

interface Loaded {
  readonly book: Book;
  readonly said: readonly Notice[];
}

/** The keeper of one tab; no part of it throws, but the promise of `load` may be rejected. */
export interface BookStorage {
  /**
   * The kept book, or the demo book where there is none that can be opened. What reads a book is fetched only where there is a
   * text to read; where it cannot be fetched, the promise is rejected and nothing is changed.
   */
  readonly load: () => Promise<Loaded>;
  /** Takes the book to be kept a moment later; the last one given is the one kept. */
  readonly save: (book: Book) => void;
  /** Keeps at once what waits, and tries again what failed. */
  readonly flush: () => void;
  readonly status: () => SaveStatus;
  /** Calls back on every change of the status; gives what ends it. */
  readonly subscribe: (listener: (status: SaveStatus) => void) => () => void;
  /** What was put aside, and what lies unopened under the book's own key for want of room. */
  readonly quarantined: () => QuarantinedText[];
  /** Lets go of one of {@link quarantined}, when the maker says so. */
  readonly discard: (key: string) => void;
  /** Ends a conflict: this tab's book is kept, the other tab's put aside. False where there was no room for both. */
  readonly keepOurs: () => boolean;
  /** Ends a conflict: gives the other tab's book, this tab's stays aside. Null where it could not be put aside. */
  readonly takeTheirs: (read: BookReader) => Loaded | null;
  /** Keeps at once when the page is hidden or left, and watches for other tabs; gives what ends it. */
  readonly attachFlush: (window: Window) => () => void;
}

/** Fetches what reads a book from text: the schema, the migrations, and the library they are written with. */
const bookReader = async (): Promise<BookReader> => (await import('./bookReader')).readBook;

export function createBookStorage({ storage, now }: BookStorageOptions): BookStorage {
  let status: SaveStatus = { kind: 'saved' };
  const listeners = new Set<(status: SaveStatus) => void>();
  /** The last book given, and whether it still has to be kept. */
  let latest: Book | null = null;
  let waits = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** The text under the book's key when this tab last read or wrote it; null for none, undefined for not read. */
  let known: string | null | undefined;
  /** `known` can be neither opened nor put aside. */
  let guarding = false;
  /** Another tab kept something else; until the maker chooses, this tab's book goes to `key`. */
  let conflict: { key: string | null } | null = null;

  const become = (next: SaveStatus): void => {
    status = next;
    for (const listener of listeners) listener(next);
  };

  const load = async (): Promise<Loaded> => {
    const text = keptText();
    return open(text, typeof text === 'string' ? await bookReader() : null);
  };

  /** The text under the book's key; null for none, undefined where it cannot be read. */
  const keptText = (): string | null | undefined => {
    try {
      return storage?.getItem(BOOK_KEY);
    } catch {
      return undefined;
    }
  };

  /** Takes a text for the one this tab goes on from. Without a reader there is no text to read. */
  const open = (text: string | null | undefined, read: BookReader | null): Loaded => {
    conflict = null;
    guarding = false;
    known = text;
    if (!storage || known === undefined) {
      const reason = storage ? 'refused' : 'absent';
      become({ kind: 'failed', reason });
      return { book: DEMO_BOOK, said: [{ kind: 'unavailable', reason }] };
    }
    const found: ReadBook = known === null || !read ? { kind: 'book', book: DEMO_BOOK } : read(known);
    if (found.kind !== 'book') {
      const quarantineKey = guard(storage);
      if (quarantineKey !== null) become({ kind: 'saved' });
      return { book: DEMO_BOOK, said: [{ ...found, quarantineKey }] };
    }
    become({ kind: 'saved' });
    return { book: found.book, said: [] };
  };

  /** Puts what cannot be opened aside; where there is no room it is guarded instead, and null given. */
  const guard = (store: StorageLike): string | null => {
    const text = known ?? '';
    // Each start of the page finds it again until something is kept: one copy is enough.
    const already = listQuarantined(store).find((quarantinedText) => quarantinedText.text === text);
    const quarantineKey = already?.key ?? quarantine(store, text, now());
    guarding = quarantineKey === null;
    if (guarding) become({ kind: 'failed', reason: 'guarding' });
    return quarantineKey;
  };

  const save = (book: Book): void => {
    latest = book;
    waits = true;
    if (!conflict) become({ kind: 'pending' });
    clearTimeout(timer);
    timer = setTimeout(flush, DEBOUNCE_MS);
  };

  const flush = (): void => {
    clearTimeout(timer);
    if (!waits || latest === null) return;
    if (!storage) become({ kind: 'failed', reason: 'absent' });
    else if (!guarding || guard(storage) !== null) keep(storage, JSON.stringify(latest));
  };

  const keep = (store: StorageLike, text: string): void => {
    try {
      const there = store.getItem(BOOK_KEY);
      if (conflict || (there !== null && there !== known)) keepBeside(store, text);
      else {
        if (text !== there) store.setItem(BOOK_KEY, text);
        known = text;
        waits = false;
        become({ kind: 'saved' });
      }
    } catch (error) {
      become({ kind: 'failed', reason: saveFaultOf(error) });
    }
  };

  const keepBeside = (store: StorageLike, text: string): void => {
    conflict ??= { key: null };
    try {
      // One key for the whole conflict: a key a change would fill the storage.
      if (conflict.key === null) conflict.key = quarantine(store, text, now());
      else store.setItem(conflict.key, text);
      waits = conflict.key === null;
    } catch {
      waits = true;
    }
    become({ kind: 'conflict', beside: !waits });
  };

  const keepOurs = (): boolean => {
    const ours = latest === null ? known : JSON.stringify(latest);
    if (!storage || !conflict || typeof ours !== 'string') return false;
    try {
      const theirs = storage.getItem(BOOK_KEY);
      if (theirs !== null && theirs !== ours && quarantine(storage, theirs, now()) === null) return false;
      storage.setItem(BOOK_KEY, ours);
      if (conflict.key !== null) storage.removeItem(conflict.key);
    } catch {
      return false;
    }
    known = ours;
    conflict = null;
    waits = false;
    become({ kind: 'saved' });
    return true;
  };

  const takeTheirs = (read: BookReader): Loaded | null => {
    flush();
    if (waits) return null;
    latest = null;
    return open(keptText(), read);
  };

  const discard = (key: string): void => {
    const own = key === BOOK_KEY && guarding;
    if (!storage || !(own || isQuarantineKey(key))) return;
    try {
      storage.removeItem(key);
    } catch {
      return;
    }
    if (own) [known, guarding] = [null, false];
    flush();
  };

  const attachFlush = (window: Window): (() => void) => {
    const hidden = (): void => {
      if (window.document.visibilityState === 'hidden') flush();
    };
    const otherTab = ({ key, newValue }: StorageEvent): void => {
      if (key !== BOOK_KEY || newValue === null || newValue === known || conflict) return;
      conflict = { key: null };
      if (waits) flush();
      else become({ kind: 'conflict', beside: true });
    };
    window.addEventListener('pagehide', flush);
    window.document.addEventListener('visibilitychange', hidden);
    window.addEventListener('storage', otherTab);
    return () => {
      window.removeEventListener('pagehide', flush);
      window.document.removeEventListener('visibilitychange', hidden);
      window.removeEventListener('storage', otherTab);
    };
  };

  return {
    load,
    save,
    flush,
    status: () => status,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    quarantined: () => {
      const unopened = guarding && typeof known === 'string' ? [{ key: BOOK_KEY, text: known }] : [];
      return [...(storage ? listQuarantined(storage) : []), ...unopened];
    },
    discard,
    keepOurs,
    takeTheirs,
    attachFlush,
  };
}
