// Puts a part of the screen on the page with a table under it, as the shell does.

import { type RenderResult, render } from '@testing-library/react';
import { PointerEventsCheckLevel, type UserEvent, userEvent } from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { createStore, type Store } from '../../src/app/store/store';
import { StoreContext } from '../../src/app/store/storeContext';
import { type Book, type Client, changeSentence, DEMO_BOOK, openClient } from '../../src/document';

interface OnTable extends RenderResult {
  readonly store: Store;
  readonly user: UserEvent;
  /** The open client as last kept. */
  readonly client: () => Client;
  /** Names of the changes kept so far, the last one last. */
  readonly changes: () => string[];
}

export function onTable(part: ReactNode, book: Book = DEMO_BOOK): OnTable {
  const store = createStore(book);
  const rendered = render(<StoreContext value={store}>{part}</StoreContext>);
  return {
    ...rendered,
    store,
    // No style sheet is loaded, so nothing on the page refuses the pointer.
    user: userEvent.setup({ pointerEventsCheck: PointerEventsCheckLevel.Never }),
    client: () => openClient(store.getState().history.present),
    changes: () => store.getState().history.past.map(({ change }) => changeSentence(change)),
  };
}
