// Builds the app once for a test run and serves it as a visitor gets it, and starts the browser that visits it.

import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { browserOptions } from './findBrowser';
import { serveBuild } from './serveBuild';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built app. */
    appUrl: string;
    /** Folder of the built app. */
    appFolder: string;
    /** Where the browser that all files share is reached. */
    browserEndpoint: string;
  }
}

export default async function serveBuiltApp(project: TestProject): Promise<() => Promise<void>> {
  const build = await serveBuild('production');
  project.provide('appUrl', build.url);
  project.provide('appFolder', build.folder);
  const browser = await chromium.launchServer(browserOptions('to look'));
  project.provide('browserEndpoint', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await build.close();
  };
}
