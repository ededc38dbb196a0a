// The app's one way in, for the page.

export { ErrorBoundary } from './components/ErrorBoundary';
export { App } from './shell/App';
export { NotOpened } from './shell/NotOpened';
export { createBookStorage } from './storage/bookStorage';
export { keepHistory, loadHistory } from './storage/historyStorage';
export { browserStorage } from './storage/storageLike';
export { createStore } from './store/store';
export { StoreContext } from './store/storeContext';
