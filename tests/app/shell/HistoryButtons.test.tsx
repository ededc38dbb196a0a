import { act, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { HistoryButtons } from '../../../src/app/shell/HistoryButtons';
import { fetchChangeWords } from '../../../src/app/shell/laterSentences';
import { type Book, changeStyle, setStation } from '../../../src/document';
import { onTable } from '../withStore';

beforeEach(async () => {
  await fetchChangeWords();
  vi.useFakeTimers();
});
afterEach(() => void vi.useRealTimers());

const ease = (mm: number) => (book: Book) =>
  changeStyle(book, (style) => ({ ...style, ease: { ...style.ease, waist: mm } }));

const BUST = { block: 'front', place: 'bustPoint', kind: 'wedge', number: 1 } as const;

function said() {
  const { store } = onTable(<HistoryButtons />);
  const keep = (step: (book: Book) => Book, value: string, by: 'pull' | 'key' | 'sameKey'): void =>
    act(() => {
      store.getState().show(step);
      store.getState().keep({ code: 'wedgeMoved', wedge: BUST }, { value, by });
    });
  const wait = (ms: number): void => act(() => void vi.advanceTimersByTime(ms));
  return { table: store, keep, wait, text: () => screen.getByRole('status').textContent };
}

describe('what is said of a handle', () => {
  it('is its own number first, then what came of it', () => {
    const { keep, text } = said();
    keep((book) => changeStyle(book, (style) => setStation(style, 'front-bust', 0.1)), '3¾ in', 'pull');
    expect(text()).toMatch(
      /^bust wedge: distance from the centre line 3¾ in; Front 1 \S+ in wide at the waist, Front 2 /,
    );
  });

  it('is said of keys in a row once they rest, and of all of them', () => {
    const { keep, wait, text } = said();
    // the demo's waist is 29 1/2 in, and is laced with 2 in less
    keep(ease(-60), '1 in', 'key');
    for (const mm of [-65, -70, -76.2]) {
      wait(400);
      keep(ease(mm), `${-mm} mm`, 'sameKey');
      expect(text()).toBe('');
    }
    wait(999);
    expect(text()).toBe('');
    wait(1);
    expect(text()).toBe('bust wedge: distance from the centre line 76.2 mm; waist laced 26½ in');
  });

  it('is only the number where the keys came back to where they began', () => {
    const { keep, wait, text } = said();
    keep(ease(-60), '1 in', 'key');
    keep(ease(-50.8), '2 in', 'sameKey');
    wait(1000);
    expect(text()).toBe('bust wedge: distance from the centre line 2 in');
  });

  it('gives way to an undo, which is said at once', () => {
    const { table: store, keep, wait, text } = said();
    keep(ease(-76.2), '1 in', 'key');
    act(() => store.getState().undo());
    expect(text()).toBe('Undone: bust wedge: distance from the centre line; waist laced 27½ in');
    wait(5000);
    expect(text()).toBe('Undone: bust wedge: distance from the centre line; waist laced 27½ in');
  });

  it('does not give its number to the next change', () => {
    const { table: store, keep, text } = said();
    keep(ease(-60), '1 in', 'pull');
    act(() => store.getState().change({ code: 'easeSet', level: 'waist' }, ease(-76.2)));
    expect(text()).toBe('ease at the waist; waist laced 26½ in');
  });
});

describe('what is said before the consequence of changes was fetched', () => {
  const CONSEQUENCE = '../../../src/app/shell/consequence';

  /** The buttons with all modules fresh, because the consequence is fetched only once. */
  async function freshTable() {
    vi.useRealTimers();
    vi.resetModules();
    const { onTable: onFreshTable } = await import('../withStore');
    const { HistoryButtons: FreshButtons } = await import('../../../src/app/shell/HistoryButtons');
    const { store } = onFreshTable(<FreshButtons />);
    const set = (mm: number): void =>
      act(() => store.getState().change({ code: 'easeSet', level: 'waist' }, ease(mm)));
    return { set, status: screen.getByRole('status') };
  }

  it('waits for it, and is of the last change alone', async () => {
    const { set, status } = await freshTable();
    set(-60);
    set(-76.2);
    expect(status).toBeEmptyDOMElement();
    await vi.waitFor(() => expect(status).toHaveTextContent('ease at the waist; waist laced 26½ in'));
  });

  it('is the change alone where it cannot be fetched', async () => {
    vi.doMock(CONSEQUENCE, () => {
      throw new TypeError('Failed to fetch dynamically imported module');
    });
    try {
      const { set, status } = await freshTable();
      set(-76.2);
      await vi.waitFor(() => expect(status.textContent).toBe('ease at the waist'));
    } finally {
      vi.doUnmock(CONSEQUENCE);
    }
  });
});
