import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { quarantinedIn } from '../../../src/app/storage/asides';
import { noticeSentence } from '../../../src/app/storage/keepingSentences';
import { clientRecord } from '../../../src/app/storage/records/record';
import { exclusiveOf } from '../../../src/app/storage/windows/exclusive';
import { type ClashChoice, settleClash } from '../../../src/app/storage/windows/settleClash';
import { attach } from '../../../src/app/storage/windows/tabs';
import { addClient, entriesOf, keepStyle, openClient, openDraftOf } from '../../../src/document';
import { clientsIn, namesIn, newId, openTab, present, type Tab } from './keeper';
import { SharedStorage } from './sharedStorage';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const deliver = async (tab: Tab, storage: SharedStorage): Promise<void> => {
  const next = storage.inbox.shift();
  if (next) await tab.hear(next.key, next.value);
};
const deliverAll = async (tabs: readonly Tab[], storages: readonly SharedStorage[]): Promise<void> => {
  while (storages.some(({ inbox }) => inbox.length > 0))
    for (const [i, storage] of storages.entries()) await deliver(tabs[i] as Tab, storage);
};
const add = (tab: Tab, name: string): string => {
  const id = newId();
  tab.store.getState().change({ code: 'clientAdded' }, (book) => addClient(book, id, name));
  tab.books.flush();
  return id;
};
const name = (tab: Tab): string => openClient(present(tab)).name;

/** Two tabs on one client, both opened before either changes anything. */
async function twoTabs() {
  const storages = SharedStorage.tabs(2);
  const [mine, other] = storages as [SharedStorage, SharedStorage];
  const first = await openTab(mine);
  first.rename('Ada');
  const bea = add(first, 'Bea');
  const tabs: [Tab, Tab] = [first, await openTab(other)];
  other.inbox.length = 0;
  return { storages, tabs, bea, storage: mine };
}

describe('two tabs', () => {
  it('keep what had no room as soon as one of them has made some', async () => {
    const { storages, tabs, storage } = await twoTabs();
    const [first] = tabs;
    storage.kept.set('of another page', 'x'.repeat(60_000));
    storage.room = [...storage.kept].reduce((sum, [key, text]) => sum + key.length + text.length, 0);
    const long = 'Ada '.repeat(8_000).trim();
    first.rename(long);
    first.books.flush();
    expect(first.books.status()).toEqual({ kind: 'failed', reason: 'full' });
    expect(clientsIn(storage).has(long)).toBe(false);
    storages[1]?.removeItem('of another page');
    await deliverAll(tabs, storages);
    expect(first.books.status()).toEqual({ kind: 'saved' });
    expect(clientsIn(storage).has(long)).toBe(true);
  });

  it('say no longer that little room is left once one of them has made some', async () => {
    const { storages, tabs } = await twoTabs();
    const [first, second] = tabs;
    const isSaid = (): boolean => first.books.keeping().notices.some(({ kind }) => kind === 'nearlyFull');
    second.books.storage?.setItem('of another page', 'x'.repeat(5_000_000));
    await deliverAll(tabs, storages);
    expect(isSaid()).toBe(true);
    second.books.storage?.removeItem('of another page');
    await deliverAll(tabs, storages);
    expect(isSaid()).toBe(false);
  });

  it('reckon with the usual room again once one of them has made some, also of what the other knew nothing', async () => {
    const { storages, tabs, storage } = await twoTabs();
    const [first] = tabs;
    storage.kept.set('of another page', 'x'.repeat(60_000));
    storage.room = [...storage.kept].reduce((sum, [key, text]) => sum + key.length + text.length, 0);
    first.rename('Adah '.repeat(2000));
    first.books.flush();
    expect(first.books.status()).toEqual({ kind: 'failed', reason: 'full' });
    expect(first.books.taken()).toBeGreaterThan(0.05);
    storages[1]?.removeItem('of another page');
    await deliverAll(tabs, storages);
    first.rename('Ada');
    first.books.flush();
    expect(first.books.taken()).toBeLessThan(0.01);
    expect(first.books.status()).toEqual({ kind: 'saved' });
    expect(first.books.keeping().notices).toEqual([]);
  });

  it('follow each other where only one has changed a client', async () => {
    const { storages, tabs, storage } = await twoTabs();
    const [first, second] = tabs;
    first.rename('Beatrix');
    first.books.flush();
    await deliverAll(tabs, storages);
    expect(name(second)).toBe('Beatrix');
    expect(second.books.keeping().notices.map(noticeSentence).join()).toMatch(/changed in another tab/);
    second.rename('Beatrice');
    second.books.flush();
    await deliverAll(tabs, storages);
    first.books.flush();
    expect(name(first)).toBe('Beatrice');
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Beatrice']);
    expect([first, second].map(({ books }) => books.status().kind)).toEqual(['saved', 'saved']);
  });

  it('work on two clients without a clash, and see what the other adds', async () => {
    const { storages, tabs, storage } = await twoTabs();
    const [first, second] = tabs;
    add(first, 'Cleo');
    second.rename('Beatrix');
    second.books.flush();
    await deliverAll(tabs, storages);
    for (const tab of tabs)
      expect(
        entriesOf(present(tab))
          .map((each) => each.name)
          .sort(),
      ).toEqual(['Ada', 'Beatrix', 'Cleo']);
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Beatrix', 'Cleo']);
  });

  it('do not take back by undo what the other has added', async () => {
    const { storages, tabs, storage } = await twoTabs();
    const [first, second] = tabs;
    second.rename('Beatrix');
    second.books.flush();
    await deliverAll(tabs, storages);
    add(first, 'Cleo');
    await deliverAll(tabs, storages);
    second.store.getState().undo();
    second.books.flush();
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Bea', 'Cleo']);
  });

  it('follow a deletion, and keep the one who is open', async () => {
    const { storages, tabs, storage } = await twoTabs();
    const [first, second] = tabs;
    const [ada] = present(first).clients;
    first.store.getState().change({ code: 'clientRemoved', name: 'Ada' }, (book) => ({
      ...book,
      clients: book.clients.filter(({ id }) => id !== ada?.id),
    }));
    first.books.flush();
    await deliverAll(tabs, storages);
    expect(entriesOf(present(second)).map((each) => each.name)).toEqual(['Bea']);
    storage.removeItem(`staywright.client.${openClient(present(second)).id}`);
    await deliverAll(tabs, storages);
    expect(name(second)).toBe('Bea');
    expect(second.books.keeping().notices.map(noticeSentence).join()).toMatch(/deleted in another tab/);
    second.rename('Beatrix');
    second.books.flush();
    expect([...clientsIn(storage).keys()]).toEqual(['Beatrix']);
  });

  it('of a first start leave one invented client, where only one of them was worked in', async () => {
    const storages = SharedStorage.tabs(2);
    const [mine, other] = storages as [SharedStorage, SharedStorage];
    const tabs = [await openTab(mine), await openTab(other)] as const;
    const [first, second] = tabs;
    first.rename('Ada');
    first.books.flush();
    await deliverAll(tabs, storages);
    expect(name(second)).toBe('Ada');
    expect(second.books.keeping().notices.map(noticeSentence).join()).toMatch(/Ada was changed/);
    second.books.flush();
    expect([...clientsIn(mine).keys()]).toEqual(['Ada']);
    second.rename('Beatrix');
    second.books.flush();
    await deliverAll(tabs, storages);
    expect(name(first)).toBe('Beatrix');
    expect([...clientsIn(mine).keys()]).toEqual(['Beatrix']);
  });

  it('of a first start are told nothing of the invented client, where only a style was kept', async () => {
    const storages = SharedStorage.tabs(2);
    const [mine, other] = storages as [SharedStorage, SharedStorage];
    const tabs = [await openTab(mine), await openTab(other)] as const;
    const [first, second] = tabs;
    const { style } = openDraftOf(openClient(present(first)));
    first.store
      .getState()
      .change({ code: 'styleKept', title: 'Ferry' }, (book) =>
        keepStyle(book, 's', 'Ferry', style, '2026-11-25'),
      );
    first.books.flush();
    await deliverAll(tabs, storages);
    expect(present(second).styles).toEqual(present(first).styles);
    expect(openClient(present(second)).id).toBe(openClient(present(first)).id);
    expect(second.books.keeping().notices).toEqual([]);
  });

  it('of a first start keep both clients, where both tabs were worked in', async () => {
    const storages = SharedStorage.tabs(2);
    const [mine, other] = storages as [SharedStorage, SharedStorage];
    const tabs = [await openTab(mine), await openTab(other)] as const;
    const [first, second] = tabs;
    second.rename('Bea');
    first.rename('Ada');
    first.books.flush();
    await deliverAll(tabs, storages);
    second.books.flush();
    await deliverAll(tabs, storages);
    expect(tabs.map(name)).toEqual(['Ada', 'Bea']);
    expect([...clientsIn(mine).keys()].sort()).toEqual(['Ada', 'Bea']);
  });

  it('follow a style', async () => {
    const { storages, tabs } = await twoTabs();
    const [first, second] = tabs;
    const { style } = openDraftOf(openClient(present(first)));
    first.store
      .getState()
      .change({ code: 'styleKept', title: 'Ferry' }, (book) =>
        keepStyle(book, 's', 'Ferry', style, '2026-11-25'),
      );
    first.books.flush();
    await deliverAll(tabs, storages);
    expect(present(second).styles).toEqual(present(first).styles);
    first.store.getState().undo();
    first.books.flush();
    await deliverAll(tabs, storages);
    expect(present(second).styles).toEqual([]);
  });

  it('say at once when everything was cleared', async () => {
    const { tabs, storage } = await twoTabs();
    storage.kept.clear();
    await tabs[1].hear(null, null);
    expect(tabs[1].books.status()).toEqual({ kind: 'cleared' });
  });
});

describe('a clash over one client', () => {
  const clash = async () => {
    const made = await twoTabs();
    const [first, second] = made.tabs;
    first.rename('Theirs');
    first.books.flush();
    second.rename('Ours');
    second.books.flush();
    return { ...made, theirs: first, ours: second };
  };
  const settle = (tab: Tab, choice: ClashChoice): Promise<boolean> => {
    const status = tab.books.status();
    const key = status.kind === 'conflict' ? (status.clashes[0]?.key ?? '') : '';
    return settleClash(tab.books, tab.host, key, choice);
  };

  it('is told with her name, and both are kept until the user chooses', async () => {
    const { ours, storage } = await clash();
    expect(ours.books.status()).toMatchObject({
      kind: 'conflict',
      clashes: [{ name: 'Ours' }],
      beside: true,
    });
    ours.rename('Ours 2');
    vi.advanceTimersByTime(400);
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Theirs']);
    expect([...namesIn(storage)]).toContain('Ours 2');
    expect(quarantinedIn(ours.books)).toHaveLength(1);
  });

  it('does not keep other clients from being kept', async () => {
    const { ours, storage } = await clash();
    add(ours, 'Cleo');
    expect([...clientsIn(storage).keys()].sort()).toEqual(['Ada', 'Cleo', 'Theirs']);
  });

  it.each<[ClashChoice, readonly string[], readonly string[]]>([
    ['ours', ['Ada', 'Ours'], ['Theirs']],
    ['theirs', ['Ada', 'Theirs'], ['Ours']],
    ['both', ['Ada', 'Ours', 'Theirs'], []],
  ])('can go on with %s', async (choice, kept, aside) => {
    const { ours, storage } = await clash();
    expect(await settle(ours, choice)).toBe(true);
    ours.books.flush();
    expect(ours.books.status()).toEqual({ kind: 'saved' });
    expect([...clientsIn(storage).keys()].sort()).toEqual(kept);
    expect(quarantinedIn(ours.books)).toHaveLength(aside.length);
    for (const each of aside) expect([...namesIn(storage)]).toContain(each);
    expect(
      entriesOf(present(ours))
        .map((each) => each.name)
        .sort(),
    ).toEqual(kept);
  });

  it('loses nothing where there is no room for both', async () => {
    const { ours, storages } = await clash();
    const [, own] = storages as [SharedStorage, SharedStorage];
    own.refusesToWrite = true;
    ours.rename('Ours 2');
    ours.books.flush();
    expect(ours.books.status()).toMatchObject({ kind: 'conflict', beside: false });
    expect(ours.books.isWaiting()).toBe(true);
    for (const choice of ['ours', 'theirs', 'both'] as const) expect(await settle(ours, choice)).toBe(false);
    own.refusesToWrite = false;
    expect(await settle(ours, 'both')).toBe(true);
    ours.books.flush();
    expect([...clientsIn(own).keys()].sort()).toEqual(['Ada', 'Ours 2', 'Theirs']);
  });

  it('arises too while a change is under way', async () => {
    const { tabs, storages } = await twoTabs();
    const [first, second] = tabs;
    second.store.getState().show((book) => book);
    first.rename('Theirs');
    first.books.flush();
    await deliverAll(tabs, storages);
    second.rename('Ours');
    second.books.flush();
    expect(second.books.status()).toMatchObject({ kind: 'conflict' });
  });

  it('that was missed is made good: what was written over unknowingly is put aside', async () => {
    const { tabs } = await twoTabs();
    const [, second] = tabs;
    second.rename('Ours');
    second.books.flush();
    const key = `staywright.client.${openClient(present(second)).id}`;
    const theirs = clientRecord({ ...openClient(present(second)), name: 'Theirs' }, null);
    await second.hear(key, theirs);
    expect(quarantinedIn(second.books).map(({ text }) => text)).toEqual([theirs]);
    expect(second.books.keeping().notices.map(({ kind }) => kind)).toContain('setAside');
  });
});

type Action = {
  readonly tab: number;
  readonly what: 'rename' | 'open' | 'add' | 'flush' | 'hear' | 'undo' | 'wait';
};

describe('three tabs', () => {
  /** Three tabs over three clients. */
  async function threeTabs() {
    const storages = SharedStorage.tabs(3);
    const [storage] = storages as [SharedStorage];
    const first = await openTab(storage);
    first.rename('Ada');
    const ids = [openClient(present(first)).id, add(first, 'Bea'), add(first, 'Cleo')];
    const tabs = [first];
    for (const each of storages.slice(1)) tabs.push(await openTab(each));
    for (const { inbox } of storages) inbox.length = 0;
    return { storages, storage, tabs, ids };
  }

  /** Each hears of all that the others have kept, and keeps what is its own. */
  const settle = async (tabs: readonly Tab[], storages: readonly SharedStorage[]): Promise<void> => {
    for (const tab of tabs) tab.books.flush();
    await deliverAll(tabs, storages);
    for (const tab of tabs) tab.books.flush();
  };

  const expectAllKept = (tabs: readonly Tab[], storage: SharedStorage, names: readonly string[]): void => {
    expect([...clientsIn(storage).keys()].sort()).toEqual([...names].sort());
    for (const tab of tabs) {
      expect(tab.books.status().kind).toBe('saved');
      expect(quarantinedIn(tab.books)).toHaveLength(0);
      expect(
        entriesOf(present(tab))
          .map((each) => each.name)
          .sort(),
      ).toEqual([...names].sort());
    }
  };

  it('keep 200 edits each, made in turn, of a client each, whether they hear of each other at once or late', async () => {
    const { storages, storage, tabs, ids } = await threeTabs();
    for (const [i, tab] of tabs.entries()) tab.open(ids[i] as string);
    for (let edit = 1; edit <= 200; edit += 1) {
      for (const [i, tab] of tabs.entries()) {
        tab.rename(`${i}: ${edit}`);
        tab.books.flush();
        expect(clientsIn(storage).has(`${i}: ${edit}`)).toBe(true);
      }
      if (edit % 7 === 0 || edit > 190) await settle(tabs, storages);
    }
    expectAllKept(tabs, storage, ['0: 200', '1: 200', '2: 200']);
  }, 240_000);

  it('keep 200 edits each, made in turn, of the same client, who is followed in all three', async () => {
    const { storages, storage, tabs, ids } = await threeTabs();
    for (const tab of tabs) {
      tab.open(ids[2] as string);
      await settle(tabs, storages);
    }
    for (let edit = 1; edit <= 200; edit += 1)
      for (const [i, tab] of tabs.entries()) {
        tab.rename(`${i}: ${edit}`);
        await settle(tabs, storages);
        expect(tabs.map(name)).toEqual([`${i}: ${edit}`, `${i}: ${edit}`, `${i}: ${edit}`]);
      }
    expectAllKept(tabs, storage, ['Ada', 'Bea', '2: 200']);
  }, 240_000);

  it('lose no change that nobody has seen replaced, whatever they do in turn', async () => {
    const action = fc.record<Action>({
      tab: fc.nat(2),
      what: fc.constantFrom(
        'rename',
        'rename',
        'rename',
        'open',
        'add',
        'flush',
        'hear',
        'hear',
        'undo',
        'wait',
      ),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(action, { minLength: 200, maxLength: 200 }), async (actions) => {
        const storages = SharedStorage.tabs(3);
        const tabs = [await openTab(storages[0] as SharedStorage)];
        (tabs[0] as Tab).rename('start');
        add(tabs[0] as Tab, 'second');
        for (const storage of storages.slice(1)) tabs.push(await openTab(storage));
        for (const storage of storages) storage.inbox.length = 0;
        /** Names that were given and that no one has replaced knowing them. */
        const standing = new Set(['start', 'second']);
        /** The tabs that have replaced a name. */
        const replacedBy = new Map<string, Set<number>>();
        const replace = (old: string, at: number): void => {
          standing.delete(old);
          replacedBy.set(old, new Set([...(replacedBy.get(old) ?? []), at]));
        };
        const bringBack = (old: string, at: number): void => {
          replacedBy.get(old)?.delete(at);
          if ((replacedBy.get(old)?.size ?? 0) === 0) standing.add(old);
        };
        for (const [i, { tab: at, what }] of actions.entries()) {
          const tab = tabs[at] as Tab;
          if (what === 'rename') {
            replace(name(tab), at);
            tab.rename(`name ${i}`);
            standing.add(`name ${i}`);
          } else if (what === 'add') {
            if (entriesOf(present(tab)).length < 5) {
              add(tab, `name ${i}`);
              standing.add(`name ${i}`);
            }
          } else if (what === 'open') {
            const entries = entriesOf(present(tab));
            tab.open(entries[i % entries.length]?.id ?? '');
          } else if (what === 'flush') tab.books.flush();
          else if (what === 'wait') vi.advanceTimersByTime(500);
          else if (what === 'hear') await deliver(tab, storages[at] as SharedStorage);
          else {
            const names = () => new Set(entriesOf(present(tab)).map((each) => each.name));
            const before = names();
            tab.store.getState().undo();
            const after = names();
            for (const each of before) if (!after.has(each)) replace(each, at);
            for (const each of after) if (!before.has(each)) bringBack(each, at);
          }
        }
        for (const tab of tabs) tab.books.flush();
        await deliverAll(tabs, storages);
        for (const tab of tabs) tab.books.flush();
        const kept = namesIn(storages[0] as SharedStorage);
        for (const each of standing) expect([...kept]).toContain(each);
        for (const tab of tabs) expect(['saved', 'conflict']).toContain(tab.books.status().kind);
      }),
      { numRuns: 8, endOnFailure: true },
    );
  });
});

describe('writing one tab after the other', () => {
  it.each(['at once', 'too late', 'never'])('is done once, where the lock is given %s', async (when) => {
    let written = 0;
    const request = async (_: string, __: object, given: () => void): Promise<void> => {
      if (when !== 'never') given();
      if (when !== 'at once') throw new DOMException('waited long enough', 'TimeoutError');
    };
    exclusiveOf({ request } as unknown as LockManager)(() => {
      written += 1;
    });
    await vi.waitFor(() => expect(written).toBe(1));
    await Promise.resolve();
    expect(written).toBe(1);
  });
});

describe('the page', () => {
  const hide = (state: 'hidden' | 'visible'): void => {
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValue(state);
    document.dispatchEvent(new Event('visibilitychange'));
  };
  const attached = async () => {
    const { tabs, storage, storages } = await twoTabs();
    const [, tab] = tabs;
    return { tab, storage, own: storages[1] as SharedStorage, detach: attach(window, tab.books, tab.host) };
  };
  const kept = (storage: SharedStorage): string[] => [...clientsIn(storage).keys()].sort();

  it('keeps what waits when it is hidden or left, with a change under way, and not after it is let go', async () => {
    const { tab, storage, detach } = await attached();
    tab.rename('Bea 2');
    hide('visible');
    expect(kept(storage)).toEqual(['Ada', 'Bea']);
    hide('hidden');
    expect(kept(storage)).toEqual(['Ada', 'Bea 2']);
    tab.store.getState().show((book) => ({
      ...book,
      clients: book.clients.map((client) =>
        client.name === 'Bea 2' ? { ...client, name: 'Bea 3' } : client,
      ),
    }));
    window.dispatchEvent(new Event('pagehide'));
    expect(kept(storage)).toEqual(['Ada', 'Bea 3']);
    detach();
    tab.rename('Bea 4');
    window.dispatchEvent(new Event('pagehide'));
    hide('hidden');
    expect(kept(storage)).toEqual(['Ada', 'Bea 3']);
  });

  it('asks before it is closed only where work cannot be kept', async () => {
    const { tab, own, detach } = await attached();
    const close = (): boolean => {
      const event = new Event('beforeunload', { cancelable: true });
      window.dispatchEvent(event);
      return event.defaultPrevented;
    };
    expect(close()).toBe(false);
    tab.rename('Bea 2');
    expect(close()).toBe(false);
    own.refusesToWrite = true;
    tab.rename('Bea 3');
    expect(close()).toBe(true);
    own.refusesToWrite = false;
    expect(close()).toBe(false);
    detach();
  });

  it('hears of other tabs', async () => {
    const { tab, storage, detach } = await attached();
    const key = `staywright.client.${openClient(present(tab)).id}`;
    storage.kept.delete(key);
    window.dispatchEvent(new StorageEvent('storage', { key, newValue: null }));
    await vi.waitFor(() =>
      expect(tab.books.keeping().notices.map(({ kind }) => kind)).toEqual(['deletedElsewhere']),
    );
    detach();
  });
});
