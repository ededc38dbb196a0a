// Clients, drafts, styles and wedges are found by id: where one occurs twice, the later bearer gets another.

import type { Style } from '../../../engine';
import type { Book } from '../book';

/** The same book with every id its own among its fellows; the book itself where nothing had to change. */
export function withIdsApart(book: Book): Book {
  const clients = apart(book.clients).map((client) => {
    const drafts = apart(client.drafts).map(wedgesApart);
    return sameItems(drafts, client.drafts) ? client : { ...client, drafts };
  });
  const styles = apart(book.styles).map(wedgesApart);
  return sameItems(clients, book.clients) && sameItems(styles, book.styles)
    ? book
    : { ...book, styles, clients };
}

function wedgesApart<T extends { readonly style: Style }>(bearer: T): T {
  const { wedges, rightWedges = [] } = bearer.style;
  // A wedge is found by its id on whichever side it is.
  const all = [...wedges, ...rightWedges];
  const withOwnIds = apart(all);
  if (withOwnIds === all) return bearer;
  const style = { ...bearer.style, wedges: withOwnIds.slice(0, wedges.length) };
  return {
    ...bearer,
    style: bearer.style.rightWedges ? { ...style, rightWedges: withOwnIds.slice(wedges.length) } : style,
  };
}

function apart<T extends { readonly id: string }>(items: readonly T[]): readonly T[] {
  const given = new Set(items.map((item) => item.id));
  if (given.size === items.length) return items;
  const taken = new Set<string>();
  return items.map((item) => {
    let { id } = item;
    for (let count = 2; taken.has(id); count += 1) {
      const other = `${item.id}~${count}`;
      if (!given.has(other)) id = other;
    }
    taken.add(id);
    given.add(id);
    return id === item.id ? item : { ...item, id };
  });
}

const sameItems = <T>(a: readonly T[], b: readonly T[]): boolean => a.every((item, i) => item === b[i]);
