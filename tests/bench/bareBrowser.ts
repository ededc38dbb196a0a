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
  /** What the page's main thread did while something was done: its tasks, and the marks that scripts made. */
  readonly traced: (work: () => Promise<void>) => Promise<{ tasks: TraceEvent[]; marks: TraceEvent[] }>;
  readonly close: () => Promise<void>;
}

export interface TraceEvent {
  readonly name: string;
  readonly cat: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds. */
  readonly ts: number;
  readonly dur?: number;
  /** What the thread itself worked of it. */
  readonly tdur?: number;
}

/** A mark of the thread that is traced; what else is traced would make the browser look where in a script it was asked for. */
const THREAD_MARK = 'thread traced';
const TRACED = ['toplevel', 'blink.user_timing'];

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
  let events: TraceEvent[] = [];
  let traceEnded = (): void => undefined;
  from.setEncoding('utf8').on('data', (text: string) => {
    const messages = (unread + text).split('\0');
    unread = messages.pop() ?? '';
    for (const { id, method, params, result, error } of messages.map((each) => JSON.parse(each))) {
      if (method === 'Tracing.dataCollected') events.push(...params.value);
      else if (method === 'Tracing.tracingComplete') traceEnded();
      if (error) waiting.get(id)?.failed(new Error(error.message));
      else waiting.get(id)?.done(result);
      waiting.delete(id);
    }
  });
  const send = (method: string, params: object, about: object): Promise<Answer> => {
    asked += 1;
    to.write(`${JSON.stringify({ id: asked, method, params, ...about })}\0`);
    return new Promise((done, failed) => waiting.set(asked, { done, failed }));
  };
  const ask = (method: string, params: object = {}): Promise<Answer> =>
    send(method, params, session === '' ? {} : { sessionId: session });
  const { targetId } = await ask('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await ask('Target.attachToTarget', { targetId, flatten: true });
  session = String(sessionId);
  const run = async (expression: string): Promise<unknown> => {
    const { result } = await ask('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true });
    return (result as { value?: unknown }).value;
  };
  return {
    ask,
    run,
    traced: async (work) => {
      events = [];
      const traceConfig = { includedCategories: TRACED };
      await send('Tracing.start', { transferMode: 'ReportEvents', traceConfig }, {});
      await work();
      await run(`performance.mark(${JSON.stringify(THREAD_MARK)})`);
      const ended = new Promise<void>((done) => {
        traceEnded = done;
      });
      await send('Tracing.end', {}, {});
      await ended;
      const thread = events.find(({ name }) => name === THREAD_MARK);
      const own = events.filter(({ pid, tid }) => pid === thread?.pid && tid === thread.tid);
      return {
        tasks: own.filter(({ name, ph }) => name === 'ThreadControllerImpl::RunTask' && ph === 'X'),
        marks: own.filter(({ cat, name }) => cat.includes('blink.user_timing') && name !== THREAD_MARK),
      };
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
