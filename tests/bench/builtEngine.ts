// The engine as the built page has it. The loader that runs these figures would name each function anew whenever a draft makes it,
// and a draft makes thousands.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Rolldown } from 'vite';

/** Builds the engine with the page's bundler and loads it. */
export async function builtEngine(): Promise<typeof import('../../src/engine')> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      target: 'es2022',
      minify: true,
      lib: { entry: 'src/engine/index.ts', formats: ['es'] },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const [{ output }] = built as Rolldown.RolldownOutput[] as [Rolldown.RolldownOutput];
  const folder = mkdtempSync(join(tmpdir(), 'staywright-bench-'));
  try {
    const file = join(folder, 'engine.mjs');
    writeFileSync(file, output[0].code);
    return await import(pathToFileURL(file).href);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
