// Builds the app in one of its modes into a folder of its own and serves it.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Plugin, preview } from 'vite';
import { buildApp } from '../../../src/release/buildApp';

export interface ServedBuild {
  /** The address of the page. */
  readonly url: string;
  /** Where its files lie. */
  readonly folder: string;
  /** Ends the server and removes the folder. */
  readonly close: () => Promise<void>;
}

/**
 * Lets the browser keep the files whose names change with what is in them, as a visitor's service worker does: a page that is
 * opened again takes two thirds of the work. The server by itself has each file sent again.
 */
const keepNamedFiles: Plugin = {
  name: 'keep-named-files',
  configurePreviewServer: ({ middlewares }) => {
    middlewares.use((request, response, next) => {
      if (request.url?.startsWith('/assets/'))
        response.setHeader('Cache-Control', 'public, max-age=31536000, immutable');
      next();
    });
  },
};

/** @param mode `accented`: every text of the catalogue is lengthened and written in accented letters. */
export async function serveBuild(mode: 'production' | 'accented'): Promise<ServedBuild> {
  const folder = mkdtempSync(join(tmpdir(), 'staywright-app-'));
  buildApp(mode, folder);
  const server = await preview({
    logLevel: 'warn',
    plugins: [keepNamedFiles],
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0 },
  });
  return {
    url: server.resolvedUrls?.local[0] ?? '',
    folder,
    close: async () => {
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
