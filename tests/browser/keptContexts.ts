// Contexts of the browser that are kept from test to test, each with one page. A page that is opened again in a process that has
// run the app before takes less than half the work of the first. What a test may have changed is set back before the next; a
// context with a change that cannot be set back is closed.

import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

export interface Visitor {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Addresses asked for that are not the app's own. */
  readonly strangers: string[];
  /** Errors of the page and its console. */
  readonly complaints: string[];
}

interface Kept extends Visitor {
  /** Whether a test has it. */
  isTaken: boolean;
  /** Whether something was done that is not set back. */
  isSpent: boolean;
  /** Lets go what the test listens to, and ends its sessions with the debugger. */
  endings: (() => unknown)[];
}

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/**
 * What a test may use of a page and a context that is kept: it leaves nothing, or is set back. Whatever else it uses, also what the
 * next version of the driver may bring, closes the context.
 */
const SET_BACK = {
  context: words(`
    addListener browser clearCookies cookies newCDPSession newPage off on once pages prependListener removeListener storageState
    waitForEvent
  `),
  page: words(`
    $ $$ $eval $$eval addListener addScriptTag addStyleTag bringToFront check click content context dblclick emulateMedia evaluate
    evaluateHandle fill focus frames getByAltText getByLabel getByPlaceholder getByRole getByTestId getByText getByTitle goto hover
    isClosed keyboard locator mainFrame mouse off on once prependListener press reload removeListener screenshot setInputFiles setViewportSize tap
    textContent title touchscreen type url viewportSize waitForEvent waitForFunction waitForLoadState waitForSelector
    waitForTimeout workers
  `),
} as const;

const NOTHING: ReadonlySet<string> = new Set();

/** Ways to listen: what is listened to is let go after the test. */
const LISTENING = ['on', 'once', 'addListener', 'prependListener'] as const;

const MODIFIERS = ['Shift', 'Control', 'Alt', 'Meta'] as const;

const DESK = { width: 1440, height: 900 } as const;

/** What of the options is set anew for each test; a context is taken for another test that differs in nothing else. */
const CHANGEABLE = ['viewport', 'colorScheme', 'reducedMotion', 'forcedColors', 'contrast', 'storageState'];

/** By what they are lent for, in each browser. */
const kept = new Map<Browser, Map<string, Kept>>();

function keptIn(browser: Browser): Map<string, Kept> {
  const known = kept.get(browser) ?? new Map<string, Kept>();
  kept.set(browser, known);
  return known;
}

/**
 * Opens a page that shows a file of the build that runs nothing, with an empty storage but for what the options ask for.
 *
 * @param address of the build
 */
export async function lendPage(
  browser: Browser,
  address: string,
  options: BrowserContextOptions,
): Promise<Visitor> {
  if (!canBeKept(address, options)) return newVisitor(browser, address, options);
  const fixed = Object.entries(options).filter(([name]) => !CHANGEABLE.includes(name));
  const key = JSON.stringify([address, fixed.sort(([a], [b]) => (a < b ? -1 : 1))]);
  const known = keptIn(browser);
  const found = known.get(key);
  if (found?.isTaken) return newVisitor(browser, address, options);
  const { viewport, colorScheme, reducedMotion, forcedColors, contrast, storageState } = options;
  const visitor = found ?? watched(await newVisitor(browser, address, Object.fromEntries(fixed)));
  visitor.isTaken = true;
  known.set(key, visitor);
  if (!found) await visitor.page.goto(stillAddress(address));
  await visitor.page.setViewportSize(viewport ?? DESK);
  await visitor.page.emulateMedia({
    media: null,
    colorScheme: colorScheme ?? 'light',
    reducedMotion: reducedMotion ?? 'no-preference',
    forcedColors: forcedColors ?? 'none',
    contrast: contrast ?? 'no-preference',
  });
  const [stored] = (storageState as StorageState | undefined)?.origins ?? [];
  if (stored && stored.localStorage.length > 0)
    await visitor.page.evaluate((entries) => {
      for (const { name, value } of entries) localStorage.setItem(name, value);
    }, stored.localStorage);
  return visitor;
}

/**
 * Takes back a page after a test.
 *
 * @param isClean false after a test that failed: its context is not used again
 */
export async function takeBackPage(visitor: Visitor, address: string, isClean: boolean): Promise<void> {
  const browser = visitor.context.browser();
  const known = browser && keptIn(browser);
  const entry = known && [...known].find(([, each]) => each === visitor);
  if (!entry) return visitor.context.close();
  const [key, own] = entry;
  const { context, page, strangers, complaints } = own;
  for (const end of own.endings.splice(0)) await end();
  if (!isClean || own.isSpent || strangers.length > 0 || page.isClosed()) {
    known.delete(key);
    return context.close();
  }
  for (const other of context.pages()) if (other !== page) await other.close();
  await page.goto(stillAddress(address));
  // Where a new page has it.
  await page.mouse.move(0, 0);
  await page.mouse.up();
  for (const modifier of MODIFIERS) await page.keyboard.up(modifier);
  await page.evaluate(async () => {
    localStorage.clear();
    sessionStorage.clear();
    window.name = '';
    for (const { name } of await indexedDB.databases()) if (name) indexedDB.deleteDatabase(name);
    for (const name of (await self.caches?.keys()) ?? []) await caches.delete(name);
  });
  await context.clearCookies();
  strangers.splice(0);
  complaints.splice(0);
  own.isTaken = false;
}

/** Closes what is kept of a build that is about to go. */
export async function closePagesOf(browser: Browser, address: string): Promise<void> {
  const known = keptIn(browser);
  for (const [key, { context }] of known) {
    if (!key.startsWith(JSON.stringify([address]).slice(0, -1))) continue;
    known.delete(key);
    await context.close();
  }
}

interface StorageState {
  readonly cookies: readonly object[];
  readonly origins: readonly {
    readonly origin: string;
    readonly localStorage: { name: string; value: string }[];
  }[];
}

/** Whether a page of these options can be had from one that is kept. */
function canBeKept(address: string, { storageState, serviceWorkers }: BrowserContextOptions): boolean {
  if (!address.startsWith('http') || serviceWorkers !== 'block') return false;
  if (storageState === undefined) return true;
  if (typeof storageState === 'string') return false;
  const { cookies, origins } = storageState as StorageState;
  return cookies.length === 0 && origins.every(({ origin }) => origin === new URL(address).origin);
}

/** A picture of the build: a page of the same origin that runs no script, so that it is shown by the same process. */
const stillAddress = (address: string): string => new URL('staywright.svg', address).href;

async function newVisitor(
  browser: Browser,
  address: string,
  options: BrowserContextOptions,
): Promise<Visitor> {
  const context = await browser.newContext({ viewport: DESK, ...options });
  const page = await context.newPage();
  const visitor: Visitor = { context, page, strangers: [], complaints: [] };
  context.on('request', (request) => {
    if (!request.url().startsWith(address) && !/^(blob|data):/.test(request.url()))
      visitor.strangers.push(request.url());
  });
  page.on('pageerror', (error) => visitor.complaints.push(error.message));
  page.on('console', (message) => {
    // A screenshot reads WebGL's picture back, of which the driver tells; it is nothing that the page did.
    if (message.text().includes('GL Driver Message')) return;
    // Of the service worker, which is left out.
    if (message.text().includes('Service Worker registration blocked')) return;
    if (message.type() === 'error' || message.type() === 'warning') visitor.complaints.push(message.text());
  });
  return visitor;
}

/** Notes what a test does that is not set back, and what it listens to. */
function watched(visitor: Visitor): Kept {
  const own: Kept = { ...visitor, isTaken: false, isSpent: false, endings: [] };
  const { context, page } = visitor;
  page.on('crash', () => {
    own.isSpent = true;
  });
  const open = context.newCDPSession.bind(context);
  for (const [target, isSetBack] of [
    [context, SET_BACK.context],
    [page, SET_BACK.page],
  ] as const) {
    noteUses(own, target, isSetBack);
    noteListening(own, target);
  }
  // What is set by a session with the debugger ends with it.
  context.newCDPSession = async (of) => {
    const session = await open(of);
    own.endings.push(() => session.detach().catch(() => undefined));
    return session;
  };
  // The page has its clock from the context, whose uses were noted before.
  own.isSpent = false;
  return own;
}

/** @param isSetBack names of what may be used; nothing of an object that the target has, as its clock */
function noteUses(own: Kept, target: object, isSetBack: ReadonlySet<string>): void {
  const names = [...Object.getOwnPropertyNames(Object.getPrototypeOf(target)), ...Object.keys(target)];
  for (const name of new Set(names)) {
    // Those with a line before them are the driver's own.
    if (/^_|^constructor$/.test(name) || isSetBack.has(name)) continue;
    const value = Reflect.get(target, name);
    if (typeof value === 'object' && value !== null) noteUses(own, value, NOTHING);
    if (typeof value !== 'function') continue;
    Object.defineProperty(target, name, {
      configurable: true,
      get: () => {
        own.isSpent = true;
        return value;
      },
    });
  }
}

function noteListening(own: Kept, target: BrowserContext | Page): void {
  for (const name of LISTENING) {
    const listen = Reflect.get(target, name) as (event: string, heard: () => void) => unknown;
    Object.defineProperty(target, name, {
      configurable: true,
      value: (event: string, heard: () => void): unknown => {
        own.endings.push(() => target.off(event as never, heard));
        return Reflect.apply(listen, target, [event, heard]);
      },
    });
  }
}
