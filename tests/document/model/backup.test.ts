import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readClient } from '../../../src/cli/input/clientFile';
import {
  addClient,
  BOOK_VERSION,
  type Book,
  badPartsSentence,
  type Client,
  changeClient,
  compareClients,
  comparedWith,
  compareStyles,
  DEMO_BOOK,
  DEMO_CLIENT,
  demoBook,
  keepStyle,
  openClient,
  openDraftOf,
  type RestoreHow,
  readBackup,
  readBook,
  readFittings,
  restore,
  setMeasurement,
  setSide,
  writeBackup,
} from '../../../src/document';

const FIXTURE = readBook(readFileSync(new URL('./fixtures/book-v3.json', import.meta.url), 'utf8'));
const KEPT: Book = FIXTURE.kind === 'book' ? FIXTURE.book : DEMO_BOOK;
const FITTED_BOOK = readBook(readFileSync(new URL('./fixtures/book-v9.json', import.meta.url), 'utf8'));
const FITTED: Book = FITTED_BOOK.kind === 'book' ? FITTED_BOOK.book : DEMO_BOOK;
const backup = (book: Book): string => writeBackup(book, '2026-11-25');
let ids = 0;
const newId = (): string => {
  ids += 1;
  return `new-${ids}`;
};
const read = (text: string) => readBackup(text, newId);

describe('a backup', () => {
  it('gives back the whole book', () => {
    expect(KEPT.clients.length).toBeGreaterThan(1);
    const { clients, styles } = KEPT;
    const whole = { clients, styles, faulty: new Map(), lost: [], madeOn: '2026-11-25', isPart: false };
    expect(read(backup(KEPT))).toEqual({ kind: 'backup', backup: whole });
    // A bare book is read as well.
    expect(read(JSON.stringify(KEPT))).toEqual({ kind: 'backup', backup: { ...whole, madeOn: null } });
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

  it('has fittings in the shape of a file of fittings, and gives them back', () => {
    const data = JSON.parse(backup(FITTED));
    const [draft] = data.clients[0].drafts;
    const kept = FITTED.clients[0]?.drafts[0]?.fittings;
    expect(kept).toHaveLength(2);
    expect(draft.fittings[0].alterations[0].seam).toEqual(['front-1', 'front-2']);
    expect(draft.fittings[0].alterations[0].at[1]).toEqual({ belowWaist: 40, a: 3, b: 0 });
    expect(draft.fittings[0].alterations[0].at[2]).toEqual({ edge: 'hem', a: 2, b: 2 });
    expect(readFittings({ unit: 'mm', fittings: draft.fittings })).toEqual({ ok: true, value: kept });
    expect(read(backup(FITTED))).toMatchObject({
      kind: 'backup',
      backup: { clients: FITTED.clients, lost: [] },
    });
  });

  it('of the first version is read as well', () => {
    const old = JSON.parse(readFileSync(new URL('./fixtures/book-v1.json', import.meta.url), 'utf8'));
    const clients = old.clients.map((client: { unit: string }) => ({
      ...client,
      unit: 'mm',
      shownIn: client.unit,
    }));
    const found = read(JSON.stringify({ kind: 'staywright backup', ...old, clients }));
    expect(found).toMatchObject({ kind: 'backup', backup: { madeOn: null, lost: [] } });
    expect(found.kind === 'backup' && found.backup.clients.map(({ name }) => name)).toEqual([
      'Orla Fenwick',
      'Bram Tolliver',
    ]);
  });

  it.each([
    ['words', 'the quick brown fox', { code: 'backupNotWhole' }],
    ['half a backup', backup(DEMO_BOOK).slice(0, -20), { code: 'backupNotWhole' }],
    ['a list', '[]', { code: 'notBackup' }],
    ['a book without clients', `{"version":${BOOK_VERSION}}`, { code: 'notBackup' }],
  ])('is not read from %s, and says so', (_, text, fault) => {
    expect(read(text)).toEqual({ kind: 'unreadable', fault });
  });

  it('that is cut off anywhere gives every client and style before that place, and says that it is', () => {
    const text = backup(KEPT);
    const parts = [...KEPT.styles, ...KEPT.clients];
    /** Where each of them ends. */
    const ends = [...text.matchAll(/\n {2}\}/g)].map(({ 0: { length }, index }) => index + length);
    expect(ends).toHaveLength(parts.length);
    // Behind the last brace nothing is missing but the end of the line.
    for (let cut = 1; cut < text.length - 2; cut += 7) {
      const found = read(text.slice(0, cut));
      const whole = parts.filter((_, i) => (ends[i] ?? 0) <= cut);
      if (whole.length === 0)
        expect(found).toEqual({ kind: 'unreadable', fault: { code: 'backupNotWhole' } });
      else if (found.kind !== 'backup') expect.fail(`nothing is read up to ${cut}`);
      else {
        expect(found.backup.isPart).toBe(true);
        expect([...found.backup.styles, ...found.backup.clients]).toEqual(whole);
        expect([...found.backup.faulty, ...found.backup.lost]).toEqual([]);
      }
    }
  });

  it('is read of a bare book that is cut off, whose clients before that place are whole', () => {
    const text = readFileSync(new URL('./fixtures/book-v5.json', import.meta.url), 'utf8');
    const found = read(text.slice(0, text.lastIndexOf('"name": "Bram Tolliver"')));
    if (found.kind !== 'backup') expect.fail('nothing is read');
    expect(found.backup.clients.map(({ name }) => name)).toEqual(['Orla Fenwick']);
    expect([...found.backup.faulty, ...found.backup.lost]).toEqual([]);
  });

  it('that is cut off is read where names have brackets and quotes in them', () => {
    const [client] = KEPT.clients;
    if (!client) throw new Error('there is no client');
    const clients = ['A "]}" \\', 'B \\"{[', 'C'].map((name, i) => ({ ...client, id: `${i}`, name }));
    const text = backup({ ...KEPT, clients, openClient: '0' });
    const found = read(text.slice(0, text.lastIndexOf('"name": "C"')));
    expect(found.kind === 'backup' && found.backup.clients.map(({ name }) => name)).toEqual([
      'A "]}" \\',
      'B \\"{[',
    ]);
  });

  it('that is damaged in one place gives those before it', () => {
    const text = backup(KEPT);
    const at = text.indexOf('"drafts"', text.lastIndexOf('"name": "Bram Tolliver"'));
    const found = read(`${text.slice(0, at)}#${text.slice(at)}`);
    expect(found).toMatchObject({ kind: 'backup', backup: { isPart: true } });
    expect(found.kind === 'backup' && found.backup.clients.map(({ name }) => name)).toEqual(['Orla Fenwick']);
  });

  it('of a later version is left alone', () => {
    const later = backup(DEMO_BOOK).replace(`"version": ${BOOK_VERSION}`, `"version": ${BOOK_VERSION + 1}`);
    expect(read(later)).toEqual({ kind: 'newer', version: BOOK_VERSION + 1 });
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
        expect(['backup', 'unreadable', 'newer']).toContain(read(each).kind);
      }),
    );
  });
});

describe('a backup of which a part is bad', () => {
  const bad = (change: (client: Record<string, never>) => void) => {
    const data = JSON.parse(backup(KEPT));
    change(data.clients[0]);
    const found = read(JSON.stringify(data));
    if (found.kind !== 'backup') throw new Error(found.kind);
    const { clients, faulty, lost } = found.backup;
    const [[id, part] = []] = [...faulty];
    return {
      clients,
      lost,
      says: part && badPartsSentence(part),
      mended: clients.find((each) => each.id === id),
    };
  };
  const set = (path: string, value: unknown) => (client: Record<string, never>) => {
    const names = path.split('.');
    const last = names.pop() as string;
    Object.assign(
      names.reduce<Record<string, never>>((part, name) => part[name] as never, client),
      {
        [last]: value,
      },
    );
  };

  it.each([
    ['measurements.bust', 'wide', /without what cannot be read: bust girth\.$/],
    ['measurements', null, /without what cannot be read: the measurements\.$/],
    ['unit', 3, null],
    ['shownIn', 'ell', /: the unit\.$/],
    ['earlier', 'none', /: measurements taken before\.$/],
    ['drafts.0.style.hemBelow', null, /: the hem below the waist line of the draft “.+”\.$/],
    ['drafts.0.style.wedges.0.block', 'sleeve', /: one wedge of the draft “.+”\.$/],
    ['drafts.0.comparison', 7, /: what “.+” is compared with\.$/],
    ['drafts.0', 'torn', /: the draft “”\.$/],
    ['drafts', [], /: a draft\.$/],
    ['name', 12, /: the name\.$/],
  ])('names %s in plain words and brings all the rest', (path, value, sentence) => {
    const { clients, lost, says, mended } = bad(set(path, value));
    expect(clients).toHaveLength(KEPT.clients.length);
    expect(lost).toEqual([]);
    expect(clients).toContainEqual(KEPT.clients[1]);
    if (sentence === null) return;
    expect(says).toMatch(sentence);
    expect(mended?.drafts.length).toBeGreaterThan(0);
    if (path === 'measurements.bust')
      expect(mended?.measurements).toEqual({ ...KEPT.clients[0]?.measurements, bust: null });
  });

  it('leaves behind the one alteration, note or print that cannot be read', () => {
    const data = JSON.parse(backup(FITTED));
    const [client] = data.clients;
    client.drafts[0].fittings[0].alterations[1].between = 'waist';
    client.drafts[0].fittings[1].date = 7;
    client.drafts[0].notes.heel = null;
    client.prints[0].form = 'slate';
    const found = read(JSON.stringify(data));
    if (found.kind !== 'backup') throw new Error(found.kind);
    const mended = found.backup.clients.find(({ id }) => id === client.id);
    const was = FITTED.clients[0]?.drafts[0];
    const [first] = was?.fittings ?? [];
    expect(mended?.drafts[0]?.fittings).toEqual([{ ...first, alterations: first?.alterations.slice(0, 1) }]);
    expect(mended?.drafts[0]?.notes).toEqual({ ...was?.notes, heel: '' });
    expect(mended?.drafts[0]?.style).toEqual(was?.style);
    expect(mended?.prints).toEqual([]);
    const [part] = [...found.backup.faulty.values()];
    expect(part && badPartsSentence(part)).toMatch(
      /a part of a fitting of the draft “.+”, a note of the draft “.+”, and the record of a print\.$/,
    );
  });

  it('names whom nothing can be had of', () => {
    const data = JSON.parse(backup(KEPT));
    data.clients[1] = 'torn out';
    const found = read(JSON.stringify(data));
    expect(found).toMatchObject({
      backup: { clients: [KEPT.clients[0]], lost: [{ mended: null, name: '' }] },
    });
  });

  it('of any earlier version is mended after it was brought up to this one', () => {
    for (let version = 1; version < BOOK_VERSION; version += 1) {
      const data = JSON.parse(
        readFileSync(new URL(`./fixtures/book-v${version}.json`, import.meta.url), 'utf8'),
      );
      data.clients[0].measurements.waist = 'narrow';
      const found = read(JSON.stringify(data));
      const names = found.kind === 'backup' ? found.backup.clients.map(({ name }) => name) : [];
      expect(names, `version ${version}`).toEqual(['Bram Tolliver', 'Orla Fenwick']);
    }
  });

  it('leaves behind the one draft of an earlier version that cannot be brought up to this one', () => {
    for (let version = 1; version < BOOK_VERSION; version += 1) {
      const data = JSON.parse(
        readFileSync(new URL(`./fixtures/book-v${version}.json`, import.meta.url), 'utf8'),
      );
      const [client] = data.clients;
      const list = client.sheets ? 'sheets' : 'drafts';
      const [draft] = client[list];
      client[list] = [{ ...draft, id: 'torn', name: 'Torn', style: 'none' }, ...client[list]];
      const found = read(JSON.stringify(data));
      if (found.kind !== 'backup') throw new Error(found.kind);
      const mended = found.backup.clients.find(({ name }) => name === client.name);
      expect(
        mended?.drafts.map(({ name }) => name),
        `version ${version}`,
      ).toContain(draft.name);
      expect(mended?.measurements.waist, `version ${version}`).toBeGreaterThan(0);
      expect([...found.backup.faulty.values()], `version ${version}`).toHaveLength(1);
    }
  });

  it('never throws, whatever is wrong with it', () => {
    const text = JSON.stringify(KEPT);
    fc.assert(
      fc.property(
        fc.nat(text.length - 1),
        fc.constantFrom('0', '"', '}', '-', 'x', '1e999'),
        (at, letter) => {
          const spoilt = text.slice(0, at) + letter + text.slice(at + 1);
          const found = read(spoilt);
          if (found.kind !== 'backup') return;
          const count = found.backup.clients.length + found.backup.lost.length;
          if (found.backup.isPart) expect(count).toBeLessThanOrEqual(KEPT.clients.length);
          else expect(count).toBe(KEPT.clients.length);
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('restoring', () => {
  const own = demoBook('wren');
  const before = addClient(own, 'bea', 'Bea');
  const now = changeClient(
    { ...before, openClient: 'wren', clients: before.clients.filter(({ id }) => id !== 'bea') },
    (client) => setMeasurement(client, 'waist', 700),
  );
  const withAda = addClient(now, 'ada', 'Ada');

  const of = (how: RestoreHow, ...chosen: string[]) => ({
    clients: new Map(chosen.map((id) => [id, how])),
    styles: new Map<string, RestoreHow>(),
  });

  it('shows first what it would change', () => {
    const rows = compareClients(withAda, before);
    expect(rows.map(({ part, state, differs }) => [part.name, state, differs])).toEqual([
      ['Wren Abernathy', 'different', ['measurements']],
      ['Bea', 'new', []],
    ]);
    expect(compareClients(before, before).map(({ state }) => state)).toEqual(['same', 'same']);
    const lopsided = changeClient(now, (client) => setSide(client, 'leftShare', 'waist', 0.52));
    expect(compareClients(lopsided, now)[0]?.differs).toEqual(['measurements']);
  });

  it('tells a difference in anything that is kept of a client but how she was looked at', () => {
    const looks = ['id', 'openDraft', 'lastUsed', 'changed', 'invented'];
    const parts = Object.keys({ ...DEMO_CLIENT, sides: {} }).filter((part) => !looks.includes(part));
    expect(parts.length).toBeGreaterThan(9);
    const states = parts.map((part) => {
      const clients = own.clients.map((each) => ({ ...each, [part]: ['another'] }) as unknown as Client);
      return [part, compareClients(own, { clients, styles: [] })[0]?.state];
    });
    expect(states).toEqual(parts.map((part) => [part, 'different']));
  });

  it('brings the chosen clients, and leaves all others alone', () => {
    const bea = restore(withAda, before, of('beside', 'bea'), newId);
    expect(bea.clients.map(({ name }) => name)).toEqual(['Wren Abernathy', 'Ada', 'Bea']);
    expect(bea.clients[0]?.measurements.waist).toBe(700);
    const both = restore(withAda, before, of('instead', 'bea', 'wren'), newId);
    expect(both.clients[0]).toBe(before.clients[0]);
    expect(openClient(both).name).toBe('Ada');
    expect(restore(withAda, before, of('instead'), newId)).toBe(withAda);
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
    const one = restore(here, then, { clients: new Map(), styles: new Map([['c', 'beside']]) }, newId);
    expect(one.styles.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    expect(one.styles[1]?.style).toBe(other);
    expect(one.clients).toBe(here.clients);
    const both = restore(
      here,
      then,
      {
        clients: new Map(),
        styles: new Map<string, RestoreHow>([
          ['b', 'instead'],
          ['c', 'beside'],
        ]),
      },
      newId,
    );
    expect(both.styles).toEqual(then.styles);
  });

  it('brings a client beside the one in the book, under a name and an id of her own', () => {
    const both = restore(withAda, before, of('beside', 'wren'), newId);
    expect(both.clients.map(({ name }) => name)).toEqual(['Wren Abernathy', 'Ada', 'Wren Abernathy 2']);
    expect(both.clients[0]).toBe(withAda.clients[0]);
    expect(both.clients[2]).toEqual({
      ...before.clients[0],
      id: both.clients[2]?.id,
      name: 'Wren Abernathy 2',
    });
  });

  it('never takes two women for one because both began as the invented client', () => {
    const real = { ...DEMO_BOOK, clients: [{ ...DEMO_CLIENT, name: 'Maud' }] };
    const found = read(backup(real));
    const { clients } = found.kind === 'backup' ? found.backup : { clients: [] };
    const rows = compareClients(DEMO_BOOK, { clients, styles: [] });
    expect(rows.map(({ part, state }) => [part.name, state])).toEqual([['Maud', 'new']]);
    // The invented client as she came is the same under whatever id.
    expect(compareClients(demoBook('other'), demoBook('one'))[0]?.state).toBe('same');
  });

  it('never takes two women of one name for one, and gives each who comes beside another a name of her own', () => {
    const ada = now.clients.map((each) => ({ ...each, id: 'ada', name: 'Ada' }));
    const other = ada.map((each) => setMeasurement({ ...each, id: 'other' }, 'waist', 800));
    const book = { ...now, clients: ada, openClient: 'ada' };
    expect(compareClients(book, { clients: other, styles: [] }).map(({ state }) => state)).toEqual(['new']);
    const two = { clients: [...other, ...other.map((each) => ({ ...each, id: 'third' }))], styles: [] };
    const names = restore(book, two, of('beside', 'other', 'third'), newId).clients.map(({ name }) => name);
    expect(names).toEqual(['Ada', 'Ada', 'Ada']);
    const again = restore(book, { ...two, clients: [...ada, ...ada] }, of('beside', 'ada'), newId);
    expect(again.clients.map(({ name }) => name)).toEqual(['Ada', 'Ada 2', 'Ada 3']);
  });

  it('compares a client with the one of her own id, also where another has all that she had', () => {
    const copied = {
      ...now,
      clients: [...now.clients, ...own.clients.map((each) => ({ ...each, id: 'copy' }))],
    };
    expect(compareClients(copied, own)[0]).toMatchObject({ state: 'different', here: { id: 'wren' } });
  });

  it('tells which was changed later', () => {
    const at = (changed: string) => ({
      ...own,
      clients: own.clients.map((each) => ({ ...each, changed, name: changed })),
    });
    expect(compareClients(at('2026-11-02'), at('2026-11-01'))[0]?.newer).toBe('book');
    expect(compareClients(at('2026-11-02'), at('2026-11-03'))[0]?.newer).toBe('backup');
    expect(compareClients(now, own)[0]?.newer).toBeNull();
  });

  it('asks for the clients it is compared with, by id and by name', () => {
    const { id, name, archived, lastUsed } = DEMO_CLIENT;
    const entry = { archived, lastUsed, draftNames: [], record: '' };
    const unopened = [
      { ...entry, id, name: 'Another' },
      { ...entry, id: 'x', name },
      { ...entry, id: 'y', name: 'Nobody' },
    ];
    expect(comparedWith({ ...own, unopened }, DEMO_BOOK)).toEqual(['wren', 'demo', 'x']);
  });
});
