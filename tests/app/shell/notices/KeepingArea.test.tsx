import { act, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { BOOK_KEY } from '../../../../src/app/storage/records/record';
import { FakeStorage } from '../../storage/fakeStorage';

/** How often the notices were asked for, and whether they can be fetched. */
const fetches = vi.hoisted(() => ({ count: 0, fails: false }));

beforeEach(() => {
  vi.resetModules();
  Object.assign(fetches, { count: 0, fails: false });
  vi.doMock('../../../../src/app/shell/notices/KeepingNotices', async (actual) => {
    fetches.count += 1;
    if (fetches.fails) throw new TypeError('Failed to fetch dynamically imported module');
    return actual();
  });
});
afterEach(() => void vi.doUnmock('../../../../src/app/shell/notices/KeepingNotices'));

/** The area over a storage, as the shell has it. All modules are fresh, because a lazy part is fetched only once. */
async function showArea(fake: FakeStorage | null) {
  const { keptOnTable } = await import('../keptOnTable');
  const { KeepingArea } = await import('../../../../src/app/shell/notices/KeepingArea');
  const { container, tab } = await keptOnTable(<KeepingArea />, fake);
  const save = (): void =>
    act(() => {
      tab.rename('Ada');
      tab.books.flush();
    });
  return { container, save };
}

describe('the notices about keeping', () => {
  it('are not fetched while there is none', async () => {
    const { container, save } = await showArea(new FakeStorage());
    save();
    expect(container).toBeEmptyDOMElement();
    expect(fetches.count).toBe(0);
  });

  it('are fetched for what the first look found', async () => {
    await showArea(new FakeStorage({ [BOOK_KEY]: '{"version":1' }));
    expect(await screen.findByRole('status', {}, { timeout: 15_000 })).toHaveTextContent(
      'It is left as it was',
    );
    expect(fetches.count).toBe(1);
  });

  it('are fetched when the book can no longer be kept', async () => {
    const fake = new FakeStorage();
    const { save } = await showArea(fake);
    expect(fetches.count).toBe(0);
    fake.room = 10;
    save();
    expect(await screen.findByRole('status', {}, { timeout: 15_000 })).toHaveTextContent(
      'no room left to keep the book',
    );
  });

  it('that cannot be fetched are replaced by one sentence of the first load', async () => {
    fetches.fails = true;
    await showArea(null);
    expect(await screen.findByRole('status', {}, { timeout: 15_000 })).toHaveTextContent(
      'the notice that says why could not be loaded. Download a backup',
    );
  });
});
