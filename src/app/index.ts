// The app's one way in, for the page.

export { App } from './shell/App';
export { createBookStorage } from './storage/bookStorage';
export { keepHistory, loadHistory } from './storage/historyStorage';
export { browserStorage } from './storage/storageLike';
export { createStore } from './store/store';
export { StoreContext } from './store/storeContext';
