// `npm run tools`: writes lib/, the headless drafter and the engine as plain modules, and what the engine exports as a page. The
// modules need no package but those that the program runs with.

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { engineReference } from './engineReference';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));

/** Writes into a folder, which is emptied before: drafter/staywright.js, engine/index.js and engine/REFERENCE.md. */
export async function buildTools(folder: string): Promise<void> {
  await buildModules(folder);
  writeFileSync(join(folder, 'engine/REFERENCE.md'), engineReference());
}

/** The modules alone. */
export async function buildModules(folder: string): Promise<void> {
  const { dependencies } = JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8'));
  await build({
    configFile: false,
    root: PROJECT,
    logLevel: 'warn',
    publicDir: false,
    ssr: { external: Object.keys(dependencies) },
    build: {
      ssr: true,
      target: 'node20',
      outDir: folder,
      emptyOutDir: true,
      rolldownOptions: {
        input: { 'drafter/staywright': 'src/cli/main.ts', 'engine/index': 'src/engine/index.ts' },
        output: { entryFileNames: '[name].js', chunkFileNames: 'parts/[name]-[hash].js' },
      },
    },
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildTools(join(PROJECT, 'lib'));
