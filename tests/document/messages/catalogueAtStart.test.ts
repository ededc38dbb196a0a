import { expect, it, vi } from 'vitest';

/** The module once more, as a page that starts evaluates it. */
const FRESH = '../../../src/document/messages/catalogue?atStart';

it('has no data of languages read before a sentence needs them', async () => {
  const rules = vi.spyOn(Intl, 'PluralRules');
  const lists = vi.spyOn(Intl, 'ListFormat');
  const { listed, plural } = (await import(
    /* @vite-ignore */ FRESH
  )) as typeof import('../../../src/document/messages/catalogue');
  expect(rules).not.toHaveBeenCalled();
  expect(lists).not.toHaveBeenCalled();
  vi.restoreAllMocks();
  expect(plural(1, { one: '1 note', other: '1 notes' })).toBe('1 note');
  expect(plural(2, { one: '2 note', other: '2 notes' })).toBe('2 notes');
  expect(listed(['a', 'b', 'c'])).toBe('a, b, and c');
  expect(listed(['a', 'b'])).toBe('a and b');
});
