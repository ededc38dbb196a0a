// Puts the table on the page: the kept book in, every kept change out again.

import { type ReactNode, StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import {
  App,
  browserStorage,
  createBookStorage,
  createStore,
  ErrorBoundary,
  keepHistory,
  loadHistory,
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
import './app/styles/bench.css';
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
  const storage = createBookStorage({ storage: local, now: () => new Date() });
  const { book, said } = await storage.load();
  const store = createStore(book, loadHistory(local, book));
  keepHistory(local, storage, () => store.getState().history);

  store.subscribe(({ history }, before) => {
    if (history.present !== before.history.present) storage.save(history.present);
  });
  // A number half typed or a handle half pulled is kept too when the page goes away; on a tablet being hidden may be the
  // last that is heard of it. Registered before the storage's own listeners, which then find it.
  const settle = (): void => store.getState().keep({ code: 'passingChangeKept' });
  window.addEventListener('pagehide', settle);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') settle();
  });
  storage.attachFlush(window);

  const { kept, undo } = store.getState();
  show(
    <ErrorBoundary part="page" book={kept} onUndo={undo}>
      <StoreContext value={store}>
        <App keeping={{ storage, said }} />
      </StoreContext>
    </ErrorBoundary>,
  );
}

function show(page: ReactNode): void {
  const root = document.getElementById('root');
  if (root) createRoot(root).render(<StrictMode>{page}</StrictMode>);
}
