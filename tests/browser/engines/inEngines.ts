// Tests in each of several engines, one after the other in one window, because the start of an engine is a third of the work of a
// test. One that is not installed is left out, and the names of its tests say so.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, it } from 'vitest';
import type { Engine, EngineWindow } from './engine';

/** The longest that a walk takes on a busy machine, ms. */
const MOST_MS = 600_000;

/** Gets a window, the folder of its downloads and the name of its engine. */
type EngineWalk = (view: EngineWindow, downloads: string, name: string) => Promise<void>;

/** @param walks by what they do; none finds anything of another, since each goes to an origin of its own */
export function inEngines(engines: readonly Engine[], walks: Readonly<Record<string, EngineWalk>>): void {
  for (const engine of engines) {
    const left = engine.isInstalled() ? '' : `, which is not installed: apt-get install ${engine.packages}`;
    const { lend, close } = windowOf(engine);
    for (const [what, walk] of Object.entries(walks)) {
      if (left) process.stderr.write(`Left out: ${what} in ${engine.name}${left}\n`);
      it.skipIf(left)(
        `${what} in ${engine.name}${left}`,
        () => lend((view, downloads) => walk(view, downloads, engine.name)),
        MOST_MS,
      );
    }
    afterAll(close);
  }
}

/** A window of the engine that is opened when it is first asked for, and anew after a walk that failed. */
function windowOf({ open }: Engine): {
  readonly lend: (walk: (view: EngineWindow, downloads: string) => Promise<void>) => Promise<void>;
  readonly close: () => Promise<void>;
} {
  let opened: { readonly view: EngineWindow; readonly downloads: string } | undefined;
  const close = async (): Promise<void> => {
    if (!opened) return;
    const { view, downloads } = opened;
    opened = undefined;
    await view.close();
    rmSync(downloads, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  };
  return {
    lend: async (walk) => {
      if (!opened) {
        const downloads = mkdtempSync(join(tmpdir(), 'staywright-downloads-'));
        opened = { downloads, view: await open(downloads) };
      }
      const { view, downloads } = opened;
      try {
        await walk(view, downloads);
      } catch (error) {
        await close();
        throw error;
      }
    },
    close,
  };
}
