// The worker of a print, as the page opens it.

/** What the page needs of the worker. */
export type PrintWorker = Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>;

/** Opens the worker. Throws where the browser has none. */
export const openWorker = (): PrintWorker =>
  new Worker(new URL('./printWorker.ts', import.meta.url), { type: 'module' });
