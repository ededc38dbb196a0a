// Hands the one table to every part of the screen.

import { createContext, useContext, useMemo } from 'react';
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

/** The book, client and draft in view. */
export function useOpen(): { book: Book; client: Client; sheet: Sheet } {
  const book = useTable(seen);
  const client = openClient(book);
  return { book, client, sheet: openSheet(client) };
}

/** The draft in view, computed once for each state of tape and style. */
export function useDraft(): Draft {
  const { client, sheet } = useOpen();
  return useMemo(() => draftOnce(client.measurements, sheet.style), [client.measurements, sheet.style]);
}

/** The draft of what was last kept, without the change under way. */
export function useCommittedDraft(): Draft {
  const book = useTable((table) => table.history.present);
  const client = openClient(book);
  const { style } = openSheet(client);
  const { measurements } = client;
  return useMemo(() => draft(measurements, style), [measurements, style]);
}

// Several parts of the screen ask for the same draft; the last one is enough to remember.
let last: { measurements: Measurements; style: Style; draft: Draft } | null = null;

function draftOnce(measurements: Measurements, style: Style): Draft {
  if (last?.measurements !== measurements || last.style !== style)
    last = { measurements, style, draft: draft(measurements, style) };
  return last.draft;
}
