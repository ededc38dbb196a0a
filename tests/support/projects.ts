// The kinds of tests, each a project of the test runner by its name, so that a run can leave out whole kinds: `--project=pure`.

import type { TestProjectInlineConfiguration } from 'vitest/config';

/** Of the app as it is built, most of them in a browser: it is built before them, and for no others. */
const BUILT = ['tests/browser/**/*.test.ts', 'tests/**/*InBrowser.test.ts', 'tests/app/firstLoad.test.ts'];

/** Of what React puts on a page, and of files that are read as a page. */
const SCREEN = [
  'tests/app/**/*.test.{ts,tsx}',
  'tests/paper/draftingSheet/sheetHtml.test.ts',
  'tests/paper/patternSvg.test.ts',
];

/** Of many drawn bodies or styles. */
const PROPERTIES = ['tests/properties/**/*.test.ts'];

/** Of processes of their own: the headless drafter, the compiler. */
const PROCESS = ['tests/cli/process.test.ts', 'tests/architecture/additions.test.ts'];

/** Replaces a module for all who import it, and therefore shares none. */
const REPLACING = ['tests/document/files/readStyle.test.ts'];

/**
 * The kinds of tests. Files of a kind share what is loaded, because they leave nothing behind for each other; those of
 * `replacing` do not.
 */
export const TEST_PROJECTS: TestProjectInlineConfiguration[] = [
  {
    extends: true,
    test: {
      name: 'pure',
      include: ['tests/**/*.test.ts'],
      exclude: [...BUILT, ...SCREEN, ...PROPERTIES, ...PROCESS, ...REPLACING],
      isolate: false,
    },
  },
  {
    extends: true,
    test: {
      name: 'screen',
      include: SCREEN,
      exclude: BUILT,
      environment: 'jsdom',
      setupFiles: ['tests/app/freshPage.ts'],
      isolate: false,
    },
  },
  { extends: true, test: { name: 'replacing', include: REPLACING } },
  { extends: true, test: { name: 'process', include: PROCESS, isolate: false } },
  { extends: true, test: { name: 'properties', include: PROPERTIES, isolate: false } },
  {
    extends: true,
    test: { name: 'built', include: BUILT, isolate: false, globalSetup: ['tests/support/builtApp.ts'] },
  },
];
