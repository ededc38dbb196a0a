// The page with the network off: every file of the build is kept at the first visit and served from there. This function
// is written out whole into the service worker, so it may use nothing from outside itself.

/** What a service worker has around it, as far as it is used here. */
export interface WorkerScope {
  readonly location: { readonly href: string };
  readonly caches: CacheStorage;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listen: (event: WaitingEvent) => void): void;
  addEventListener(type: 'fetch', listen: (event: AskingEvent) => void): void;
  addEventListener(type: 'message', listen: (event: { readonly data: unknown }) => void): void;
}

interface WaitingEvent {
  waitUntil(work: Promise<unknown>): void;
}

interface AskingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

export interface Build {
  /** Changes with any file of the build. */
  readonly version: string;
  /** Every file that is kept at once, relative to the worker; the page itself is `./`. */
  readonly files: readonly string[];
}

/**
 * Sets the worker up. A new build waits until all windows of the old one are closed or the page sends `update`, so that no
 * window is left between two builds. What is not in `files` is kept when it is first asked for.
 */
export function serveOffline(scope: WorkerScope, build: Build): void {
  const prefix = 'staywright-';
  const own = `${prefix}${build.version}`;
  const page = new URL('./', scope.location.href).href;

  const fill = async (): Promise<void> => {
    const cache = await scope.caches.open(own);
    await Promise.all(
      build.files.map(async (file) => {
        const url = new URL(file, page).href;
        // A file under assets/ carries its sum in its name: what an earlier build kept of it is the same.
        const kept = file.startsWith('assets/')
          ? await scope.caches.match(url, { ignoreVary: true })
          : undefined;
        const answer = kept ?? (await fetch(url, { cache: 'reload' }));
        if (!answer.ok) throw new Error(`${file} did not come`);
        await cache.put(url, answer);
      }),
    );
  };

  const clear = async (): Promise<void> => {
    for (const name of await scope.caches.keys())
      if (name.startsWith(prefix) && name !== own) await scope.caches.delete(name);
    await scope.clients.claim();
  };

  const answer = async (request: Request): Promise<Response> => {
    const cache = await scope.caches.open(own);
    // A host may say that its answer varies by who asks; a file of the build never does.
    const kept = await cache.match(request.mode === 'navigate' ? page : request, {
      ignoreSearch: true,
      ignoreVary: true,
    });
    if (kept) return kept;
    const fresh = await fetch(request);
    if (fresh.ok && request.url.startsWith(`${page}assets/`)) await cache.put(request, fresh.clone());
    return fresh;
  };

  scope.addEventListener('install', (event) => event.waitUntil(fill()));
  scope.addEventListener('activate', (event) => event.waitUntil(clear()));
  scope.addEventListener('message', ({ data }) => {
    if (data === 'update') void scope.skipWaiting();
  });
  scope.addEventListener('fetch', (event) => {
    const { method, url } = event.request;
    if (method === 'GET' && url.startsWith(page)) event.respondWith(answer(event.request));
  });
}
