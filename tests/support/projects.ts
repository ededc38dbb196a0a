// The kinds of tests, each a project of the test runner by its name, so that a run can leave out whole kinds: `--project=pure`. A run
// that names none joins those with a page.

import { availableParallelism } from 'node:os';
import type { TestProjectInlineConfiguration } from 'vitest/config';

/** Of the app as it is built, most of them in a browser: it is built before them, and for no others. */
const BUILT = ['tests/browser/**/*.test.ts', 'tests/**/*InBrowser.test.ts', 'tests/app/firstLoad.test.ts'];

/** Of what is printed: panels laid on sheets and written into files, and what the app and the headless drafter make of them. */
const PRINTED = ['tests/paper/**/*.test.ts', 'tests/cli/{draft,lay,leftAndRight,sizes,worn}.test.ts'];

/** The same on a page of a browser, as the tests have one without a browser. */
const PRINTED_PAGES = [
  'tests/app/cut/{CutStep,makingCards}.test.tsx',
  'tests/paper/draftingSheet/draftingSheetHtml.test.ts',
  'tests/paper/svg/patternSvg.test.ts',
];

/** Of what React puts on a page. */
const SCREEN = ['tests/app/**/*.test.{ts,tsx}'];

/** Of many drawn bodies or styles, and of garments that are sewn until they rest. */
const PROPERTIES = [
  'tests/properties/**/*.test.ts',
  'tests/engine/worn/{comesToRest,everyStyleRests,faultsShow,topEdgeLies}.test.ts',
  'tests/engine/block/{shoulderWedge,turnIntake}.test.ts',
  'tests/engine/body/frontArcs.test.ts',
  'tests/document/presets/styles.test.ts',
];

/** Of the book while every call of the storage fails in turn, and while several windows act in turn. */
const FAULTS = ['tests/app/storage/{faults,moreFaults,tabs}.test.ts'];

/** Of processes of their own: the headless drafter, the compiler. */
const PROCESS = [
  'tests/cli/process.test.ts',
  'tests/architecture/additions.test.ts',
  'tests/release/{portTaken,tools}.test.ts',
];

/** Replaces a module for all who import it, and therefore shares none. */
const REPLACING = ['tests/document/files/readStyle.test.ts'];

const PAGE = { environment: 'jsdom', setupFiles: 'tests/app/freshPage.ts', isolate: false } as const;

/**
 * Modules loaded as Node loads them, with their types left out, and not by way of the test runner's own loader, in which each use of
 * an import is a call: drafts take a quarter less time.
 */
const AS_NODE: NonNullable<TestProjectInlineConfiguration['test']> = {
  isolate: false,
  execArgv: ['--import', 'tsx'],
  experimental: { viteModuleRunner: false, nodeLoader: false },
};

type Kind = NonNullable<TestProjectInlineConfiguration['test']>;

/** Without a page. Each is kept by itself: drafts take up to three times as long in a worker that has run other kinds before. */
const WITHOUT_PAGE: readonly Kind[] = [
  {
    name: 'pure',
    include: ['tests/**/*.test.ts'],
    exclude: [...BUILT, ...PRINTED, ...SCREEN, ...PROPERTIES, ...PROCESS, ...REPLACING],
    ...AS_NODE,
  },
  { name: 'printed', include: PRINTED, exclude: [...BUILT, ...PRINTED_PAGES], ...AS_NODE },
  { name: 'process', include: PROCESS, ...AS_NODE },
  { name: 'properties', include: PROPERTIES, ...AS_NODE },
];

const WITH_PAGE: readonly Kind[] = [
  { name: 'screen', include: SCREEN, exclude: [...BUILT, ...PRINTED_PAGES, ...FAULTS], ...PAGE },
  { name: 'faults', include: FAULTS, ...PAGE },
  { name: 'printed pages', include: PRINTED_PAGES, ...PAGE },
];

const OTHERS: readonly Kind[] = [
  { name: 'replacing', include: REPLACING },
  // Tried a second time: on a loaded machine a browser may take longer than a test waits.
  {
    name: 'built',
    include: BUILT,
    isolate: false,
    retry: 1,
    globalSetup: ['tests/support/browser/builtApp.ts'],
  },
];

/**
 * Kinds with a page as one. Each start of a worker loads the test runner, the window and the app, and each project transforms the
 * app's files: 5 s of the processor.
 */
const PAGES: Kind = { name: 'page', include: [...SCREEN, ...PRINTED_PAGES], exclude: BUILT, ...PAGE };

const namesKinds = process.argv.some((word) => word.startsWith('--project'));

/**
 * Files of a kind share what is loaded, because they leave nothing behind for each other; those of `replacing` do not. A worker is
 * kept for files of its own kind; one kind comes after the other, by name, and a worker that is free begins with the next. A
 * worker more than there are cores, where the test runner would take one less: a file that waits for a browser or a process leaves
 * its core to another.
 */
export const TEST_PROJECTS: TestProjectInlineConfiguration[] = [
  ...WITHOUT_PAGE,
  ...(namesKinds ? WITH_PAGE : [PAGES]),
  ...OTHERS,
].map((test) => ({
  extends: true,
  test: { ...test, maxWorkers: availableParallelism() + 1 },
}));
