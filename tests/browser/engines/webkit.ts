// WebKit as WebKitGTK has it, driven by W3C WebDriver over HTTP (https://www.w3.org/TR/webdriver2/) on a screen that is only memory.

import { mkdtempSync, rmSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pressActions, pullActions, typeActions } from './actions';
import { callOf, type Engine, WINDOW } from './engine';
import { end, programNamed, start, written } from './processes';

/** Room of the screen and the window beside the window's content, px. */
const FRAME_PX = 200;

const SCREEN = `${WINDOW.width + FRAME_PX}x${WINDOW.height + FRAME_PX}x24`;

export const WEBKIT: Engine = {
  name: 'WebKit',
  packages: 'webkit2gtk-driver xvfb',
  isInstalled: () => programNamed('WebKitWebDriver') !== undefined && programNamed('Xvfb') !== undefined,
  open: async (downloads) => {
    const home = mkdtempSync(join(tmpdir(), 'staywright-webkit-'));
    const screen = start('Xvfb', ['-displayfd', '3', '-screen', '0', SCREEN, '-nolisten', 'tcp'], {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    });
    const display = await written(screen.stdio[3] as Readable, /(\d+)\n/);
    const port = await freePort();
    const driver = start('WebKitWebDriver', [`--port=${port}`, '--host=127.0.0.1'], {
      stdio: 'ignore',
      env: {
        ...process.env,
        ...{ DISPLAY: `:${display}`, LANG: 'en_US.UTF-8' },
        // Files that are saved go into the home folder, where no other was chosen.
        // Drawn by the processor at once, and not by way of a card that the processor plays; scripts compiled in one way fewer.
        ...{ WEBKIT_SKIA_ENABLE_CPU_RENDERING: '1', JSC_useFTLJIT: 'false' },
        ...{ HOME: downloads, XDG_CONFIG_HOME: home, XDG_CACHE_HOME: home, XDG_DATA_HOME: home },
      },
    });
    await answering(port);
    const send = async <Value>(path: string, body?: object): Promise<Value> => {
      const answer = await fetch(`http://127.0.0.1:${port}/session${path}`, {
        method: body ? 'POST' : 'DELETE',
        ...(body ? { body: JSON.stringify(body) } : {}),
      });
      const { value } = (await answer.json()) as { value: Value & { message?: string } };
      if (!answer.ok) throw new Error(`${path}: ${value.message}`);
      return value;
    };
    const { sessionId } = await send<{ sessionId: string }>('', { capabilities: {} });
    const own = <Value>(path: string, body?: object): Promise<Value> => send(`/${sessionId}${path}`, body);
    const ask = async <About, Answer>(
      question: (about: About) => Answer,
      about: About,
    ): Promise<Awaited<Answer>> => {
      const script = `const done = arguments[0]; Promise.resolve(${callOf(question, about)}).then((answer) => done({ answer }), (error) => done({ error: String(error) }));`;
      const said = await own<{ answer: Awaited<Answer>; error?: string }>('/execute/async', {
        script,
        args: [],
      });
      if (said.error !== undefined) throw new Error(said.error);
      return said.answer;
    };
    const complaints: string[] = [];
    const gather = async (): Promise<void> => void complaints.push(...(await ask(heard, null)));
    const perform = (actions: readonly object[]): Promise<unknown> => own('/actions', { actions });
    await own('/window/rect', { x: 0, y: 0, width: WINDOW.width, height: WINDOW.height });
    const [, height] = await ask(() => [innerWidth, innerHeight] as const, null);
    await own('/window/rect', { x: 0, y: 0, width: WINDOW.width, height: 2 * WINDOW.height - height });
    return {
      goTo: async (url) => {
        await own('/url', { url });
        await ask(listen, null);
      },
      reload: async () => {
        await gather();
        await own('/refresh', {});
        await ask(listen, null);
      },
      ask,
      pull: async (path) => void (await perform(pullActions(path))),
      type: async (text) => void (await perform(typeActions(text))),
      press: async (key) => void (await perform(pressActions(key))),
      complaints: async () => {
        await gather();
        return complaints;
      },
      close: async () => {
        await own('').catch(() => undefined);
        await end(driver);
        await end(screen);
        rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
      },
    };
  },
};

interface Listening {
  complaintsHeard?: string[];
}

/** Runs in the page: hears what goes wrong from now on; the driver tells nothing of the console. */
function listen(): void {
  const all: string[] = [];
  (window as Listening).complaintsHeard = all;
  window.addEventListener('error', (event) => all.push(event.message));
  window.addEventListener('unhandledrejection', (event) => all.push(String(event.reason)));
  document.addEventListener('securitypolicyviolation', (event) => all.push(event.violatedDirective));
  const own = window.console;
  for (const level of ['error', 'warn'] as const) {
    const log = own[level];
    own[level] = (...parts: unknown[]) => {
      all.push(parts.map(String).join(' '));
      log.apply(own, parts);
    };
  }
}

/** Runs in the page: what was heard since the last time. */
const heard = (): string[] => (window as Listening).complaintsHeard?.splice(0) ?? [];

function freePort(): Promise<number> {
  return new Promise((found) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => found(port));
    });
  });
}

/** Waits until the driver answers. */
async function answering(port: number): Promise<void> {
  for (let i = 0; i < 300; i += 1) {
    const isThere = await fetch(`http://127.0.0.1:${port}/status`).then(
      () => true,
      () => false,
    );
    if (isThere) return;
    await new Promise((wait) => setTimeout(wait, 100));
  }
  throw new Error('WebKitWebDriver does not answer');
}
