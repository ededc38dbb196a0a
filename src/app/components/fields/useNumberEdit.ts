// Wires a length field to the book: what is typed is shown in passing, leaving the field keeps it as one step of the history,
// and Escape drops it.

import { type Book, type Change, type Client, changeClient, changeStyle } from '../../../document';
import type { Style } from '../../../engine';
import { useStore } from '../../store/storeContext';
import type { LengthFieldProps } from './LengthField';

/**
 * Gives the handlers of one field: `change` tells in the history what was done, `set` puts the typed length, mm, into what
 * the number is part of; null where the field was emptied.
 */
type NumberEdit<Owner, Length> = (
  change: Change,
  set: (before: Owner, mm: Length) => Owner,
) => Pick<LengthFieldProps, 'onShow' | 'onKeep' | 'onDrop'>;

export function useNumberEdit(): NumberEdit<Book, number | null> {
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  return (change, set) => ({
    onShow: (mm) => show((book) => set(book, mm)),
    onKeep: () => keep(change),
    onDrop: drop,
  });
}

/** For numbers of the open client. */
export function useClientNumber(): NumberEdit<Client, number | null> {
  const edit = useNumberEdit();
  return (change, set) => edit(change, (book, mm) => changeClient(book, (client) => set(client, mm)));
}

/** For numbers of the open draft's style that may be left to the draft. */
export function useOptionalStyleNumber(): NumberEdit<Style, number | null> {
  const edit = useNumberEdit();
  return (change, set) => edit(change, (book, mm) => changeStyle(book, (style) => set(style, mm)));
}

/** For numbers of the open draft's style, whose fields are never empty. */
export function useStyleNumber(): NumberEdit<Style, number> {
  const edit = useNumberEdit();
  return (change, set) => edit(change, (book, mm) => changeStyle(book, (style) => set(style, mm ?? 0)));
}
