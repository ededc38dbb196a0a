// Puts a part of the screen on the page with a table under it, as the shell does.

import '@testing-library/jest-dom/vitest';
import { cleanup, type RenderResult, render } from '@testing-library/react';
import { type UserEvent, userEvent } from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { afterEach } from 'vitest';
import { createTable, type TableStore } from '../../src/app/store/store';
import { TableContext } from '../../src/app/store/storeContext';
import { type Book, type Client, DEMO_BOOK, openClient } from '../../src/document';

afterEach(cleanup);

interface OnTable extends RenderResult {
  readonly table: TableStore;
  readonly user: UserEvent;
  /** The open client as last kept. */
  readonly client: () => Client;
  /** Names of the changes kept so far, the last one last. */
  readonly changes: () => string[];
}

export function onTable(part: ReactNode, book: Book = DEMO_BOOK): OnTable {
  const table = createTable(book);
  const rendered = render(<TableContext value={table}>{part}</TableContext>);
  return {
    ...rendered,
    table,
    user: userEvent.setup(),
    client: () => openClient(table.getState().history.present),
    changes: () => table.getState().history.past.map(({ change }) => change),
  };
}
