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
import './app/styles/window/base.css';
import './app/styles/window/shell.css';
import './app/styles/window/steps.css';
import './app/styles/window/history.css';
import './app/styles/window/footBar.css';
import './app/styles/window/dialog.css';
import './app/styles/book.css';
import './app/styles/window/fields.css';
import './app/styles/window/signKey.css';
import './app/styles/measure/measure.css';
import './app/styles/measure/measureRows.css';
import './app/styles/draft/table.css';
import './app/styles/draft/draft.css';
import './app/styles/draft/ledger.css';
import './app/styles/draft/strip.css';
import './app/styles/window/cards.css';
import './app/styles/window/lines.css';
import './app/styles/draft/shoulders.css';
import './app/styles/draft/sides.css';
import './app/styles/draft/styles.css';
import './app/styles/draft/darts.css';
import './app/styles/draft/inspector.css';
import './app/styles/draft/wedges.css';
import './app/styles/fit.css';
import './app/styles/proof.css';
import './app/styles/cutLayout.css';
import './app/styles/cut.css';
import './app/styles/sizes.css';
import './app/styles/window/touch.css';
import './app/styles/lay.css';
import './app/styles/making.css';
import './app/styles/window/narrow.css';
import './app/styles/measure/measureNarrow.css';
import './app/styles/help.css';
import './app/styles/window/forced.css';
import './app/styles/window/print.css';

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
  let isHistoryMissing = false;
  const keptHistory = await fetchHistory(local, () => {
    isHistoryMissing = true;
  });
  const book = await storage.load(keptHistory?.clientsOfHistory(local));
  const store = createStore(book, keptHistory?.loadHistory(storage, book));
  askToPersist(storage, navigator);
  // Where it does not come, undo holds until the page is closed.
  const sayMissing = (): void => storage.notify({ kind: 'undoNotFetched' });
  if (isHistoryMissing) sayMissing();
  fetchHistoryLater().then(
    ({ keepHistory }) => keepHistory(storage, () => store.getState().history),
    sayMissing,
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
  const element = document.getElementById('root');
  if (!element) return;
  const root = createRoot(element);
  root.render(<StrictMode>{page}</StrictMode>);
}
