import { act, cleanup, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { UpdateNotice } from '../../../../src/app/shell/notices/UpdateNotice';
import { SHELL } from '../../../../src/document';
import { onTable } from '../../withStore';

const page = (script: string): string =>
  `<head><script type="module" src="./assets/${script}"></script></head>`;

/** What the browser has of service workers, with the one in charge. */
class Workers extends EventTarget {
  controller: object | null = null;
  readonly register = () => new Promise<never>(() => undefined);
}

let workers: Workers;
let served: () => Promise<Response>;
const own = document.createElement('script');

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubEnv('PROD', true);
  workers = new Workers();
  Object.defineProperty(navigator, 'serviceWorker', { value: workers, configurable: true });
  vi.stubGlobal('fetch', () => served());
  own.setAttribute('src', './assets/index-a.js');
  document.head.append(own);
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.unstubAllEnvs();
  vi.unstubAllGlobals();
  Reflect.deleteProperty(navigator, 'serviceWorker');
  own.remove();
});

/** The notice in a window whose work cannot be kept, a while after it was opened: it says so instead of loading the page again. */
async function shown(): Promise<ReturnType<typeof vi.fn>> {
  const flush = vi.fn();
  const storage = {
    status: () => ({ kind: 'failed', reason: 'full' }) as const,
    subscribe: () => () => undefined,
    flush,
  };
  onTable(<UpdateNotice storage={storage} />);
  await act(() => vi.advanceTimersByTimeAsync(1500));
  return flush;
}

const change = (controller: object): Promise<void> =>
  act(async () => {
    workers.controller = controller;
    workers.dispatchEvent(new Event('controllerchange'));
    await vi.advanceTimersByTimeAsync(0);
  });

const isTold = () => screen.queryByText(SHELL.update.elsewhere) !== null;

describe('a worker in charge', () => {
  it('that serves another page than the one that is shown takes over, though no change of workers was heard', async () => {
    workers.controller = {};
    served = async () => new Response(page('index-b.js'));
    expect(await shown()).toHaveBeenCalled();
    expect(isTold()).toBe(true);
  });

  it.each([
    ['serves the page that is shown', async () => new Response(page('index-a.js'))],
    ['answers that it has none', async () => new Response(page('index-b.js'), { status: 404 })],
    ['does not answer', () => Promise.reject(new TypeError('Failed to fetch'))],
  ])('that %s leaves the window as it is', async (_, answer) => {
    workers.controller = {};
    served = answer;
    expect(await shown()).not.toHaveBeenCalled();
    expect(isTold()).toBe(false);
  });

  it.each([
    ['index-a.js', false],
    ['index-b.js', true],
  ])('the first of all takes over only where it serves another page: %s', async (script, takesOver) => {
    served = async () => new Response(page(script));
    await shown();
    expect(isTold()).toBe(false);
    await change({});
    expect(isTold()).toBe(takesOver);
  });

  it('that another follows gives way to it, whatever that serves', async () => {
    workers.controller = {};
    served = async () => new Response(page('index-a.js'));
    await shown();
    await change({});
    expect(isTold()).toBe(true);
  });
});
