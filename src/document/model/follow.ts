// What another tab kept, taken into every state of this tab's history, so that no undo here takes back what was done there.

import type { Book, Client, OwnStyle, UnopenedClient } from './book';
import { withUnopened } from './entries';
import type { History } from './history';

/** A client or style as it is kept now; null for one that was taken out. */
export type Outside =
  | {
      readonly kind: 'client';
      readonly id: string;
      readonly now: { readonly client: Client; readonly unopened: UnopenedClient } | null;
    }
  | { readonly kind: 'style'; readonly id: string; readonly now: OwnStyle | null };

/**
 * The history with these in each of its states. Steps that come to nothing by it are left out, and so are those that lie behind a
 * state whose open client was taken out.
 */
export function followed(history: History<Book>, outside: readonly Outside[]): History<Book> {
  const known = new Map<Book, Book | null>();
  const bookWith = (book: Book): Book | null => {
    const made = known.get(book);
    if (made !== undefined) return made;
    const next = outside.reduce<Book | null>((each, part) => each && withPart(each, part), book);
    known.set(book, next);
    return next;
  };
  const present = bookWith(history.present) ?? history.present;
  const steps = (list: History<Book>['past']): History<Book>['past'][number][] => {
    const kept: History<Book>['past'][number][] = [];
    let nearer = present;
    for (const { state, change } of list) {
      const next = bookWith(state);
      if (!next) break;
      if (!isSame(next, nearer)) kept.push({ state: next, change });
      nearer = next;
    }
    return kept;
  };
  return { past: steps([...history.past].reverse()).reverse(), present, future: steps(history.future) };
}

/** Null where the open client was taken out. */
function withPart(book: Book, part: Outside): Book | null {
  const { id } = part;
  if (part.kind === 'style') return { ...book, styles: withItem(book.styles, id, part.now) };
  const isOpened = book.clients.some((each) => each.id === id);
  if (!part.now) {
    if (book.openClient === id) return null;
    const clients = book.clients.filter((each) => each.id !== id);
    return withUnopened(
      { ...book, clients },
      (book.unopened ?? []).filter((each) => each.id !== id),
    );
  }
  if (isOpened) return { ...book, clients: withItem(book.clients, id, part.now.client) };
  return withUnopened(book, withItem(book.unopened ?? [], id, part.now.unopened));
}

/** A list with an item in the place of the one of its id, at the end where there is none; null takes it out. */
function withItem<T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
  now: T | null,
): readonly T[] {
  if (!now) return list.filter((each) => each.id !== id);
  return list.some((each) => each.id === id)
    ? list.map((each) => (each.id === id ? now : each))
    : [...list, now];
}

const isSame = (a: Book, b: Book): boolean =>
  a.openClient === b.openClient &&
  sameItems(a.styles, b.styles) &&
  sameItems(a.clients, b.clients) &&
  sameItems(a.unopened ?? [], b.unopened ?? []);

const sameItems = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((item, i) => item === b[i]);
