// Builds the app once for a test run and serves it as a visitor gets it.

import type { TestProject } from 'vitest/node';
import { serveBuild } from './serveBuild';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built app. */
    appUrl: string;
    /** Folder of the built app. */
    appFolder: string;
  }
}

export default async function serveBuiltApp(project: TestProject): Promise<() => Promise<void>> {
  const build = await serveBuild('production');
  project.provide('appUrl', build.url);
  project.provide('appFolder', build.folder);
  return build.close;
}
