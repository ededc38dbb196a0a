// Undo that survives a reload: the history beside the book, as small steps, within a limit and never in the book's way.

import { apply, type Book, type Change, type Delta, delta, type History } from '../../../document';
import type { StorageLike } from '../device/storageLike';
import { HISTORY_KEY } from '../records/record';
import { sumOf } from '../records/sum';
import type { BookStorage } from './bookStorage';

/** The most letters the history may take; what lies farther back is let go. */
const MOST_LETTERS = 400_000;

/** The part of the free room that the history may take. */
const PART_OF_ROOM = 0.5;

/** The form the steps are kept in, and the codes of their changes: raised when either changes, so that others are let go. */
const STEPS_VERSION = '3';

interface KeptStep {
  readonly change: Change;
  /** From the state nearer to the present one to this step's. */
  readonly step: Delta | null;
}

/** The lists of the book that steps speak of by place, so that they are only opened beside the same ones. */
interface Lists {
  readonly clients: readonly string[];
  readonly unopened: number;
  readonly styles: readonly string[];
}

const listsOf = ({ clients, unopened = [], styles }: Book): Lists => ({
  clients: clients.map(({ id }) => id),
  unopened: unopened.length,
  styles: styles.map(({ id }) => id),
});

/** Each step's text, and the state it leads from: of a long history only the last step is new. */
const written = new WeakMap<Book, { readonly nearer: Book; readonly text: string }>();

function stepText(nearer: Book, state: Book, change: Change): string {
  const known = written.get(state);
  if (known?.nearer === nearer) return known.text;
  const text = JSON.stringify({ change, step: delta(nearer, state) } satisfies KeptStep);
  written.set(state, { nearer, text });
  return text;
}

/** The history as text, and how many steps back it goes; it opens only beside the book of the same seal. */
export function packHistory(
  { past, present, future }: History<Book>,
  seal: string,
  most = MOST_LETTERS,
): { readonly text: string; readonly steps: number } {
  let room = most;
  const pack = (steps: readonly { state: Book; change: Change }[]): string[] => {
    const packed: string[] = [];
    let nearer = present;
    for (const { state, change } of steps) {
      const text = stepText(nearer, state, change);
      room -= text.length;
      if (room < 0) break;
      packed.push(text);
      nearer = state;
    }
    return packed;
  };
  const back = pack([...past].reverse());
  const lists = JSON.stringify(listsOf(present));
  const rest = `${lists}\n{"past":[${back}],"future":[${pack(future)}]}`;
  return { text: `${sumOf(STEPS_VERSION, seal, rest)} ${rest}`, steps: back.length };
}

/** Ids of the clients that must be opened for a history to fit; none where there is none. */
export function clientsOfHistory(storage: StorageLike | null): readonly string[] {
  try {
    const text = storage?.getItem(HISTORY_KEY) ?? '';
    const lists = JSON.parse(text.slice(text.indexOf(' ') + 1, text.indexOf('\n'))) as Partial<Lists>;
    return Array.isArray(lists.clients) ? lists.clients : [];
  } catch {
    return [];
  }
}

/** The history of a book; an empty one where the text does not belong to it or was not written by this version. */
export function unpackHistory(text: string | null, book: Book, seal: string): History<Book> {
  const none = { past: [], present: book, future: [] };
  const gap = (text ?? '').indexOf(' ');
  const rest = (text ?? '').slice(gap + 1);
  // The sum shows that this version wrote the steps, for this very book: they need no further look.
  if (text === null || gap < 0 || text.slice(0, gap) !== sumOf(STEPS_VERSION, seal, rest)) return none;
  const line = rest.indexOf('\n');
  if (rest.slice(0, line) !== JSON.stringify(listsOf(book))) return none;
  const { past, future } = JSON.parse(rest.slice(line + 1)) as Record<'past' | 'future', KeptStep[]>;
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
export function loadHistory(books: BookStorage, book: Book): History<Book> {
  try {
    const text = books.storage?.getItem(HISTORY_KEY) ?? null;
    return unpackHistory(text, book, books.records?.seal() ?? '');
  } catch {
    return { past: [], present: book, future: [] };
  }
}

/**
 * Keeps the history each time its book was kept, in a task of its own, in at most half of the room that is left, and gives it all up where the book has
 * none. A history of changes that were kept before this was called is kept at once. Says so where it reaches less far back for want
 * of room.
 *
 * @param history asked when it is to be kept
 * @returns what ends it
 */
export function keepHistory(books: BookStorage, history: () => History<Book>): () => void {
  const { storage, records } = books;
  let shortened = false;
  const say = (steps: number, isShort: boolean): void => {
    if (isShort) books.notify({ kind: 'undoShortened', steps });
    else if (shortened) books.dismiss('undoShortened');
    shortened = isShort;
  };
  const keep = (counted: NonNullable<typeof storage>, seal: string): void => {
    const now = history();
    const room = (counted.free() + (counted.getItem(HISTORY_KEY)?.length ?? 0)) * PART_OF_ROOM;
    const { text, steps } = packHistory(now, seal, Math.min(MOST_LETTERS, room));
    counted.setItem(HISTORY_KEY, text);
    say(steps, steps < now.past.length && room < MOST_LETTERS);
  };
  const giveUp = (counted: NonNullable<typeof storage>): void => {
    try {
      counted.removeItem(HISTORY_KEY);
    } catch {
      // What stays does not fit the book any more, and is not opened.
    }
    if (history().past.length > 0) say(0, true);
  };
  let before = books.status();
  if (storage && records && before.kind === 'saved' && history().past.length > 0)
    try {
      if (storage.getItem(HISTORY_KEY) === null) keep(storage, records.seal());
    } catch {
      giveUp(storage);
    }
  return books.subscribe((status) => {
    if (!storage || !records || status === before) return;
    before = status;
    if (status.kind === 'saved')
      books.following.give(() => {
        // A change that came meanwhile is in the history and not yet in the records: it is kept with them.
        if (books.isWaiting()) return;
        try {
          keep(storage, records.seal());
        } catch {
          giveUp(storage);
        }
      });
    else if (status.kind === 'failed' && status.reason === 'full')
      try {
        if (storage.getItem(HISTORY_KEY) === null) return;
        giveUp(storage);
        books.retry();
      } catch {
        giveUp(storage);
      }
  });
}
