// Writes the service worker of a build, with the list of what the build is made of.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';
import { type Build, serveOffline } from './serveOffline.ts';

/** Faces of writing that few names need are kept when first used; a picture for the README never is. */
const NOT_AT_ONCE = /noto-sans-|^readme-/;

export const offlineWorker: Plugin = {
  name: 'offline-worker',
  apply: 'build',
  writeBundle: ({ dir }) => {
    if (dir !== undefined) writeFileSync(join(dir, 'sw.js'), workerOf(dir));
  },
};

function workerOf(dir: string): string {
  const files = readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== 'sw.js')
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
  const sum = createHash('sha256');
  for (const file of files) sum.update(file).update(readFileSync(join(dir, file)));
  const build: Build = {
    version: sum.digest('hex').slice(0, 16),
    files: files
      .filter((file) => !NOT_AT_ONCE.test(file))
      .map((file) => (file === 'index.html' ? './' : file)),
  };
  return `(${serveOffline.toString()})(self, ${JSON.stringify(build)});\n`;
}
