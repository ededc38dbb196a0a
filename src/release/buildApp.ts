// Builds the app in one of its modes.

import { execFileSync } from 'node:child_process';

/**
 * `production`: a folder of files for a server. `single`: one page that holds everything. `accented`: as production, with every
 * text of the catalogue lengthened and in accented letters.
 */
export type BuildMode = 'production' | 'single' | 'accented';

/** Builds into a folder, which is emptied before. Run from the project's root. */
export function buildApp(mode: BuildMode, folder: string): void {
  // In a process of its own: under a test runner the libraries would be built in their development form.
  execFileSync(
    process.execPath,
    [
      ...['node_modules/vite/bin/vite.js', 'build', '--mode', mode],
      ...['--outDir', folder, '--emptyOutDir', '--logLevel', 'warn'],
    ],
    { env: { ...process.env, NODE_ENV: 'production' }, stdio: 'inherit' },
  );
}
