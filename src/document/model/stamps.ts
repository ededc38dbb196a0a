// Marks on a client which follow from what was changed: the time of her last change, and that she is no longer the invented one.

import type { Book, Client } from './book';

/**
 * The later book with the time on every client that was changed. One who was only opened was not changed.
 *
 * @param now ISO instant
 */
export function withStamps(before: Book, after: Book, now: string): Book {
  if (before.clients === after.clients) return after;
  const were = new Map(before.clients.map((client) => [client.id, client]));
  let anyChanged = false;
  const clients = after.clients.map((client) => {
    const was = were.get(client.id);
    if (!was || was === client || isOnlyOpened(was, client)) return client;
    anyChanged = true;
    const { invented, ...rest } = client;
    return { ...rest, ...(invented && was.name === client.name ? { invented } : {}), changed: now };
  });
  return anyChanged ? { ...after, clients } : after;
}

function isOnlyOpened(was: Client, is: Client): boolean {
  const [before, after] = [
    { ...was, lastUsed: null },
    { ...is, lastUsed: null },
  ];
  const names = Object.keys(after) as (keyof Client)[];
  return (
    names.length === Object.keys(before).length && names.every((name) => Object.is(before[name], after[name]))
  );
}

/** Whether a client is somebody's own, and not the invented one as she came. */
export const isOwn = ({ invented, changed }: Client): boolean => !invented || changed !== undefined;
