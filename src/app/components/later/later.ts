// Parts of the page that come after the first step: dialogs, other steps, texts of rare notices.

import { type ComponentType, lazy } from 'react';

/** A part of the page did not come from the server. Another load of the page asks for it again. */
export class NotFetched extends Error {
  override readonly name = 'NotFetched';
}

type Load<T> = () => Promise<T>;

const parts = new Set<Load<unknown>>();

/** Fetches a part; rejects with {@link NotFetched} where it does not come. The part is fetched ahead, too. */
export function later<T>(load: Load<T>): Load<T> {
  const fetchPart = async (): Promise<T> => {
    try {
      return await load();
    } catch (cause) {
      throw new NotFetched('a part of the page did not come', { cause });
    }
  };
  parts.add(fetchPart);
  return fetchPart;
}

/** A component that is fetched with its file. */
export const lazyPart = <Props>(load: Load<ComponentType<Props>>) => {
  const fetchPart = later(load);
  return lazy(async () => ({ default: await fetchPart() }));
};

/** Fetches every part there is, and those that come with them; one that does not come is asked for again when it is opened. */
export async function fetchAhead(): Promise<void> {
  for (const fetchPart of parts) await fetchPart().catch(() => undefined);
}
