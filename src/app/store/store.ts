// What the screen shows and what a maker did to it: the book with its history, and the change being made right now.

import { create } from 'zustand';
import {
  type Book,
  type Change,
  type History,
  record,
  redo,
  startHistory,
  undo,
  withStamps,
} from '../../document';

/** How a handle was moved to where it is kept. */
interface Moved {
  /** Its number as it is read; empty where it has none any more. */
  readonly value: string;
  /** `key`: an arrow key was let go. `sameKey`: once more, on the same handle and a moment later. */
  readonly by: 'pull' | 'key' | 'sameKey';
}

export interface StoreState {
  readonly history: History<Book>;
  /** How the last step was made, if by a handle; it speaks of the history it names and of no other. */
  readonly moved: (Moved & { readonly history: History<Book> }) | null;
  /** The book as it looks while a handle is pulled or a number typed; null when nothing is under way. */
  readonly preview: Book | null;
  /** Shows a change in passing, made on what was last kept. */
  readonly show: (change: (book: Book) => Book) => void;
  /** Keeps what is shown in passing as one step of the history; presses of a key in a row are one step. */
  readonly keep: (what: Change, moved?: Moved) => void;
  /** Goes back to what was last kept. */
  readonly drop: () => void;
  /** Makes and keeps a change at once. */
  readonly change: (what: Change, change: (book: Book) => Book) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** The book as it was last kept. */
  readonly kept: () => Book;
  /** Takes in what another tab kept; a change under way stays as it is. */
  readonly follow: (taken: (history: History<Book>) => History<Book>) => void;
}

/**
 * A table with a book on it, and what was done to it before.
 *
 * @param now the time that a change is marked with
 */
export function createStore(
  book: Book,
  history: History<Book> = startHistory(book),
  now: () => Date = () => new Date(),
) {
  const stamped = (before: Book, after: Book): Book => withStamps(before, after, now().toISOString());
  return create<StoreState>()((set, get) => ({
    history,
    moved: null,
    preview: null,
    show: (change) => set(({ history }) => ({ preview: change(history.present) })),
    keep: (what, moved) =>
      set(({ history, preview, moved: last }) => {
        if (!preview) return {};
        // Whatever was done between, an undo too, has left another history.
        const goesOn = moved?.by === 'sameKey' && last?.history === history && last.by !== 'pull';
        const next = record(history, stamped(history.present, preview), what, goesOn);
        return { history: next, preview: null, moved: moved ? { ...moved, history: next } : null };
      }),
    drop: () => set({ preview: null }),
    change: (what, change) =>
      set(({ history, preview }) => ({
        history: record(history, stamped(history.present, change(preview ?? history.present)), what),
        preview: null,
      })),
    undo: () => set(({ history }) => ({ history: undo(history), preview: null })),
    redo: () => set(({ history }) => ({ history: redo(history), preview: null })),
    kept: () => get().history.present,
    follow: (taken) => set(({ history }) => ({ history: taken(history) })),
  }));
}

export type Store = ReturnType<typeof createStore>;

/** The book as it is seen: with the change under way, if there is one. */
export const seen = (state: StoreState): Book => state.preview ?? state.history.present;
