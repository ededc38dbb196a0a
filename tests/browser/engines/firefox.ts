// Firefox, driven by WebDriver BiDi over a WebSocket (https://w3c.github.io/webdriver-bidi/).

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pressActions, pullActions, typeActions } from './actions';
import { connectBidi } from './bidi';
import { callOf, type Engine, WINDOW } from './engine';
import { end, programNamed, start, written } from './processes';

const program = (): string | undefined => programNamed('firefox-esr', 'firefox');

const settings = (downloads: string): Readonly<Record<string, string | number | boolean>> => ({
  'browser.download.folderList': 2,
  'browser.download.dir': downloads,
  'browser.download.alwaysOpenPanel': false,
  'browser.download.open_pdf_attachments_inline': false,
  'browser.helperApps.neverAsk.saveToDisk': 'application/pdf',
  'pdfjs.disabled': true,
});

interface Result {
  readonly type: 'success' | 'exception';
  readonly result?: { readonly value?: string };
  readonly exceptionDetails?: { readonly text: string };
}

export const FIREFOX: Engine = {
  name: 'Firefox',
  packages: 'firefox-esr',
  isInstalled: () => program() !== undefined,
  open: async (downloads) => {
    const profile = mkdtempSync(join(tmpdir(), 'staywright-firefox-'));
    const lines = Object.entries(settings(downloads)).map(
      ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`,
    );
    writeFileSync(join(profile, 'user.js'), lines.join(''));
    const browser = start(
      program() ?? '',
      ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0', 'about:blank'],
      { stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, HOME: profile, LANG: 'en_US.UTF-8' } },
    );
    const address = await written(browser.stderr, /WebDriver BiDi listening on (ws:\S+)/);
    const bidi = await connectBidi(`${address}/session`);
    await bidi.send('session.new', { capabilities: {} });
    await bidi.send('session.subscribe', { events: ['log.entryAdded'] });
    const complaints: string[] = [];
    bidi.on('log.entryAdded', ({ level, text }) => {
      if (level === 'error' || level === 'warn') complaints.push(String(text));
    });
    const { context } = await bidi.send<{ context: string }>('browsingContext.create', { type: 'tab' });
    await bidi.send('browsingContext.setViewport', { context, viewport: WINDOW });
    const perform = (actions: readonly object[]): Promise<unknown> =>
      bidi.send('input.performActions', { context, actions });
    return {
      goTo: async (url) =>
        void (await bidi.send('browsingContext.navigate', { context, url, wait: 'complete' })),
      reload: async () => void (await bidi.send('browsingContext.reload', { context, wait: 'complete' })),
      ask: async (question, about) => {
        const { type, result, exceptionDetails } = await bidi.send<Result>('script.evaluate', {
          expression: `Promise.resolve(${callOf(question, about)}).then((answer) => JSON.stringify(answer))`,
          target: { context },
          awaitPromise: true,
        });
        if (type === 'exception') throw new Error(exceptionDetails?.text);
        return result?.value === undefined ? undefined : JSON.parse(result.value);
      },
      pull: async (path) => void (await perform(pullActions(path))),
      type: async (text) => void (await perform(typeActions(text))),
      press: async (key) => void (await perform(pressActions(key))),
      complaints: async () => complaints,
      close: async () => {
        bidi.close();
        await end(browser);
        rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
      },
    };
  },
};
