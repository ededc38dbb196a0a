// A browser driven by a few words of its own protocol, over a pipe: what watches a page for a test's sake (its console, its network,
// scripts put into it) takes as long at a start as the page itself, and is left out here.

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { browserOptions } from '../support/browser/findBrowser';

type Answer = Record<string, unknown>;

/** One window of a browser that watches nothing. */
export interface BareBrowser {
  /** Asks the browser for something, about its window. */
  readonly ask: (method: string, params?: object) => Promise<Answer>;
  /** Runs a text in the page, and gives what it comes to. */
  readonly run: (script: string) => Promise<unknown>;
  readonly close: () => Promise<void>;
}

export async function openBareBrowser(): Promise<BareBrowser> {
  const { executablePath = '', args = [] } = browserOptions('to time');
  const folder = mkdtempSync(join(tmpdir(), 'staywright-bare-'));
  const own = [`--user-data-dir=${folder}`, '--window-size=1440,900', '--no-first-run'];
  const child = spawn(
    executablePath,
    [...args, ...own, '--headless', '--no-sandbox', '--remote-debugging-pipe'],
    {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
    },
  );
  const [to, from] = [child.stdio[3] as Writable, child.stdio[4] as Readable];
  const waiting = new Map<number, { done: (answer: Answer) => void; failed: (error: Error) => void }>();
  let [asked, unread, session] = [0, '', ''];
  from.setEncoding('utf8').on('data', (text: string) => {
    const messages = (unread + text).split('\0');
    unread = messages.pop() ?? '';
    for (const { id, result, error } of messages.map((each) => JSON.parse(each))) {
      if (error) waiting.get(id)?.failed(new Error(error.message));
      else waiting.get(id)?.done(result);
      waiting.delete(id);
    }
  });
  const ask = (method: string, params: object = {}): Promise<Answer> => {
    asked += 1;
    const about = session === '' ? {} : { sessionId: session };
    to.write(`${JSON.stringify({ id: asked, method, params, ...about })}\0`);
    return new Promise((done, failed) => waiting.set(asked, { done, failed }));
  };
  const { targetId } = await ask('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await ask('Target.attachToTarget', { targetId, flatten: true });
  session = String(sessionId);
  return {
    ask,
    run: async (expression) => {
      const { result } = await ask('Runtime.evaluate', {
        expression,
        awaitPromise: true,
        returnByValue: true,
      });
      return (result as { value?: unknown }).value;
    },
    close: async () => {
      const ended = new Promise((done) => child.once('exit', done));
      session = '';
      void ask('Browser.close');
      await ended;
      rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
    },
  };
}
