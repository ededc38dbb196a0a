// Undo that survives a reload: the history beside the book, as small steps, within a limit and never in the book's way.

import { apply, BOOK_VERSION, type Book, type Change, type Delta, delta, type History } from '../../document';
import { BOOK_KEY, type BookStorage } from './bookStorage';
import type { StorageLike } from './storageLike';

export const HISTORY_KEY = 'staywright.history';

/** The most characters the history may take; what lies farther back is let go. */
const MOST_CHARACTERS = 400_000;

/** The form the steps are kept in, and the codes of their changes: raised when either changes, so that others are let go. */
const STEPS_VERSION = 2;

interface KeptStep {
  readonly change: Change;
  /** From the state nearer to the present one to this step's. */
  readonly step: Delta | null;
}

/** The history as text; it opens only beside the book it belongs to. */
export function packHistory({ past, present, future }: History<Book>): string {
  let room = MOST_CHARACTERS;
  const pack = (steps: readonly { state: Book; change: Change }[]): string[] => {
    const packed: string[] = [];
    let nearer = present;
    for (const { state, change } of steps) {
      const text = JSON.stringify({ change, step: delta(nearer, state) } satisfies KeptStep);
      room -= text.length;
      if (room < 0) break;
      packed.push(text);
      nearer = state;
    }
    return packed;
  };
  const body = `{"past":[${pack([...past].reverse())}],"future":[${pack(future)}]}`;
  return `${seal(JSON.stringify(present), body)} ${body}`;
}

/**
 * The history of a book; an empty one where the text does not belong to it or was not written by this version.
 *
 * @param bookText the book as it was kept: read in again its parts stand in another order
 */
export function unpackHistory(text: string | null, book: Book, bookText: string | null): History<Book> {
  const [found = '', body = ''] = text === null ? [] : halves(text);
  // The seal shows that this version wrote the steps, for this very book: they need no further look.
  if (found === '' || found !== seal(bookText ?? '', body)) return { past: [], present: book, future: [] };
  const { past, future } = JSON.parse(body) as Record<'past' | 'future', KeptStep[]>;
  const unpack = (steps: readonly KeptStep[]): { state: Book; change: Change }[] => {
    let nearer: unknown = book;
    return steps.map(({ change, step }) => {
      nearer = apply(nearer, step);
      return { state: nearer as Book, change };
    });
  };
  return { past: unpack(past).reverse(), present: book, future: unpack(future) };
}

/** Reads the history of the book just opened. */
export function loadHistory(storage: StorageLike | null, book: Book): History<Book> {
  try {
    return unpackHistory(storage?.getItem(HISTORY_KEY) ?? null, book, storage?.getItem(BOOK_KEY) ?? null);
  } catch {
    return { past: [], present: book, future: [] };
  }
}

/**
 * Keeps the history each time its book was kept, and gives up its room when the book needs it.
 *
 * @param history asked when it is to be kept
 * @returns what ends it
 */
export function keepHistory(
  storage: StorageLike | null,
  books: BookStorage,
  history: () => History<Book>,
): () => void {
  return books.subscribe((status) => {
    if (!storage) return;
    try {
      if (status.kind === 'saved') storage.setItem(HISTORY_KEY, packHistory(history()));
      else if (status.kind === 'failed' && storage.getItem(HISTORY_KEY) !== null) {
        storage.removeItem(HISTORY_KEY);
        if (status.reason === 'full') books.flush();
      }
    } catch {
      letGo(storage);
    }
  });
}

function letGo(storage: StorageLike): void {
  try {
    storage.removeItem(HISTORY_KEY);
  } catch {
    // What stays does not fit the book any more, and is not opened.
  }
}

function halves(text: string): [string, string] {
  const gap = text.indexOf(' ');
  return [text.slice(0, Math.max(0, gap)), text.slice(gap + 1)];
}

/** Two sums over book and steps (FNV-1a and a shift of it): tells texts apart, and is no secret. */
function seal(book: string, body: string): string {
  let [a, b] = [0x811c9dc5 ^ STEPS_VERSION, BOOK_VERSION];
  for (const text of [book, body])
    for (let i = 0; i < text.length; i += 1) {
      a = Math.imul(a ^ text.charCodeAt(i), 0x01000193);
      b = (Math.imul(b, 31) + text.charCodeAt(i)) | 0;
    }
  return `${(a >>> 0).toString(36)}.${(b >>> 0).toString(36)}.${book.length}.${body.length}`;
}
