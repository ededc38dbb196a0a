// Puts the table on the page: the kept book in, every kept change out again.

import { type ReactNode, StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import {
  App,
  askToPersist,
  attach,
  BookStorage,
  BooksContext,
  browserStorage,
  createStore,
  ErrorBoundary,
  exclusiveOf,
  fetchHistory,
  fetchHistoryLater,
  hostOf,
  NotOpened,
  StoreContext,
} from './app';
import './app/styles/base.css';
import './app/styles/shell.css';
import './app/styles/history.css';
import './app/styles/footBar.css';
import './app/styles/dialog.css';
import './app/styles/book.css';
import './app/styles/fields.css';
import './app/styles/signKey.css';
import './app/styles/measure.css';
import './app/styles/measureRows.css';
import './app/styles/table.css';
import './app/styles/draft.css';
import './app/styles/ledger.css';
import './app/styles/strip.css';
import './app/styles/cards.css';
import './app/styles/shoulders.css';
import './app/styles/sides.css';
import './app/styles/darts.css';
import './app/styles/inspector.css';
import './app/styles/wedges.css';
import './app/styles/proof.css';
import './app/styles/cut.css';
import './app/styles/touch.css';
import './app/styles/making.css';
import './app/styles/narrow.css';
import './app/styles/measureNarrow.css';
import './app/styles/help.css';
import './app/styles/forced.css';
import './app/styles/print.css';

// Not awaited by the module itself: what `load` fetches may import from this module's file.
openApp().catch(() => show(<NotOpened />));

async function openApp(): Promise<void> {
  const local = browserStorage(window);
  const storage = new BookStorage({
    storage: local,
    now: () => new Date(),
    newId: () => crypto.randomUUID(),
    exclusive: exclusiveOf(navigator.locks),
  });
  const keptHistory = await fetchHistory(local);
  const book = await storage.load(keptHistory?.clientsOfHistory(local));
  const store = createStore(book, keptHistory?.loadHistory(storage, book));
  askToPersist(storage, navigator);
  // Where it does not come, undo holds until the page is closed.
  fetchHistoryLater().then(
    ({ keepHistory }) => keepHistory(storage, () => store.getState().history),
    () => undefined,
  );

  store.subscribe(({ history }, before) => {
    if (history.present !== before.history.present) storage.save(history.present);
  });
  // A number half typed or a handle half pulled is kept too when the page goes away; on a tablet being hidden may be the
  // last that is heard of it.
  const host = hostOf(store);
  attach(window, storage, host);

  const { kept, undo } = store.getState();
  show(
    <ErrorBoundary part="page" book={kept} onUndo={undo}>
      <BooksContext value={{ storage, host }}>
        <StoreContext value={store}>
          <App />
        </StoreContext>
      </BooksContext>
    </ErrorBoundary>,
  );
}

function show(page: ReactNode): void {
  const root = document.getElementById('root');
  if (root) createRoot(root).render(<StrictMode>{page}</StrictMode>);
}
