// Gives every test of the screen a page of its own: files of tests share one window.

import '@testing-library/jest-dom/vitest';
import { cleanup } from '@testing-library/react';
import { afterEach, vi } from 'vitest';

// The page fetches its faces; here they are read from the disk.
vi.mock('../../src/app/cut/print/fontFiles', () => import('../../src/cli/output/fontFiles'));

// The page without a browser has no workers: what the worker of a print does is done beside the test.
vi.mock('../../src/app/cut/print/openWorker', () => import('./besideWorker'));

// The page without a browser lays nothing out, so that no size changes.
class StillObserver implements ResizeObserver {
  observe(): void {}
  unobserve(): void {}
  disconnect(): void {}
}
globalThis.ResizeObserver ??= StillObserver;
globalThis.IntersectionObserver ??= StillObserver as unknown as typeof IntersectionObserver;

afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.restoreAllMocks();
  localStorage.clear();
  sessionStorage.clear();
  document.body.replaceChildren();
  window.location.hash = '';
});
