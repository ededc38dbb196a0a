// The app's one way in, for the page.

export { ErrorBoundary } from './components/ErrorBoundary';
export { App } from './shell/App';
export { NotOpened } from './shell/notices/NotOpened';
export { BookStorage } from './storage/bookStorage';
export { BooksContext } from './storage/booksContext';
export { exclusiveOf } from './storage/exclusive';
export { fetchHistory, fetchHistoryLater } from './storage/fetchHistory';
export { hostOf } from './storage/host';
export { askToPersist } from './storage/persist';
export { browserStorage } from './storage/storageLike';
export { attach } from './storage/tabs';
export { createStore } from './store/store';
export { StoreContext } from './store/storeContext';
