// A part of the screen over a storage, as the shell puts it there.

import { render } from '@testing-library/react';
import { PointerEventsCheckLevel, userEvent } from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { BooksContext } from '../../../src/app/storage/windows/booksContext';
import { StoreContext } from '../../../src/app/store/storeContext';
import type { FakeStorage } from '../storage/fakeStorage';
import { openTab } from '../storage/keeper';

export async function keptOnTable(part: ReactNode, storage: FakeStorage | null) {
  const tab = await openTab(storage);
  const rendered = render(
    <BooksContext value={{ storage: tab.books, host: tab.host }}>
      <StoreContext value={tab.store}>{part}</StoreContext>
    </BooksContext>,
  );
  const user = userEvent.setup({ pointerEventsCheck: PointerEventsCheckLevel.Never });
  return { ...rendered, tab, user };
}
