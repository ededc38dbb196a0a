// The app's one way in, for the page.

export { ErrorBoundary } from './components/later/ErrorBoundary';
export { App } from './shell/App';
export { NotOpened } from './shell/notices/NotOpened';
export { BookStorage } from './storage/book/bookStorage';
export { fetchHistory, fetchHistoryLater } from './storage/book/fetchHistory';
export { hostOf } from './storage/device/host';
export { browserStorage } from './storage/device/storageLike';
export { askToPersist } from './storage/persist';
export { BooksContext } from './storage/windows/booksContext';
export { exclusiveOf } from './storage/windows/exclusive';
export { attach } from './storage/windows/tabs';
export { createStore } from './store/store';
export { StoreContext } from './store/storeContext';
