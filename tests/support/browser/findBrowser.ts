// Finds a browser of the Chromium family for the tests: an environment variable, Chromium without windows, the usual places
// of a whole browser, or the one that an npm package carries.

import { execFileSync } from 'node:child_process';
import {
  accessSync,
  chmodSync,
  constants,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import type { LaunchOptions } from 'playwright-core';

/** Chromium made without windows: the same pages from about half the work of the processor. */
const WITHOUT_WINDOWS = ['chromium-headless-shell', 'chrome-headless-shell'];

const NAMES = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
  'chrome.exe',
  'msedge.exe',
];

const USUAL = [
  '/opt/google/chrome/chrome',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/opt/microsoft/msedge/msedge',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

/** What a browser is started for. */
export type BrowserUse =
  /** Tests that read what the page shows: no script is compiled anew for speed, which takes longer than most tests gain by it. */
  | 'to look'
  /** Tests that wait for long work of a script. */
  | 'to work'
  /** Figures of speed: a browser as people have it, and not the one without windows. */
  | 'to time';

/** How to start the browser; an error that says how to get one where there is none. */
export function browserOptions(use: BrowserUse, env: NodeJS.ProcessEnv = process.env): LaunchOptions {
  const installed = installedBrowser(env, use === 'to time' ? NAMES : [...WITHOUT_WINDOWS, ...NAMES]);
  const found = installed ? { executablePath: installed } : carriedBrowser(env);
  if (!found)
    throw new Error(
      'No Chrome, Chromium or Edge was found for the browser tests. Install one (on Debian: apt-get install chromium-headless-shell), or set CHROME_BIN to the path of one.',
    );
  const root = process.getuid?.() === 0;
  return {
    ...found,
    headless: true,
    args: [
      ...(root ? ['--no-sandbox', '--disable-dev-shm-usage'] : []),
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      ...(use === 'to look' ? ['--js-flags=--no-opt --no-maglev'] : []),
    ],
  };
}

function installedBrowser(env: NodeJS.ProcessEnv, names: readonly string[]): string | undefined {
  const windows = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(
    (dir) => dir !== undefined,
  );
  const candidates = [
    env.CHROME_BIN,
    ...(env.PATH ?? '').split(delimiter).flatMap((dir) => names.map((name) => join(dir, name))),
    ...USUAL,
    ...windows.flatMap((dir) => [
      join(dir, 'Google/Chrome/Application/chrome.exe'),
      join(dir, 'Microsoft/Edge/Application/msedge.exe'),
    ]),
  ];
  return candidates.find((path) => path !== undefined && path !== '' && canRun(path));
}

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The browser inside @sparticuz/chromium, unpacked once beside node_modules; it comes for Linux on x64 only. */
function carriedBrowser(env: NodeJS.ProcessEnv): LaunchOptions | undefined {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  let root: string;
  try {
    root = join(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../..');
  } catch {
    return undefined;
  }
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const home = join(root, '..', '..', '.cache', `chromium-${version}`);
  if (!existsSync(join(home, 'chromium'))) unpack(root, home);
  const libraries = [env.LD_LIBRARY_PATH, join(home, 'lib')].filter(Boolean).join(':');
  const fonts = env.FONTCONFIG_PATH ?? (existsSync('/etc/fonts/fonts.conf') ? '/etc/fonts' : home);
  return {
    executablePath: join(home, 'chromium'),
    env: { ...process.env, LD_LIBRARY_PATH: libraries, FONTCONFIG_PATH: fonts } as Record<string, string>,
  };
}

function unpack(root: string, home: string): void {
  const partial = `${home}.${process.pid}`;
  mkdirSync(partial, { recursive: true });
  for (const file of ['chromium', 'fonts.tar', 'swiftshader.tar', 'al2023.tar']) {
    const out = join(partial, file);
    writeFileSync(out, brotliDecompressSync(readFileSync(join(root, 'bin', `${file}.br`))));
    if (!file.endsWith('.tar')) continue;
    execFileSync('tar', ['--no-same-owner', '-xf', out, '-C', partial]);
    rmSync(out);
  }
  chmodSync(join(partial, 'chromium'), 0o755);
  const fonts = `<dir>${join(home, 'fonts')}</dir><cachedir>${join(home, 'fontcache')}</cachedir>`;
  writeFileSync(
    join(partial, 'fonts.conf'),
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>${fonts}</fontconfig>`,
  );
  try {
    renameSync(partial, home);
  } catch {
    // Another worker unpacked it first.
    rmSync(partial, { recursive: true });
  }
}
