import { existsSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BOOK_VERSION, type Book, DEMO_BOOK, DEMO_CLIENT, readBook } from '../../../src/document';
import { migrate } from '../../../src/document/model/migrations/migrate';
import { MIGRATIONS } from '../../../src/document/model/migrations/migrations';
import { draftWhole, seamEnd } from '../../../src/engine';

const fixture = (version: number): URL => new URL(`./fixtures/book-v${version}.json`, import.meta.url);

/** What the tests change of a client of version 7. */
interface Client7 {
  measurements: Record<string, unknown>;
  drafts: [{ style: Record<string, unknown>; redrafted?: unknown }];
}

const changed = (change: object): string => JSON.stringify({ ...DEMO_BOOK, ...change });

describe('readBook', () => {
  it('gives back the book that was written', () => {
    expect(readBook(JSON.stringify(DEMO_BOOK))).toEqual({ kind: 'book', book: DEMO_BOOK });
  });

  it.each([
    ['nothing', ''],
    ['half a book', JSON.stringify(DEMO_BOOK).slice(0, -20)],
    ['words', 'the quick brown fox'],
  ])('finds %s unreadable as JSON', (_, text) => {
    expect(readBook(text)).toEqual({ kind: 'unreadable', fault: { code: 'notWhole' } });
  });

  it.each([
    ['null', 'null'],
    ['a list', '[]'],
    ['a number', '7'],
    ['an object of another kind', '{"colour":"red"}'],
    ['a version that is a word', changed({ version: 'one' })],
    ['a version between two', changed({ version: 0.5 })],
    ['a version below the first', changed({ version: 0 })],
    ['a version without end', changed({}).replace(`"version":${BOOK_VERSION}`, '"version":1e999')],
  ])('finds no version in %s', (_, text) => {
    expect(readBook(text)).toEqual({ kind: 'unreadable', fault: { code: 'noVersion' } });
  });

  it('knows a newer book and leaves it alone, whatever is in it', () => {
    expect(readBook(`{"version":${BOOK_VERSION + 1}}`)).toEqual({ kind: 'newer', version: BOOK_VERSION + 1 });
  });

  it.each([
    ['no list of styles', changed({ styles: null }), 'styles'],
    [
      'a style that is none',
      changed({ styles: [{ id: 's', name: 'S', on: '', style: {} }] }),
      'styles.0.style',
    ],
    ['no clients', changed({ clients: [] }), 'clients'],
    ['clients that are no list', changed({ clients: {} }), 'clients'],
    ['a client without drafts', changed({ clients: [{ ...DEMO_CLIENT, drafts: [] }] }), 'clients.0.drafts'],
    ['a unit of its own', changed({ clients: [{ ...DEMO_CLIENT, unit: 'ell' }] }), 'clients.0.unit'],
    [
      'a length in words',
      changed({ clients: [{ ...DEMO_CLIENT, measurements: { ...DEMO_CLIENT.measurements, bust: 'wide' } }] }),
      'clients.0.measurements.bust',
    ],
    [
      'a length without end',
      JSON.stringify(DEMO_BOOK).replace('"hemBelow":101.6', '"hemBelow":1e999'),
      'hemBelow',
    ],
  ])('names the place in a book with %s', (_, text, path) => {
    expect(readBook(text)).toEqual({
      kind: 'unreadable',
      fault: { code: 'wrongShape', path: expect.stringContaining(path) },
    });
  });

  it('keeps every client and draft where ids occur twice, and sets the ids apart', () => {
    const twin = { ...DEMO_CLIENT, name: 'Twin' };
    const third = { ...DEMO_CLIENT, id: `${DEMO_CLIENT.id}~2`, name: 'Third' };
    const drafts = [DEMO_CLIENT.drafts[0], DEMO_CLIENT.drafts[0]];
    const read = bookOf(changed({ clients: [DEMO_CLIENT, twin, third, { ...twin, drafts }] }));
    expect(read.clients.map(({ name }) => name)).toEqual([DEMO_CLIENT.name, 'Twin', 'Third', 'Twin']);
    expect(new Set(read.clients.map(({ id }) => id)).size).toBe(4);
    expect(read.clients[0]).toEqual(DEMO_CLIENT);
    expect(read.clients[2]?.id).toBe(third.id);
    expect(new Set(read.clients[3]?.drafts.map(({ id }) => id)).size).toBe(2);
  });

  it('sets wedges with one id apart, which the engine would take for one', () => {
    const style = DEMO_CLIENT.drafts[0]?.style;
    const [first] = style?.wedges ?? [];
    const drafts = [{ ...DEMO_CLIENT.drafts[0], style: { ...style, wedges: [first, first] } }];
    const read = bookOf(changed({ clients: [{ ...DEMO_CLIENT, drafts }] }));
    const ids = read.clients[0]?.drafts[0]?.style.wedges.map(({ id }) => id);
    expect(ids).toEqual([first?.id, `${first?.id}~2`]);
  });

  it('sets a wedge of the right apart from one of the left', () => {
    const style = DEMO_CLIENT.drafts[0]?.style;
    const [first] = style?.wedges ?? [];
    const twice = { ...style, wedges: [first], rightWedges: [first] };
    const read = bookOf(
      changed({ clients: [{ ...DEMO_CLIENT, drafts: [{ ...DEMO_CLIENT.drafts[0], style: twice }] }] }),
    );
    const kept = read.clients[0]?.drafts[0]?.style;
    expect([kept?.wedges, kept?.rightWedges].map((list) => list?.map(({ id }) => id))).toEqual([
      [first?.id],
      [`${first?.id}~2`],
    ]);
  });

  it('sets the ids of styles and of their wedges apart as well', () => {
    const { style } = DEMO_CLIENT.drafts[0] ?? {};
    const [first] = style?.wedges ?? [];
    const own = { id: 's', name: 'Ferry', on: '2026-11-25', style: { ...style, wedges: [first, first] } };
    const { styles } = bookOf(changed({ styles: [own, { ...own, name: 'Gala' }] }));
    expect(styles.map(({ id, name }) => [id, name])).toEqual([
      ['s', 'Ferry'],
      ['s~2', 'Gala'],
    ]);
    expect(styles[1]?.style.wedges.map(({ id }) => id)).toEqual([first?.id, `${first?.id}~2`]);
  });

  it('gives each wedge of a book of version 4 the kind of its points, and none on the centre line', () => {
    const upper = { from: 'bust', below: 30 };
    const lower = { from: 'waist', below: 60 };
    const book = JSON.parse(readFileSync(fixture(4), 'utf8'));
    const { style } = book.clients[0].sheets[0];
    const [wedge] = style.wedges;
    const at = (id: string, station: number, points: object) => ({ ...wedge, id, station, ...points });
    style.wedges = [
      at('a', 0.1, {}),
      at('b', 0.2, { upper }),
      at('c', 0.3, { lower }),
      at('d', 0.4, { upper, lower }),
      at('e', -1, { upper, lower }),
    ];
    style.rightWedges = [at('f', 0.5, { upper })];
    const read = bookOf(JSON.stringify(book)).clients[0]?.drafts[0]?.style;
    const told = [...(read?.wedges ?? []), ...(read?.rightWedges ?? [])].map((each) => [
      each.kind,
      each.upper,
      each.lower,
    ]);
    expect(told).toEqual([
      ['through', undefined, undefined],
      ['openAtHem', upper, undefined],
      ['openAtTop', undefined, lower],
      ['closed', upper, lower],
      ['through', undefined, undefined],
      ['openAtHem', upper, undefined],
    ]);
  });

  it('never throws, whatever text it is given', () => {
    const text = fc.oneof(
      fc.string(),
      fc.json(),
      fc.jsonValue().map((clients) => changed({ clients })),
      fc.jsonValue().map((measurements) => changed({ clients: [{ ...DEMO_CLIENT, measurements }] })),
    );
    fc.assert(
      fc.property(text, (each) => {
        expect(['book', 'unreadable', 'newer']).toContain(readBook(each).kind);
      }),
    );
  });
});

function bookOf(text: string): Book {
  const read = readBook(text);
  if (read.kind !== 'book') throw new Error(read.kind);
  return read.book;
}

describe('a measurement that a book does not know yet', () => {
  it('reads as not taken, in the set in use, in earlier ones and in a draft kept to compare with', () => {
    const data = JSON.parse(readFileSync(fixture(BOOK_VERSION), 'utf8'));
    const without = JSON.parse(JSON.stringify(data), (key, value) =>
      key === 'underarmToWaist' ? undefined : value,
    );
    expect(JSON.stringify(without)).not.toContain('underarmToWaist":');
    const sets = bookOf(JSON.stringify(without)).clients.flatMap(({ measurements, earlier, drafts }) => [
      measurements,
      ...earlier.map((set) => set.measurements),
      ...drafts.flatMap(({ comparison }) => (comparison ? [comparison.measurements] : [])),
    ]);
    expect(sets.length).toBeGreaterThan(3);
    for (const set of sets) expect(set.underarmToWaist).toBeNull();
  });
});

describe('migrations', () => {
  it('lead from every version there was to this one, each with a book of its version to prove it', () => {
    for (let version = 1; version < BOOK_VERSION; version += 1) {
      expect(MIGRATIONS[version], `a migration from version ${version}`).toBeTypeOf('function');
      expect(existsSync(fixture(version)), `tests/document/model/fixtures/book-v${version}.json`).toBe(true);
    }
    expect(
      Object.keys(MIGRATIONS)
        .map(Number)
        .every((from) => from < BOOK_VERSION),
    ).toBe(true);
  });

  it('read the kept book of each version up to this one', () => {
    for (let version = 1; version <= BOOK_VERSION; version += 1) {
      const text = readFileSync(fixture(version), 'utf8');
      expect(JSON.parse(text)).toHaveProperty('version', version);
      const book = bookOf(text);
      expect(book.version).toBe(BOOK_VERSION);
      expect(book.clients.map(({ name }) => name)).toEqual(['Orla Fenwick', 'Bram Tolliver']);
      expect(book.clients[0]?.measurements.bust).toBeCloseTo(939.8, 9);
      expect(book.clients[0]?.sides?.leftShare.waist).toBe(version < 4 ? undefined : 0.52);
      const { extras, rightWedges } = book.clients[0]?.drafts[0]?.style ?? {};
      expect(extras?.facing?.width).toBe(version < 4 ? undefined : 45);
      expect(rightWedges?.map(({ id }) => id)).toEqual(
        version < 4 ? undefined : book.clients[0]?.drafts[0]?.style.wedges.map(({ id }) => `right-${id}`),
      );
      expect(book.clients[0]?.measurements.frontBustArc).toBe(version < 4 ? null : 495.3);
      expect(book.clients[0]?.drafts[0]?.style.wedges.map(({ id }) => id)).toContain('front-added-1');
      const [draft] = book.clients[0]?.drafts ?? [];
      expect(draft?.fittings.map(({ alterations }) => alterations.length)).toEqual(version < 7 ? [] : [2, 3]);
      expect(draft?.notes.cloth).toBe(version < 7 ? '' : 'coutil, two layers');
      expect(book.clients[0]?.prints.map(({ mockup }) => mockup)).toEqual(version < 7 ? [] : [1]);
    }
  });

  it('make of a height of version 8 that lay at the end of its seam that end, and of no other', () => {
    const data = JSON.parse(readFileSync(fixture(8), 'utf8'));
    const [client] = data.clients;
    const [draft] = client.drafts;
    const { seam } = draft.fittings[0].alterations[0];
    const unaltered = draftWhole(client.measurements, draft.style, client.sides);
    const below = (end: 'top' | 'hem') =>
      Math.round(10 * ((seamEnd(unaltered, seam, end) ?? 0) - (unaltered.span?.waist ?? 0))) / 10;
    const at = (mm: number) => ({ height: { kind: 'belowWaist', mm }, a: 1, b: 1 });
    const amounts = [at(below('top')), at(40), at(below('hem')), at(below('hem') - 5)];
    draft.fittings[0].alterations[0].at = amounts;
    client.prints[0].fittings = draft.fittings;
    client.prints[0].style = draft.style;
    const [read] = bookOf(JSON.stringify(data)).clients;
    const ends = [
      { ...amounts[0], height: { kind: 'end', end: 'top' } },
      amounts[1],
      { ...amounts[2], height: { kind: 'end', end: 'hem' } },
      amounts[3],
    ];
    expect(read?.drafts[0]?.fittings[0]?.alterations[0]).toMatchObject({ at: ends });
    expect(read?.prints[0]?.fittings[0]?.alterations[0]).toMatchObject({ at: ends });
  });

  it('let a style of version 5 follow the body where its numbers were usual, and keep its own', () => {
    const read = (change: (style: Record<string, unknown>) => void) => {
      const data = JSON.parse(readFileSync(fixture(5), 'utf8'));
      const [draft] = data.clients[0].drafts;
      draft.comparison = null;
      change(draft.style);
      return { was: draft.style, is: bookOf(JSON.stringify(data)).clients[0]?.drafts[0] };
    };
    const usual = { overBust: 0.515, bust: 0.53, underBust: 0.515, waist: 0.51, highHip: 0.5, hip: 0.49 };
    const set = (frontShare: Record<string, number>, overBustAbove: number) =>
      read((style) => Object.assign(style, { frontShare, overBustAbove }));

    const { was, is } = set({ ...usual, waist: 0.52 }, 50.8);
    expect(is?.style.frontShare).toEqual({ waist: 0.52 });
    expect(is?.style.overBustAbove).toBeUndefined();
    expect(is?.redrafted).toBe(true);
    // Beside it stands what was asked for before, with every share and the line.
    expect(is?.comparison?.style).toEqual(was);
    expect(is?.comparison?.on).toMatch(/^\d{4}-\d\d-\d\d$/);

    expect(set(usual, 44).is?.style).toMatchObject({ frontShare: {}, overBustAbove: 44 });
    const halves = Object.fromEntries(Object.keys(usual).map((level) => [level, 0.5]));
    expect(set(halves, 50.8).is?.style).toMatchObject({ frontShare: halves, overBustAbove: 50.8 });
  });

  it('mark a draft of version 6 by the rule that draws it otherwise, of the bust dart or above the bust, and no other', () => {
    const read = (change: (draft: { style: Record<string, unknown>; redrafted?: true }) => void) => {
      const data = JSON.parse(readFileSync(fixture(6), 'utf8'));
      const [draft] = data.clients[0].drafts;
      delete draft.redrafted;
      change(draft);
      return bookOf(JSON.stringify(data)).clients[0]?.drafts[0];
    };
    const shoulders = { intake: { back: 6 } };
    expect(read(() => {})?.redrafted).toEqual(['aboveBust']);
    expect(read(({ style }) => Object.assign(style, { topFrom: 'waist' }))?.redrafted).toBeUndefined();
    expect(read(({ style }) => Object.assign(style, { shoulders }))?.redrafted).toEqual([
      'bustDart',
      'neckAndSide',
    ]);
    expect(read((draft) => Object.assign(draft, { redrafted: true }))?.redrafted).toBe(true);
    const both = (draft: { style: object }): unknown =>
      Object.assign(draft, { redrafted: true, style: { ...draft.style, shoulders } });
    expect(read(both)?.redrafted).toBe(true);
    const withShoulders = (other: object) =>
      read(({ style }) => Object.assign(style, { shoulders: other }))?.redrafted;
    expect(withShoulders({ intake: { front: 20 } })).toEqual(['neckAndSide']);
    expect(withShoulders({ bandAbove: 30 })).toEqual(['aboveBust', 'neckAndSide', 'bandArmhole']);
    const dartsOnly = (wedge: { kind: string; block: string; station: number }): object =>
      wedge.block === 'front' && wedge.station > -1
        ? { ...wedge, kind: 'openAtHem', upper: { from: 'bust', below: 25 } }
        : wedge;
    const darted = read((draft) => {
      const wedges = (draft.style.wedges as Parameters<typeof dartsOnly>[0][]).map(dartsOnly);
      Object.assign(draft.style, { shoulders, wedges });
    });
    expect(darted?.redrafted).toEqual(['neckAndSide', 'slimDarts']);
  });

  it('mark a draft of version 7 that has shoulders, and one of a bust smaller than the girths round it', () => {
    const read = (change: (client: Client7) => void) => {
      const data = JSON.parse(readFileSync(fixture(7), 'utf8'));
      const [client] = data.clients as [Client7];
      delete client.drafts[0].redrafted;
      delete client.drafts[0].style.shoulders;
      client.drafts[0].style.frontShare = {};
      client.measurements = {
        ...client.measurements,
        ...{
          overBust: 870,
          bust: 880,
          underBust: 760,
          neckToBust: 270,
          neckToUnderBust: 345,
          neckToWaist: 390,
        },
        ...{ underarmToWaist: null, frontBustArc: null },
      };
      change(client);
      return bookOf(JSON.stringify(data)).clients[0]?.drafts[0]?.redrafted;
    };
    const measured = (of: object) => (client: Client7) => Object.assign(client.measurements, of);
    expect(read(() => {})).toBeUndefined();
    // The line from 870 to 760 stands at 825.6 at the bust line, 50.8 mm down of 125.8; with the armpit 25 mm above it at 842.5.
    expect(read(measured({ bust: 826 }))).toBeUndefined();
    expect(read(measured({ bust: 825 }))).toEqual(['smallBust']);
    expect(read(measured({ bust: 842, underarmToWaist: 145 }))).toEqual(['smallBust']);
    expect(read(measured({ bust: 843, underarmToWaist: 145 }))).toBeUndefined();
    expect(read(measured({ bust: 825, frontBustArc: 440 }))).toBeUndefined();
    const first = (change: (draft: Client7['drafts'][0]) => void) => (client: Client7) => {
      client.measurements.bust = 825;
      change(client.drafts[0]);
    };
    expect(read(first(({ style }) => Object.assign(style, { frontShare: { bust: 0.5 } })))).toBeUndefined();
    expect(read(first(({ style }) => Object.assign(style, { shoulders: {} })))).toEqual([
      'neckAndSide',
      'smallBust',
    ]);
    const marked = (redrafted: unknown) => read(first((draft) => Object.assign(draft, { redrafted })));
    expect(marked('bustDart')).toEqual(['bustDart', 'smallBust']);
    expect(marked(true)).toBe(true);
  });

  it('mark a draft of version 9 that has a dart within a panel', () => {
    const read = (of: object, more: object = {}) => {
      const data = JSON.parse(readFileSync(fixture(9), 'utf8'));
      const [draft] = data.clients[0].drafts;
      delete draft.redrafted;
      Object.assign(draft, more);
      draft.style.wedges = draft.style.wedges.map((wedge: { id: string }) =>
        wedge.id === 'front-side' ? { ...wedge, ...of } : wedge,
      );
      return bookOf(JSON.stringify(data)).clients[0]?.drafts[0]?.redrafted;
    };
    const dart = { kind: 'openAtHem', upper: { from: 'bust', below: 25 } };
    expect(read({})).toBeUndefined();
    expect(read(dart)).toEqual(['slimDarts']);
    expect(read(dart, { redrafted: ['smallBust'] })).toEqual(['smallBust', 'slimDarts']);
    expect(read({}, { redrafted: ['smallBust'] })).toEqual(['smallBust']);
    expect(read(dart, { redrafted: true })).toBe(true);
    const above = { kind: 'openAtTop', lower: { from: 'bust', below: -25 } };
    expect(read({ ...above, endsAt: { edge: 'armhole', part: 0.4 } })).toBeUndefined();
  });

  it('mark a draft of version 10 that has an off-shoulder band', () => {
    const read = (shoulders: object | undefined, more: object = {}) => {
      const data = JSON.parse(readFileSync(fixture(10), 'utf8'));
      const [draft] = data.clients[0].drafts;
      delete draft.redrafted;
      Object.assign(draft, more);
      draft.style = { ...draft.style, ...(shoulders ? { shoulders } : {}) };
      return bookOf(JSON.stringify(data)).clients[0]?.drafts[0]?.redrafted;
    };
    const band = { bandAbove: 25 };
    expect(read(undefined)).toBeUndefined();
    expect(read({})).toBeUndefined();
    expect(read(band)).toEqual(['bandArmhole']);
    expect(read(band, { redrafted: ['slimDarts'] })).toEqual(['slimDarts', 'bandArmhole']);
    expect(read({}, { redrafted: ['slimDarts'] })).toEqual(['slimDarts']);
    expect(read(band, { redrafted: true })).toBe(true);
  });

  it('mark a draft of version 11 whose top edge is measured from an under-bust at the waist, below it or at the bust', () => {
    const read = (
      of: object,
      style: object = { topFrom: 'underBust' },
      more: object = {},
      sides?: object,
    ) => {
      const data = JSON.parse(readFileSync(fixture(11), 'utf8'));
      const [client] = data.clients;
      const [draft] = client.drafts;
      delete draft.redrafted;
      Object.assign(draft, more);
      Object.assign(draft.style, style);
      delete client.sides;
      if (sides) client.sides = sides;
      Object.assign(client.measurements, { neckToBust: 270, neckToUnderBust: 340, neckToWaist: 390 }, of);
      return bookOf(JSON.stringify(data)).clients[0]?.drafts[0]?.redrafted;
    };
    expect(read({})).toBeUndefined();
    expect(read({ neckToUnderBust: 375 })).toBeUndefined();
    expect(read({ neckToUnderBust: 376 })).toEqual(['topLine']);
    expect(read({ neckToUnderBust: 400 })).toEqual(['topLine']);
    expect(read({ neckToUnderBust: 285 })).toBeUndefined();
    expect(read({ neckToUnderBust: 284 })).toEqual(['topLine']);
    expect(read({ neckToUnderBust: null })).toBeUndefined();
    expect(read({ neckToUnderBust: 400 }, { topFrom: 'waist' })).toBeUndefined();
    const lower = (underBust: number) =>
      read({}, undefined, {}, { leftShare: {}, rightLower: { underBust } });
    expect(lower(35)).toBeUndefined();
    expect(lower(36)).toEqual(['topLine']);
    const marked = (redrafted: unknown) => read({ neckToUnderBust: 400 }, undefined, { redrafted });
    expect(marked(['slimDarts'])).toEqual(['slimDarts', 'topLine']);
    expect(marked(true)).toBe(true);
  });

  it('leave alone what was kept to compare with', () => {
    const data = JSON.parse(readFileSync(fixture(5), 'utf8'));
    const kept = data.clients.flatMap(({ drafts }: { drafts: { comparison: unknown }[] }) =>
      drafts.flatMap(({ comparison }) => (comparison ? [comparison] : [])),
    );
    const now = bookOf(JSON.stringify(data)).clients.flatMap(({ drafts }) =>
      drafts.map(({ comparison }) => comparison),
    );
    expect(kept.length).toBeGreaterThan(0);
    for (const { on, style } of kept) expect(now).toContainEqual(expect.objectContaining({ on, style }));
  });

  it('take one step after another', () => {
    const steps = { 1: (old: unknown) => [old, 'two'], 2: (old: unknown) => [old, 'three'] };
    expect(migrate('one', 1, 3, steps)).toEqual([['one', 'two'], 'three']);
    expect(migrate('one', 2, 3, steps)).toEqual(['one', 'three']);
    expect(migrate('one', 3, 3, steps)).toBe('one');
  });

  it('give nothing where a step is missing or cannot read what it is given', () => {
    const failing = {
      1: (): unknown => {
        throw new TypeError('not of version 1');
      },
    };
    expect(migrate('one', 1, 2, {})).toBeNull();
    expect(migrate('one', 1, 2, failing)).toBeNull();
  });
});
