import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readClient } from '../../../src/cli/clientFile';
import {
  addClient,
  BOOK_VERSION,
  type Book,
  changeClient,
  compareBackup,
  compareStyles,
  DEMO_BOOK,
  DEMO_CLIENT,
  keepStyle,
  openClient,
  openDraftOf,
  readBackup,
  readBook,
  restore,
  setMeasurement,
  setSide,
  writeBackup,
} from '../../../src/document';

const FIXTURE = readBook(readFileSync(new URL('./fixtures/book-v3.json', import.meta.url), 'utf8'));
const KEPT: Book = FIXTURE.kind === 'book' ? FIXTURE.book : DEMO_BOOK;
const backup = (book: Book): string => writeBackup(book, '2026-11-25');

describe('a backup', () => {
  it('gives back the whole book', () => {
    expect(KEPT.clients.length).toBeGreaterThan(1);
    expect(readBackup(backup(KEPT))).toEqual({ kind: 'backup', book: KEPT, madeOn: '2026-11-25' });
  });

  it('holds each client as the headless drafter takes one, in mm whatever she is shown in', () => {
    const { clients } = JSON.parse(backup(KEPT)) as { clients: unknown[] };
    expect(clients).toHaveLength(KEPT.clients.length);
    for (const [i, client] of clients.entries())
      expect(readClient(client)).toMatchObject({
        ok: true,
        value: { name: KEPT.clients[i]?.name, unit: 'mm', measurements: KEPT.clients[i]?.measurements },
      });
  });

  it('of the first version is read as well', () => {
    const old = JSON.parse(readFileSync(new URL('./fixtures/book-v1.json', import.meta.url), 'utf8'));
    const clients = old.clients.map((client: { unit: string }) => ({
      ...client,
      unit: 'mm',
      shownIn: client.unit,
    }));
    const read = readBackup(JSON.stringify({ kind: 'staywright backup', ...old, clients }));
    expect(read).toMatchObject({ kind: 'backup', madeOn: null, book: { version: BOOK_VERSION } });
  });

  it.each([
    ['words', 'the quick brown fox', { code: 'backupNotWhole' }],
    ['half a backup', backup(DEMO_BOOK).slice(0, -20), { code: 'backupNotWhole' }],
    ['a kept book', JSON.stringify(DEMO_BOOK), { code: 'notBackup' }],
    ['a list', '[]', { code: 'notBackup' }],
    [
      'a client without a unit',
      backup(DEMO_BOOK).replace('"shownIn": "in"', '"shownIn": "ell"'),
      { code: 'wrongShape', path: 'clients.0.unit' },
    ],
  ])('is not read from %s, and says so', (_, text, fault) => {
    expect(readBackup(text)).toEqual({ kind: 'unreadable', fault });
  });

  it('of a later version is left alone', () => {
    const later = backup(DEMO_BOOK).replace(`"version": ${BOOK_VERSION}`, `"version": ${BOOK_VERSION + 1}`);
    expect(readBackup(later)).toEqual({ kind: 'newer', version: BOOK_VERSION + 1 });
  });

  it('never throws, whatever file is chosen', () => {
    const text = fc.oneof(
      fc.string(),
      fc.json(),
      fc
        .jsonValue()
        .map((clients) => JSON.stringify({ kind: 'staywright backup', version: BOOK_VERSION, clients })),
      fc
        .array(fc.jsonValue())
        .map((clients) => JSON.stringify({ kind: 'staywright backup', version: 1, clients })),
    );
    fc.assert(
      fc.property(text, (each) => {
        expect(['backup', 'unreadable', 'newer']).toContain(readBackup(each).kind);
      }),
    );
  });
});

describe('restoring', () => {
  const before = addClient(DEMO_BOOK, 'bea', 'Bea');
  const now = changeClient(
    { ...before, openClient: 'demo', clients: before.clients.filter(({ id }) => id !== 'bea') },
    (client) => setMeasurement(client, 'waist', 700),
  );
  const withAda = addClient(now, 'ada', 'Ada');

  const of = (...ids: string[]) => ({ clients: new Set(ids), styles: new Set<string>() });

  it('shows first what it would change', () => {
    const rows = compareBackup(withAda, before);
    expect(rows.map(({ client, state, differs }) => [client.name, state, differs])).toEqual([
      ['Wren Abernathy', 'different', ['measurements']],
      ['Bea', 'new', []],
    ]);
    expect(compareBackup(before, before).map(({ state }) => state)).toEqual(['same', 'same']);
    const lopsided = changeClient(now, (client) => setSide(client, 'leftShare', 'waist', 0.52));
    expect(compareBackup(lopsided, now)[0]?.differs).toEqual(['measurements']);
  });

  it('brings the chosen clients, and leaves all others alone', () => {
    const bea = restore(withAda, before, of('bea'));
    expect(bea.clients.map(({ name }) => name)).toEqual(['Wren Abernathy', 'Ada', 'Bea']);
    expect(bea.clients[0]?.measurements.waist).toBe(700);
    const both = restore(withAda, before, of('bea', 'demo'));
    expect(both.clients[0]).toBe(before.clients[0]);
    expect(openClient(both).name).toBe('Ada');
    expect(restore(withAda, before, of())).toBe(withAda);
  });

  it('shows and brings the maker’s own styles apart from the clients', () => {
    const { style } = openDraftOf(DEMO_CLIENT);
    const other = { ...style, hemBelow: 50 };
    const then = ['a', 'b', 'c'].reduce(
      (book, id) => keepStyle(book, id, id, style, '2026-11-01'),
      DEMO_BOOK,
    );
    const here = keepStyle(
      keepStyle(DEMO_BOOK, 'a', 'a', style, '2026-11-01'),
      'b',
      'b',
      other,
      '2026-11-02',
    );
    expect(compareStyles(here, then).map(({ state }) => state)).toEqual(['same', 'different', 'new']);
    const one = restore(here, then, { clients: new Set(), styles: new Set(['c']) });
    expect(one.styles.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    expect(one.styles[1]?.style).toBe(other);
    expect(one.clients).toBe(here.clients);
    const both = restore(here, then, { clients: new Set(), styles: new Set(['b', 'c']) });
    expect(both.styles).toEqual(then.styles);
  });
});
