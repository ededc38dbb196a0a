// What was typed and could not be read, kept while another step is in view: still in its field on return, and said meanwhile.

import { useSyncExternalStore } from 'react';
import type { MeasurementName } from '../../../engine';

export interface UnreadText {
  readonly text: string;
  /** The sentence that says what is wrong with it. */
  readonly fault: string;
  /** What its field is called. */
  readonly label: string;
  /** More keys may come: the field has not been left, nor Enter been pressed. */
  readonly isBeingTyped: boolean;
}

type Texts = ReadonlyMap<string, UnreadText>;

// Never changed in place: those who look at it see by its identity that another text lies by.
let unread: Texts = new Map();
const lookers = new Set<() => void>();

/** Under what the text of a measurement's field lies. */
export const measurementField = (client: { readonly id: string }, measurement: MeasurementName): string =>
  `${client.id} ${measurement}`;

/** The text that lies in a field unread; undefined where there is none. */
export const unreadText = (field: string | undefined): UnreadText | undefined =>
  field === undefined ? undefined : unread.get(field);

/** Lays a text by for a field, or (null) lets it go. */
export function layByText(field: string | undefined, text: UnreadText | null): void {
  if (field === undefined || (text === null && !unread.has(field))) return;
  const next = new Map(unread);
  if (text) next.set(field, text);
  else next.delete(field);
  unread = next;
  for (const look of lookers) look();
}

/** All texts that lie unread, by their fields. */
export const useUnreadTexts = (): Texts => useSyncExternalStore(subscribe, () => unread);

function subscribe(look: () => void): () => void {
  lookers.add(look);
  return () => lookers.delete(look);
}
