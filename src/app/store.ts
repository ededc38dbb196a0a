// What the screen shows and what a maker did to it: the book with its history, and the change being made right now.

import { create } from 'zustand';
import { type Book, type History, record, redo, startHistory, undo } from '../document';

export interface Table {
  readonly history: History<Book>;
  /** The book as it looks while a handle is pulled or a number typed; null when nothing is under way. */
  readonly preview: Book | null;
  /** Shows a change in passing, made on what was last kept. */
  readonly show: (change: (book: Book) => Book) => void;
  /** Keeps what is shown in passing as one step of the history. */
  readonly keep: (name: string) => void;
  /** Goes back to what was last kept. */
  readonly drop: () => void;
  /** Makes and keeps a change at once. */
  readonly change: (name: string, change: (book: Book) => Book) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** The book as it was last kept. */
  readonly kept: () => Book;
  /** Takes over a book from outside (first load); history starts anew. */
  readonly open: (book: Book) => void;
}

/** A table with a book on it, and what was done to it before. */
export function createTable(book: Book, history: History<Book> = startHistory(book)) {
  return create<Table>()((set, get) => ({
    history,
    preview: null,
    show: (change) => set(({ history }) => ({ preview: change(history.present) })),
    keep: (name) =>
      set(({ history, preview }) =>
        preview ? { history: record(history, preview, name), preview: null } : {},
      ),
    drop: () => set({ preview: null }),
    change: (name, change) =>
      set(({ history, preview }) => ({
        history: record(history, change(preview ?? history.present), name),
        preview: null,
      })),
    undo: () => set(({ history }) => ({ history: undo(history), preview: null })),
    redo: () => set(({ history }) => ({ history: redo(history), preview: null })),
    kept: () => get().history.present,
    open: (next) => set({ history: startHistory(next), preview: null }),
  }));
}

export type TableStore = ReturnType<typeof createTable>;

/** The book as it is seen: with the change under way, if there is one. */
export const seen = (table: Table): Book => table.preview ?? table.history.present;
