// Hands the store to every part of the screen.

import { createContext, useContext } from 'react';
import { type Book, type Client, openClient, openDraftOf, type SavedDraft } from '../../document';
import type { Style } from '../../engine';
import { type Store, type StoreState, seen } from './store';

export const StoreContext = createContext<Store | null>(null);

/** Part of the table, and a new drawing when it changes. */
export function useStore<T>(pick: (state: StoreState) => T): T {
  const store = useContext(StoreContext);
  if (!store) throw new Error('useTable needs a TableContext around it');
  return store(pick);
}

/** A book to be shown instead of the one that is seen now: parts that may lag behind a pull are given the last but one. */
export const SeenContext = createContext<Book | null>(null);

/** The book, client and draft in view. */
export function useOpen(): { book: Book; client: Client; savedDraft: SavedDraft } {
  const given = useContext(SeenContext);
  const book = useStore((state) => given ?? seen(state));
  const client = openClient(book);
  return { book, client, savedDraft: openDraftOf(client) };
}

/** The client and draft in view as they were last kept: what does not follow a pull or a number half typed. */
export function useKept(): { client: Client; savedDraft: SavedDraft } {
  const client = useStore((state) => openClient(state.history.present));
  return { client, savedDraft: openDraftOf(client) };
}

/** The style in view as it was last kept: what is called by where it stands keeps its name while it is moved. */
export function useKeptStyle(): Style {
  return useStore((state) => openDraftOf(openClient(state.history.present)).style);
}
