// What a service worker has around it, as far as it is used here. The types of the page's own surroundings know none of it.

export interface WorkerScope {
  readonly location: { readonly href: string };
  readonly caches: CacheStorage;
  readonly clients: {
    claim(): Promise<void>;
    matchAll(options: { type: 'window'; includeUncontrolled: boolean }): Promise<readonly unknown[]>;
  };
  readonly registration: { readonly installing: unknown; readonly waiting: unknown };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listen: (event: WorkerEvent) => void): void;
  addEventListener(type: 'fetch', listen: (event: RequestEvent) => void): void;
  addEventListener(type: 'message', listen: (event: { readonly data: unknown }) => void): void;
}

interface WorkerEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

export interface RequestEvent extends WorkerEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

/** A file of the build, with its address relative to the worker and its sum. */
export interface PrecachedFile {
  readonly url: string;
  readonly revision: string | null;
  readonly integrity: string;
}
