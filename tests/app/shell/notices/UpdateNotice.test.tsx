import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { UpdateNotice } from '../../../../src/app/shell/notices/UpdateNotice';
import { SHELL } from '../../../../src/document';
import { onTable } from '../../withStore';

const page = (script: string): string =>
  `<head><script type="module" src="./assets/${script}"></script></head>`;

/** What the browser has of service workers, with the one in charge. */
class Workers extends EventTarget {
  controller: object | null = null;
  /** The worker of a later build that is installed when the page asks. */
  waiting: object | null = null;
  readonly register = async () => Object.assign(new EventTarget(), { waiting: this.waiting });
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
  window.history.replaceState(null, '');
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

describe('a later worker that was asked in', () => {
  type Kind = 'saved' | 'pending';
  let kind: Kind;
  let tell: (status: { kind: Kind }) => void;
  let worker: { postMessage: ReturnType<typeof vi.fn> };
  let reload: ReturnType<typeof vi.fn<() => void>>;
  const storage = {
    status: () => ({ kind }),
    subscribe: (listener: typeof tell) => {
      tell = listener;
      return () => {
        tell = () => undefined;
      };
    },
    flush: vi.fn(),
  };
  const become = (next: Kind): void => {
    kind = next;
    act(() => tell({ kind }));
  };
  const wait = (ms: number) => act(() => vi.advanceTimersByTimeAsync(ms));
  /** The page, a while after it was opened. */
  const open = async (): Promise<void> => {
    reload = vi.fn();
    onTable(<UpdateNotice storage={storage} reload={reload} />);
    await wait(1500);
  };

  beforeEach(async () => {
    [kind, tell] = ['saved', () => undefined];
    worker = { postMessage: vi.fn() };
    workers.controller = {};
    workers.waiting = worker;
    served = async () => new Response(page('index-a.js'));
    await open();
  });
  const use = () => fireEvent.click(screen.getByRole('button', { name: SHELL.update.use }));

  it('is waited for a while, and then the page is loaded again', async () => {
    expect(worker.postMessage).not.toHaveBeenCalled();
    use();
    expect(worker.postMessage).toHaveBeenCalledWith('update');
    await wait(1900);
    expect(reload).not.toHaveBeenCalled();
    await wait(200);
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('loads a page that is still writing by then as soon as that is done, and says so', async () => {
    kind = 'pending';
    use();
    await wait(10_000);
    expect(reload).not.toHaveBeenCalled();
    screen.getByText(SHELL.update.asked);
    become('saved');
    expect(reload).toHaveBeenCalledTimes(1);
    become('saved');
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('is asked again by the page that was loaded for it, a few times, and is then offered as before', async () => {
    use();
    await wait(2100);
    for (let again = 0; again < 3; again += 1) {
      cleanup();
      worker.postMessage.mockClear();
      await open();
      expect(worker.postMessage).toHaveBeenCalledTimes(1);
      await wait(2100);
      expect(reload).toHaveBeenCalledTimes(1);
    }
    cleanup();
    worker.postMessage.mockClear();
    await open();
    await wait(10_000);
    expect(worker.postMessage).not.toHaveBeenCalled();
    expect(reload).not.toHaveBeenCalled();
    screen.getByText(SHELL.update.ready);
  });

  it('is not asked by a page that was loaded for another reason', async () => {
    cleanup();
    await open();
    await wait(10_000);
    expect(worker.postMessage).not.toHaveBeenCalled();
  });
});
