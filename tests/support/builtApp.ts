// Builds the app once for a test run and serves it as a visitor gets it.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built app. */
    appUrl: string;
    /** Folder of the built app. */
    appFolder: string;
  }
}

export default async function serveBuiltApp(project: TestProject): Promise<() => Promise<void>> {
  const outDir = mkdtempSync(join(tmpdir(), 'staywright-app-'));
  // In a process of its own: under the test runner the libraries would be built in their development form.
  execFileSync(
    process.execPath,
    ['node_modules/vite/bin/vite.js', 'build', '--outDir', outDir, '--emptyOutDir', '--logLevel', 'warn'],
    { env: { ...process.env, NODE_ENV: 'production' }, stdio: 'inherit' },
  );
  const server = await preview({
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0 },
  });
  project.provide('appUrl', server.resolvedUrls?.local[0] ?? '');
  project.provide('appFolder', outDir);
  return async () => {
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  };
}
