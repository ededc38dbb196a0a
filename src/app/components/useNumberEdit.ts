// Wires a length field to the book: what is typed is shown in passing, leaving the field keeps it as one step of the history,
// and Escape drops it.

import { type Book, type Client, changeClient, changeStyle } from '../../document';
import type { Style } from '../../engine';
import type { StoreState } from '../store/store';
import { useStore } from '../store/storeContext';
import type { LengthFieldProps } from './LengthField';

/** What a change is called in the history. */
type ChangeName = Parameters<StoreState['keep']>[0];

type NumberEdit = Pick<LengthFieldProps, 'onShow' | 'onKeep' | 'onDrop'>;

/** One number: the name of the change, and the change made by a typed length, mm; null where the field was emptied. */
interface Edit<Changed, Length> {
  readonly name: ChangeName;
  readonly change: (before: Changed, mm: Length) => Changed;
}

/** Gives the handlers of a field whose number is part of the book. */
function useNumberEdit(): (edit: Edit<Book, number | null>) => NumberEdit {
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  return ({ name, change }) => ({
    onShow: (mm) => show((book) => change(book, mm)),
    onKeep: () => keep(name),
    onDrop: drop,
  });
}

/** Gives the handlers of a field whose number is part of the open client. */
export function useClientNumber(): (edit: Edit<Client, number | null>) => NumberEdit {
  const edit = useNumberEdit();
  return ({ name, change }) =>
    edit({ name, change: (book, mm) => changeClient(book, (client) => change(client, mm)) });
}

/** Gives the handlers of a field whose number is part of the open draft's style. The field is never empty. */
export function useStyleNumber(): (edit: Edit<Style, number>) => NumberEdit {
  const edit = useNumberEdit();
  return ({ name, change }) =>
    edit({ name, change: (book, mm) => changeStyle(book, (style) => change(style, mm ?? 0)) });
}
