import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { offlineWorker } from './src/app/offline/offlineWorker.ts';

// Nothing leaves the page: own scripts and styles only, no connection but to where it came from.
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Writes the policy into the built page; the development server needs inline scripts and goes without. */
const contentSecurityPolicy: Plugin = {
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
  ],
};

// The mode `accented` builds the app with every text of the catalogue lengthened and in accented letters, for the tests. Any
// other build leaves the accenting out.
const accentedTexts: Plugin = {
  name: 'accented-texts',
  config: (_, { mode }) => ({ define: { __ACCENTED__: JSON.stringify(mode === 'accented') } }),
};

// jspdf can draw HTML and SVG through these three; the paper layer never does, so they stay out of the build.
const emptyModule = fileURLToPath(new URL('src/paper/pdf/file/emptyModule.ts', import.meta.url));

// The pure layers do nothing by being loaded, so a step fetches only what it takes from them, not all that their index names.
const PURE = /[\\/]src[\\/](engine|document)[\\/]/;

const TESTS = ['tests/**/*.test.{ts,tsx}'];
const PURE_TESTS = ['tests/{engine,document,reference,golden}/**/*.test.ts'];
const PROPERTIES = ['tests/properties/**/*.test.ts'];
// Tests of the app as it is built, most of them in a browser: it is built before them, and for no others.
const BUILT = ['tests/browser/**/*.test.ts', 'tests/**/*InBrowser.test.ts', 'tests/app/firstLoad.test.ts'];

export default defineConfig({
  base: './',
  plugins: [react(), contentSecurityPolicy, offlineWorker, accentedTexts],
  resolve: { alias: { html2canvas: emptyModule, canvg: emptyModule, dompurify: emptyModule } },
  build: {
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: { treeshake: { moduleSideEffects: [{ test: PURE, sideEffects: false }] } },
  },
  test: {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // A busy machine is slow, not wrong.
    expect: { poll: { timeout: 15_000 } },
    projects: [
      {
        extends: true,
        test: { name: 'quick', include: TESTS, exclude: [...PURE_TESTS, ...PROPERTIES, ...BUILT] },
      },
      // They leave nothing behind for each other, and so share what is loaded.
      { extends: true, test: { name: 'quick, pure', include: PURE_TESTS, isolate: false } },
      { extends: true, test: { name: 'properties', include: PROPERTIES } },
      { extends: true, test: { name: 'built', include: BUILT, globalSetup: ['tests/support/builtApp.ts'] } },
    ],
  },
});
