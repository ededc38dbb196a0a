// How the source starts a worker, and how a build carries it: no part that page and workers share is in a build twice.

import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import type { Plugin } from 'vite';

/** `new Worker(new URL('./worker.ts', import.meta.url), …)` */
const STARTED = /new Worker\(new URL\('([^']+)', import\.meta\.url\), \{ type: 'module' \}\)/g;

/** In the helper of the build that fetches a part with what that part needs: only a page has a document to ask through. */
const FETCHED_WITH = ['deps.length > 0', 'deps.length > 0 && typeof document !== "undefined"'] as const;

/** In a folder of files: workers are scripts of the page's own build, started by their address. */
export const workersBesidePage: Plugin = {
  name: 'workers-beside-page',
  apply: 'build',
  enforce: 'pre',
  transform(code, path) {
    if (path.includes('vite/preload-helper')) {
      if (!code.includes(FETCHED_WITH[0])) this.error('the build fetches parts otherwise than expected');
      return code.replace(...FETCHED_WITH);
    }
    let written = code;
    for (const [start, worker = ''] of code.matchAll(STARTED)) {
      const file = this.emitFile({ type: 'chunk', id: resolve(dirname(path), worker) });
      written = written.replace(start, `new Worker(import.meta.ROLLUP_FILE_URL_${file}, { type: 'module' })`);
    }
    return written === code ? null : written;
  },
};

const ENTRY = '/src/main.tsx';
const BOTH = '\0page-and-workers';
const START = 'virtual:start-worker';

/**
 * In one script, which has the id `staywright`: it is the page where there is a document, and
 * else the worker that it is given the name of: its path in the source.
 *
 * @param source the folder of the source
 */
export const workersInScript = (source: string): Plugin => ({
  name: 'workers-in-script',
  apply: 'build',
  enforce: 'pre',
  resolveId: (id, importer) => {
    if (id === START) return `\0${START}`;
    return id === ENTRY && importer !== BOTH ? BOTH : null;
  },
  load(id) {
    if (id === `\0${START}`) return STARTER;
    if (id !== BOTH) return null;
    const workers = workersIn(source).map(
      (path) => `${JSON.stringify(relative(source, path))}: () => import(${JSON.stringify(path)})`,
    );
    return `const WORKERS = { ${workers.join(', ')} };
if (typeof document === 'undefined') WORKERS[self.name]();
else import(${JSON.stringify(ENTRY)});`;
  },
  transform(code, path) {
    const written = code.replace(
      STARTED,
      (_, worker: string) =>
        `startNamedWorker(${JSON.stringify(relative(source, resolve(dirname(path), worker)))})`,
    );
    return written === code ? null : `import { startNamedWorker } from '${START}';\n${written}`;
  },
});

const STARTER = `let address;
export function startNamedWorker(name) {
  const own = document.getElementById('staywright').textContent;
  address ??= URL.createObjectURL(new Blob([own], { type: 'text/javascript' }));
  return new Worker(address, { name });
}`;

/** Paths of all workers that the source starts. */
function workersIn(source: string): string[] {
  const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.tsx?$/.test(name),
  );
  return files.flatMap((name) => {
    const path = join(source, name);
    return [...readFileSync(path, 'utf8').matchAll(STARTED)].map(([, worker = '']) =>
      resolve(dirname(path), worker),
    );
  });
}
