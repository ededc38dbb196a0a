// A test in each of several engines. One that is not installed is left out, and the name of its test says so.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { it } from 'vitest';
import type { Engine, EngineWindow } from './engine';

/** The longest that a walk takes on a busy machine, ms. */
const MOST_MS = 600_000;

/** @param walk gets a window, the folder of its downloads and the name of its engine */
export function inEngines(
  engines: readonly Engine[],
  what: string,
  walk: (view: EngineWindow, downloads: string, name: string) => Promise<void>,
): void {
  for (const { name, packages, isInstalled, open } of engines) {
    const left = isInstalled() ? '' : `, which is not installed: apt-get install ${packages}`;
    if (left) process.stderr.write(`Left out: ${what} in ${name}${left}\n`);
    it.skipIf(left)(
      `${what} in ${name}${left}`,
      async () => {
        const downloads = mkdtempSync(join(tmpdir(), 'staywright-downloads-'));
        try {
          const view = await open(downloads);
          try {
            await walk(view, downloads, name);
          } finally {
            await view.close();
          }
        } finally {
          rmSync(downloads, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
        }
      },
      MOST_MS,
    );
  }
}
