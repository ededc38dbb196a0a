import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { mergeConfig, type Plugin, type UserConfig } from 'vite';
import { defineConfig } from 'vitest/config';
import { offlineWorker } from './src/app/offline/precache.ts';
import { SERVE, START } from './src/document/messages/screens/clients/start.ts';
import { licences } from './src/release/licences.ts';
import { contentSecurityPolicy, startingWords } from './src/release/page.ts';
import { shaperWhenAsked } from './src/release/shaperWhenAsked.ts';
import { singleFile } from './src/release/singleFile.ts';
import { startScripts } from './src/release/startScripts.ts';
import { workersBesidePage, workersInScript } from './src/release/workers.ts';
import { TEST_PROJECTS } from './tests/support/projects.ts';

/** Says why the page is not served where its port is taken: on another port the browser would show another, empty book. */
const sayPortTaken: Plugin = {
  name: 'say-port-taken',
  configurePreviewServer: ({ httpServer, config }) => {
    httpServer.on('error', (error: Error & { code?: string }) => {
      if (error.code !== 'EADDRINUSE') return;
      process.stderr.write(SERVE.portTaken({ port: config.preview.port ?? 0 }));
      process.exit(1);
    });
  },
};

// The mode `accented` builds the app with every text of the catalogue lengthened and in accented letters, for the tests. Any
// other build leaves the accenting out.
const accentedTexts: Plugin = {
  name: 'accented-texts',
  config: (_, { mode }) => ({ define: { __ACCENTED__: JSON.stringify(mode === 'accented') } }),
};

// jspdf can draw HTML and SVG through these three; the paper layer never does, so they stay out of the build.
const emptyModule = fileURLToPath(new URL('src/paper/pdf/file/emptyModule.ts', import.meta.url));

// The pure layers and the hooks of the store do nothing by being loaded, so a step fetches only what it takes from them, not all
// that their index names.
const PURE = /[\\/]src[\\/](engine|document|app[\\/]store)[\\/]/;

// Help tells which version the page is.
const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));

const project = fileURLToPath(new URL('.', import.meta.url));

/** The build in a mode, with its scripts as the bundler makes them. */
const plain = (mode: string): UserConfig => ({
  base: './',
  define: { __VERSION__: JSON.stringify(version) },
  publicDir: mode === 'single' ? false : 'public',
  plugins: [
    [react(), contentSecurityPolicy, startingWords(START), licences(project), shaperWhenAsked, accentedTexts],
    mode === 'single' ? [workersInScript(`${project}src`), singleFile] : workersBesidePage,
  ],
  resolve: { alias: { html2canvas: emptyModule, canvg: emptyModule, dompurify: emptyModule } },
  build: {
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: {
      treeshake: { moduleSideEffects: [{ test: PURE, sideEffects: false }] },
      // A script that is no module has no address of its own.
      ...(mode === 'single'
        ? {
            output: { codeSplitting: false, format: 'iife' as const },
            transform: {
              define: { 'import.meta.url': 'self.location.href', 'import.meta.resolve': 'undefined' },
            },
          }
        : {}),
    },
    cssCodeSplit: mode !== 'single',
    ...(mode === 'single' ? { assetsInlineLimit: Number.MAX_SAFE_INTEGER } : {}),
  },
});

// The mode `single` builds the page as one file. It has no service worker, no manifest and nothing beside it.
export default defineConfig(async ({ command, mode }) => {
  const parts =
    command === 'build' && mode !== 'single' ? await startScripts(project, mode, plain(mode)) : [];
  return mergeConfig(plain(mode), {
    plugins: [sayPortTaken, parts, mode === 'single' ? [] : offlineWorker],
    preview: { port: 4173, strictPort: true },
    test: {
      testTimeout: 60_000,
      hookTimeout: 60_000,
      // A busy machine is slow, not wrong.
      expect: { poll: { timeout: 15_000 } },
      projects: TEST_PROJECTS,
    },
  });
});
