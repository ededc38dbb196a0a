// The service worker: the page with the network off. Every file of the build is kept at the first visit and served from there.
// A later build waits until the page sends `update` or all its windows are closed. Each file is checked by its sum, so that a
// wrong answer of a server is never kept; what was kept for a build stays until no window may still be of that build.

import { PrecacheController } from 'workbox-precaching';
import type { PrecachedFile, RequestEvent, WorkerScope } from './workerScope';

const worker = self as unknown as WorkerScope;
const files = (self as unknown as { readonly __WB_MANIFEST: readonly PrecachedFile[] }).__WB_MANIFEST;

/** Faces of writing that few names need are kept when first used. */
const NOT_AT_ONCE = /noto-sans-/;

const CACHE = 'staywright-files';
/** Other pages of the same host may keep caches too. */
const OWN_CACHE = /^staywright-/;
/** Asked of the server and not of the browser's own store, which may hold a wrong answer. A file that did not change is not sent. */
const askServer = {
  requestWillFetch: async ({ request }: { request: Request }) => new Request(request, { cache: 'no-cache' }),
};

const controllers = [false, true].map((later) => {
  const controller = new PrecacheController({ cacheName: CACHE, plugins: [askServer] });
  // A host may say that its answer varies by who asks; a file of the build never does.
  controller.strategy.matchOptions = { ignoreVary: true };
  controller.addToCacheList(
    files.filter(({ url }) => NOT_AT_ONCE.test(url) === later).map((file) => ({ ...file })),
  );
  return controller;
});

const page = new URL('./', worker.location.href).href;

/** The answer to a request; a miss is asked of the server, and kept where its sum is right. */
function answer(event: RequestEvent, request: Request): Promise<Response> {
  for (const controller of controllers) {
    const cacheKey = controller.getCacheKeyForURL(request.url);
    if (cacheKey === undefined) continue;
    const integrity = controller.getIntegrityForCacheKey(cacheKey);
    return controller.strategy.handle({ event, request, params: { cacheKey, integrity } });
  }
  return ofAnotherBuild(request);
}

/** A file that this build has not: an open window of an earlier build may still ask for it. */
async function ofAnotherBuild(request: Request): Promise<Response> {
  const kept = await worker.caches.match(request, { ignoreSearch: true, ignoreVary: true });
  if (kept) return kept;
  const fresh = await fetch(request);
  return request.url.startsWith(`${page}assets/`) && servesPage(fresh) ? Response.error() : fresh;
}

/** Some hosts answer with the page what they do not have. */
const servesPage = (fresh: Response): boolean =>
  fresh.headers.get('content-type')?.startsWith('text/html') === true;

/** Removes what other builds kept, where this window is the only one and no later build is on its way. */
async function clear(): Promise<void> {
  const { installing, waiting } = worker.registration;
  if (installing ?? waiting) return;
  const windows = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (windows.length > 0) return;
  for (const name of await worker.caches.keys())
    if (OWN_CACHE.test(name) && name !== CACHE) await worker.caches.delete(name);
  const own = new Set(controllers.flatMap((controller) => [...controller.getURLsToCacheKeys().values()]));
  const cache = await worker.caches.open(CACHE);
  for (const request of await cache.keys()) if (!own.has(request.url)) await cache.delete(request);
}

worker.addEventListener('install', (event) => {
  void controllers[0]?.install(event);
});
worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener('message', ({ data }) => {
  if (data === 'update') void worker.skipWaiting();
});
worker.addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request;
  if (method !== 'GET' || !url.startsWith(page)) return;
  if (mode !== 'navigate') {
    event.respondWith(answer(event, event.request));
    return;
  }
  event.waitUntil(clear());
  event.respondWith(answer(event, new Request(page)));
});
