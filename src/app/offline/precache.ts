// How the build writes its service worker: with the sum of every file, so that no other answer is ever kept for one.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { VitePWA, type VitePWAOptions } from 'vite-plugin-pwa';

type Transform = NonNullable<NonNullable<VitePWAOptions['injectManifest']>['manifestTransforms']>[number];

/** The folder that is built into, which the plugin's own options do not tell. */
let folder = '';

/**
 * Puts the sum of each file into the worker's list. A file under assets/ has its sum in its name too, and needs no revision.
 * The page is listed as `./`.
 */
const withSums: Transform = (entries) => ({
  manifest: entries.map((entry) => ({
    ...entry,
    url: entry.url === 'index.html' ? './' : entry.url,
    integrity: `sha256-${createHash('sha256')
      .update(readFileSync(join(folder, entry.url)))
      .digest('base64')}`,
  })),
  warnings: [],
});

/** Writes sw.js from sw.ts. */
export const offlineWorker = [
  {
    name: 'offline-folder',
    configResolved: ({ root, build }: { root: string; build: { outDir: string } }) => {
      folder = resolve(root, build.outDir);
    },
  },
  VitePWA({
    strategies: 'injectManifest',
    srcDir: 'src/app/offline',
    filename: 'sw.ts',
    injectRegister: false,
    manifest: false,
    injectManifest: {
      globPatterns: ['**/*'],
      // Pictures that are shown before the page is installed are no part of it.
      globIgnores: ['screenshot-*'],
      dontCacheBustURLsMatching: /^assets\//,
      manifestTransforms: [withSums],
      maximumFileSizeToCacheInBytes: 10_000_000,
      rollupFormat: 'iife',
    },
  }),
];
