// Follows what other tabs keep, and tells of clashes with them. Fetched when another tab has kept something.

import { followed, isOwn, startHistory } from '../../../document';
import { quarantineOnce } from '../aside/quarantine';
import { type BookStorage, fetchReader } from '../book/bookStorage';
import type { Host } from '../device/host';
import { BOOK_KEY, kindOfKey, recordAt, recordKey } from '../records/record';

/** What another tab did to one key, or, with a null one, to all of them. */
export async function hear(
  books: BookStorage,
  host: Host,
  key: string | null,
  newValue: string | null,
): Promise<void> {
  const { storage, records, clashes } = books;
  if (!storage || !records || !clashes) return;
  if (key === null) {
    storage.forgetAll();
    if (records.hasAny()) books.become({ kind: 'cleared' });
    return;
  }
  storage.hear(key, newValue);
  // What could not be kept may find room now.
  if (books.status().kind === 'failed') books.flush();
  else books.sayRoom();
  if (key === BOOK_KEY && newValue !== null && !books.isMoving()) books.notify({ kind: 'earlierBuild' });
  if (kindOfKey(key) === null || clashes.has(key)) return;
  const known = records.knownAt(key)?.text ?? null;
  if (newValue === known || (newValue !== null && records.hasSeen(newValue))) return;
  try {
    // Fetched first, so that nothing comes between the look and the taking in.
    await (await fetchReader()).fetchSteps();
    if (storage.getItem(key) === known && newValue !== null) {
      // The other tab has replaced it itself, and this one has followed that already.
      if (!records.hasWritten(key)) return;
      // This tab wrote over it before it could know.
      quarantineOnce(storage, newValue, books.now());
      books.notify({ kind: 'setAside', names: [], count: 1 });
    } else if (isBusy(books, host, key)) books.retry();
    else await takeTheirs(books, host, key);
  } catch {
    // What cannot be read just now is compared again before anything is written over it.
  }
}

/** Whether this tab has changes of its own under a key, or is about to. */
const isBusy = (books: BookStorage, host: Host, key: string): boolean => {
  const book = books.book();
  if (host.isChanging()) return true;
  return book !== null && (books.records?.waiting(book).some((waiting) => waiting.key === key) ?? false);
};

/** Takes in what lies under a key, in the place of what this tab has there. False where it cannot be read. May throw. */
export async function takeTheirs(books: BookStorage, host: Host, key: string): Promise<boolean> {
  const { storage, records } = books;
  if (!storage || !records) return false;
  const { fetchSteps, outsideOf } = await fetchReader();
  const steps = await fetchSteps();
  const text = storage.getItem(key);
  const book = books.book();
  const open = book?.clients.find(({ id }) => id === book.openClient);
  const isOpen = open !== undefined && key === recordKey('client', open.id);
  if (text === null && isOpen) {
    // She stays in this tab, and is kept again when she is changed here.
    records.learn(key, { entry: open, text: null });
    books.notify({ kind: 'deletedElsewhere', name: open.name });
    return true;
  }
  if (text === null) {
    const removed = recordAt(key);
    if (!removed) return false;
    records.forget(key);
    host.follow((history) => followed(history, [{ ...removed, now: null }]));
    return true;
  }
  const found = outsideOf(text, steps);
  if (!found) return false;
  const theirs = found.outside.kind === 'client' ? found.outside.now?.client : undefined;
  if (theirs && hasNothingOfItsOwn(books)) {
    // The invented client of a first start gives way: else each tab of a first start would leave one of its own.
    records.learn(key, { entry: theirs, text });
    host.follow(({ present }) => startHistory({ ...present, clients: [theirs], openClient: theirs.id }));
    if (isOwn(theirs)) books.notify({ kind: 'followed', name: theirs.name });
    return true;
  }
  const isOpened = found.outside.kind === 'client' && book?.clients.some(({ id }) => id === found.outside.id);
  records.learn(key, { entry: isOpened ? found.opened : found.entry, text, ...found.order });
  host.follow((history) => followed(history, [found.outside]));
  if (isOpen) books.notify({ kind: 'followed', name: open.name });
  return true;
}

/** Whether this tab has read and kept nothing yet, and nothing was changed in it. */
const hasNothingOfItsOwn = (books: BookStorage): boolean =>
  books.status().kind === 'saved' && !books.isWaiting() && books.records?.hasAny() === false;
