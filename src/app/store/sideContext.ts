// Which half lies on the table where the two differ, and the table as it is seen and worked on with that half on it.

import { createContext } from 'react';
import { type Book, swapSides } from '../../document';
import type { Side } from '../../engine';
import type { StoreState } from './store';

/** Null outside the Draft step: there both halves are seen at once. */
export const SideContext = createContext<Side | null>(null);

/**
 * The table whose open draft shows the wedges of one half, and whose changes go to that half. One and the same for one and
 * the same table, so that nothing is drawn anew for it.
 */
export function withSide(state: StoreState, side: Side | null): StoreState {
  if (side !== 'right') return state;
  const known = turned.get(state);
  if (known) return known;
  const onTable = (book: Book): Book => swapSides(book, 'right');
  const turn = {
    ...state,
    history: { ...state.history, present: onTable(state.history.present) },
    preview: state.preview && onTable(state.preview),
    ...actionsOf(state),
  };
  turned.set(state, turn);
  return turn;
}

const turned = new WeakMap<StoreState, StoreState>();

/** The store makes its actions once. */
function actionsOf({ show, change }: StoreState): Pick<StoreState, 'show' | 'change'> {
  const known = actions.get(show);
  if (known) return known;
  const inside =
    (step: (book: Book) => Book) =>
    (book: Book): Book => {
      const before = swapSides(book, 'right');
      const after = step(before);
      return after === before ? book : swapSides(after, 'right');
    };
  const made: Pick<StoreState, 'show' | 'change'> = {
    show: (step) => show(inside(step)),
    change: (name, step) => change(name, inside(step)),
  };
  actions.set(show, made);
  return made;
}

const actions = new WeakMap<StoreState['show'], Pick<StoreState, 'show' | 'change'>>();
