// Which of the styles that can be chosen lies on the table, or lay there until it was changed.

import { type Book, type History, NAMED_STYLES, openClient, openDraftOf } from '../../../document';
import type { Style } from '../../../engine';
import { sameStyle } from './sameStyle';

/** A style of the list; `key` tells it from every other. */
export interface KnownStyle {
  readonly key: string;
  readonly title: string;
  readonly style: Style;
}

export const READY_MADE: readonly KnownStyle[] = [...NAMED_STYLES].map(([name, { title, style }]) => ({
  key: `ready:${name}`,
  title,
  style,
}));

/** The maker's own styles, as they stand in the list. */
export const ownOnes = ({ styles }: Pick<Book, 'styles'>): KnownStyle[] =>
  styles.map(({ id, name, style }) => ({ key: `own:${id}`, title: name, style }));

/** Tells which of the known styles a style is, the first ones first; each style is looked at once. */
export function recogniser(known: readonly KnownStyle[]): (style: Style) => readonly KnownStyle[] {
  const seen = new WeakMap<Style, readonly KnownStyle[]>();
  return (style) => {
    const found = seen.get(style) ?? known.filter((each) => sameStyle(each.style, style));
    seen.set(style, found);
    return found;
  };
}

/**
 * What the open draft was before it was changed step by step into what it is, as far as the history goes back. Null where
 * it began from none of the known styles, or from one that is not known any more.
 */
export function begunFrom(
  { past, present }: History<Book>,
  recognise: (style: Style) => readonly KnownStyle[],
): KnownStyle | null {
  const { client, draft } = openDraftIn(present);
  for (let i = past.length; i >= 0; i -= 1) {
    const book = past[i]?.state ?? present;
    const there = openDraftIn(book);
    // While another draft lay there nothing was done to this one.
    if (there.client !== client || there.draft !== draft) continue;
    const change = past[i - 1]?.change;
    const laid = change?.code === 'styleLaid' ? change.title : null;
    const found = recognise(there.style);
    const first = found.find(({ title }) => title === laid) ?? found[0];
    if (first) return first;
    // What was there before another style was laid in its place, or a backup's draft, says nothing.
    if (laid !== null || change?.code === 'backupRestored') return null;
  }
  return null;
}

function openDraftIn(book: Book): { client: string; draft: string; style: Style } {
  const client = openClient(book);
  const { id, style } = openDraftOf(client);
  return { client: client.id, draft: id, style };
}
