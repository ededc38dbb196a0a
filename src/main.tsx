// Puts the table on the page: the kept book in, every kept change out again.

import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import {
  App,
  browserStorage,
  createBookStorage,
  createTable,
  keepHistory,
  loadHistory,
  TableContext,
} from './app';
import './app/look/base.css';
import './app/look/shell.css';
import './app/look/history.css';
import './app/look/dialog.css';
import './app/look/book.css';
import './app/look/fields.css';
import './app/look/table.css';
import './app/look/cards.css';
import './app/look/shoulders.css';
import './app/look/sides.css';
import './app/look/darts.css';
import './app/look/proof.css';
import './app/look/cut.css';
import './app/look/touch.css';
import './app/look/making.css';
import './app/look/narrow.css';
import './app/look/print.css';

const local = browserStorage(window);
const storage = createBookStorage({ storage: local, now: () => new Date() });
const { book, said } = storage.load();
const table = createTable(book, loadHistory(local, book));
keepHistory(local, storage, () => table.getState().history);

table.subscribe(({ history }, before) => {
  if (history.present !== before.history.present) storage.save(history.present);
});
// A number half typed or a handle half pulled is kept too when the page goes away; on a tablet being hidden may be the
// last that is heard of it. Registered before the storage's own listeners, which then find it.
const settle = (): void => table.getState().keep('last change');
window.addEventListener('pagehide', settle);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') settle();
});
storage.attachFlush(window);

const root = document.getElementById('root');
if (root)
  createRoot(root).render(
    <StrictMode>
      <TableContext value={table}>
        <App keeping={{ storage, said }} />
      </TableContext>
    </StrictMode>,
  );
