import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { askToPersist, isPersisted } from '../../../src/app/storage/persist';
import { FakeStorage } from './fakeStorage';
import { openTab } from './keeper';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A browser that can be asked, and how often it was. */
function browser(persist: () => Promise<boolean> = async () => true) {
  const asked = vi.fn(persist);
  return { asked, navigator: { storage: { persist: asked } } as unknown as Navigator };
}

describe('the browser is asked to keep the book', () => {
  it('once, when the first client of the user’s own is kept, and not for the invented one', async () => {
    const { asked, navigator } = browser();
    const tab = await openTab(new FakeStorage());
    askToPersist(tab.books, navigator);
    tab.books.flush();
    expect(asked).not.toHaveBeenCalled();
    tab.rename('Ada');
    expect(asked).not.toHaveBeenCalled();
    tab.books.flush();
    expect(asked).toHaveBeenCalledTimes(1);
    tab.rename('Bea');
    tab.books.flush();
    expect(asked).toHaveBeenCalledTimes(1);
  });

  it('only once it is kept', async () => {
    const { asked, navigator } = browser();
    const fake = new FakeStorage();
    const tab = await openTab(fake);
    askToPersist(tab.books, navigator);
    fake.refusesToWrite = true;
    tab.rename('Ada');
    tab.books.flush();
    expect(asked).not.toHaveBeenCalled();
    fake.refusesToWrite = false;
    tab.books.flush();
    expect(asked).toHaveBeenCalledTimes(1);
  });

  it('and goes on as before where it refuses, or cannot be asked', async () => {
    for (const navigator of [browser(() => Promise.reject(new TypeError('no'))).navigator, {} as Navigator]) {
      const tab = await openTab(new FakeStorage());
      askToPersist(tab.books, navigator);
      tab.rename('Ada');
      tab.books.flush();
      expect(tab.books.status().kind).toBe('saved');
    }
  });

  it('no longer where that was ended', async () => {
    const { asked, navigator } = browser();
    const tab = await openTab(new FakeStorage());
    askToPersist(tab.books, navigator)();
    tab.rename('Ada');
    tab.books.flush();
    expect(asked).not.toHaveBeenCalled();
  });
});

describe('whether the browser has agreed', () => {
  it.each([
    ['it has', { storage: { persisted: async () => true } }, true],
    ['it has not', { storage: { persisted: async () => false } }, false],
    ['it throws', { storage: { persisted: () => Promise.reject(new TypeError('no')) } }, false],
    ['it knows nothing of it', {}, false],
  ])('%s', async (_, navigator, agreed) => {
    expect(await isPersisted(navigator as unknown as Navigator)).toBe(agreed);
  });
});
