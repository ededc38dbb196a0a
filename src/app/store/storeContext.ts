// Hands the one table to every part of the screen.

import { createContext, useContext } from 'react';
import { type Book, type Client, openClient, openSheet, type Sheet, styleOnTable } from '../../document';
import { type Draft, draftWhole, type Hand, halfOf, type Style } from '../../engine';
import { HandContext, withHand } from './sideContext';
import { seen, type Table, type TableStore } from './store';

export const TableContext = createContext<TableStore | null>(null);

/** Part of the table, and a new drawing when it changes. */
export function useTable<T>(pick: (table: Table) => T): T {
  const store = useContext(TableContext);
  if (!store) throw new Error('useTable needs a TableContext around it');
  const hand = useContext(HandContext);
  return store((table) => pick(withHand(table, hand)));
}

/** A book to be shown instead of the one that is seen now: parts that may lag behind a pull are given the last but one. */
export const SeenContext = createContext<Book | null>(null);

/** The book, client and draft in view. */
export function useOpen(): { book: Book; client: Client; sheet: Sheet } {
  const given = useContext(SeenContext);
  const book = useTable((table) => given ?? seen(table));
  const client = openClient(book);
  return { book, client, sheet: openSheet(client) };
}

/** The style in view as it was last kept: what is called by where it stands keeps its name while it is moved. */
export function useKeptStyle(): Style {
  return useTable((table) => openSheet(openClient(table.history.present)).style);
}

/** The draft in view, computed once for each state of tape and style; with a half on the table, that half of it. */
export function useDraft(): Draft {
  const { client, sheet } = useOpen();
  const hand = useContext(HandContext);
  return draftOnTable(client, sheet.style, hand);
}

/** The draft of what was last kept, without the change under way. */
export function useCommittedDraft(): Draft {
  const book = useTable((table) => table.history.present);
  const hand = useContext(HandContext);
  const client = openClient(book);
  return draftOnTable(client, openSheet(client).style, hand);
}

/** A draft of a body as it is seen with a half on the table; `style` is as it is seen then. */
export function draftOnTable(body: Body, style: Style, hand: Hand | null): Draft {
  const whole = draftOnce(body, hand ? styleOnTable(style, hand) : style);
  if (!hand || !whole.halves) return whole;
  const known = halves.get(whole)?.[hand];
  const half = known ?? halfOf(whole, hand);
  if (!known) halves.set(whole, { ...halves.get(whole), [hand]: half });
  return half;
}

const halves = new WeakMap<Draft, { readonly [hand in Hand]?: Draft }>();

type Body = Pick<Client, 'measurements' | 'sides'>;

interface Drafted {
  readonly body: Body;
  readonly style: Style;
  readonly draft: Draft;
}

/** As kept, as seen, as seen by what lags behind, and as about to be seen: more are not asked for at one time. */
const MOST_REMEMBERED = 4;
let remembered: readonly Drafted[] = [];

/** A draft, remembered while it is one of the last that were asked for. */
export function draftOnce(body: Body, style: Style): Draft {
  const { measurements, sides } = body;
  const known = remembered.find(
    (each) => each.body.measurements === measurements && each.body.sides === sides && each.style === style,
  );
  const found = known ?? { body, style, draft: draftWhole(measurements, style, sides ?? null) };
  if (remembered[0] !== found)
    remembered = [found, ...remembered.filter((each) => each !== found)].slice(0, MOST_REMEMBERED);
  return found.draft;
}
