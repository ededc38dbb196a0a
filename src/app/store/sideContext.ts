// Which half lies on the table where the two differ, and the table as it is seen and worked on with that half on it.

import { createContext } from 'react';
import { type Book, bookOnTable } from '../../document';
import type { Hand } from '../../engine';
import type { Table } from './store';

/** Null outside the Draft step: there both halves are seen at once. */
export const HandContext = createContext<Hand | null>(null);

/**
 * The table whose open draft shows the wedges of one half, and whose changes go to that half. One and the same for one and
 * the same table, so that nothing is drawn anew for it.
 */
export function withHand(table: Table, hand: Hand | null): Table {
  if (hand !== 'right') return table;
  const known = turned.get(table);
  if (known) return known;
  const onTable = (book: Book): Book => bookOnTable(book, 'right');
  const turn = {
    ...table,
    history: { ...table.history, present: onTable(table.history.present) },
    preview: table.preview && onTable(table.preview),
    ...actionsOf(table),
  };
  turned.set(table, turn);
  return turn;
}

const turned = new WeakMap<Table, Table>();

/** The store makes its actions once. */
function actionsOf({ show, change }: Table): Pick<Table, 'show' | 'change'> {
  const known = actions.get(show);
  if (known) return known;
  const inside =
    (step: (book: Book) => Book) =>
    (book: Book): Book => {
      const before = bookOnTable(book, 'right');
      const after = step(before);
      return after === before ? book : bookOnTable(after, 'right');
    };
  const made: Pick<Table, 'show' | 'change'> = {
    show: (step) => show(inside(step)),
    change: (name, step) => change(name, inside(step)),
  };
  actions.set(show, made);
  return made;
}

const actions = new WeakMap<Table['show'], Pick<Table, 'show' | 'change'>>();
