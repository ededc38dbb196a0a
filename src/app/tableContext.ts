// Hands the one table to every part of the screen.

import { createContext, useContext } from 'react';
import { type Book, type Client, openClient, openSheet, type Sheet } from '../document';
import { type Draft, draft, type Measurements, type Style } from '../engine';
import { seen, type Table, type TableStore } from './store';

export const TableContext = createContext<TableStore | null>(null);

/** Part of the table, and a new drawing when it changes. */
export function useTable<T>(pick: (table: Table) => T): T {
  const store = useContext(TableContext);
  if (!store) throw new Error('useTable needs a TableContext around it');
  return store(pick);
}

/** A book to be shown instead of the one that is seen now: parts that may lag behind a pull are given the last but one. */
export const SeenContext = createContext<Book | null>(null);

/** The book, client and draft in view. */
export function useOpen(): { book: Book; client: Client; sheet: Sheet } {
  const given = useContext(SeenContext);
  const book = useTable((table) => given ?? seen(table));
  const client = openClient(book);
  return { book, client, sheet: openSheet(client) };
}

/** The style in view as it was last kept: what is called by where it stands keeps its name while it is moved. */
export function useKeptStyle(): Style {
  return useTable((table) => openSheet(openClient(table.history.present)).style);
}

/** The draft in view, computed once for each state of tape and style. */
export function useDraft(): Draft {
  const { client, sheet } = useOpen();
  return draftOnce(client.measurements, sheet.style);
}

/** The draft of what was last kept, without the change under way. */
export function useCommittedDraft(): Draft {
  const book = useTable((table) => table.history.present);
  const client = openClient(book);
  return draftOnce(client.measurements, openSheet(client).style);
}

interface Drafted {
  readonly measurements: Measurements;
  readonly style: Style;
  readonly draft: Draft;
}

/** As kept, as seen, as seen by what lags behind, and the one before: more are not asked for at one time. */
const MOST_REMEMBERED = 4;
let remembered: readonly Drafted[] = [];

/** A draft, remembered while it is one of the last that were asked for. */
export function draftOnce(measurements: Measurements, style: Style): Draft {
  const known = remembered.find((each) => each.measurements === measurements && each.style === style);
  const found = known ?? { measurements, style, draft: draft(measurements, style) };
  if (remembered[0] !== found)
    remembered = [found, ...remembered.filter((each) => each !== found)].slice(0, MOST_REMEMBERED);
  return found.draft;
}
