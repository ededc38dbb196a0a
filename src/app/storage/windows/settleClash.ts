// Ends a clash with another tab as the user chose. Whatever is chosen, both records lie in the storage when it is done, one of
// them aside.

import { addStyle, type Client, entriesOf, freeName, type OwnStyle, withOpened } from '../../../document';
import { quarantineOnce } from '../aside/quarantine';
import type { BookStorage } from '../book/bookStorage';
import type { Host } from '../device/host';
import { recordKey } from '../records/record';

/** Which of the two goes on: this tab's, the other tab's, or both, this tab's under another name. */
export type ClashChoice = 'ours' | 'theirs' | 'both';

/** False where there was no room for it, or the storage refused: nothing was changed then. Never throws. */
export async function settleClash(
  books: BookStorage,
  host: Host,
  key: string,
  choice: ClashChoice,
): Promise<boolean> {
  const { storage, records, clashes } = books;
  if (!storage || !records || !clashes?.has(key)) return false;
  books.retry();
  const ours = partAt(books, key);
  try {
    const theirs = storage.getItem(key);
    if (choice === 'ours') {
      if (theirs !== null && quarantineOnce(storage, theirs, books.now()) === null) return false;
      records.learn(key, { entry: null, text: theirs });
      const aside = clashes.end(key);
      books.retry();
      if (aside !== null && !books.isWaiting()) storage.removeItem(aside);
      return true;
    }
    // Apart from this file: the notices that ask for it come without what takes in the changes of other tabs.
    const { takeTheirs } = await import('./otherTabs');
    if (!clashes.areAllBeside()) return false;
    if (!(await takeTheirs(books, host, key))) return false;
    const aside = clashes.end(key);
    if (choice === 'both' && ours) addBeside(host, ours, books.newId());
    books.retry();
    if (choice === 'both' && aside !== null && !books.isWaiting()) storage.removeItem(aside);
    return true;
  } catch {
    return false;
  }
}

/** What this tab has under a key; null where it was taken out here. */
function partAt(books: BookStorage, key: string): Client | OwnStyle | null {
  const book = books.book();
  return (
    book?.clients.find(({ id }) => recordKey('client', id) === key) ??
    book?.styles.find(({ id }) => recordKey('style', id) === key) ??
    null
  );
}

/** Puts a client or a style of this tab beside the one that another tab keeps. */
function addBeside({ change }: Host, part: Client | OwnStyle, id: string): void {
  if ('drafts' in part)
    change({ code: 'clientCopied', name: part.name }, (book) => {
      const names = entriesOf(book).map(({ name }) => name);
      return { ...withOpened(book, { ...part, id, name: freeName(part.name, names) }), openClient: id };
    });
  else
    change({ code: 'styleKept', title: part.name }, (book) =>
      addStyle(book, id, part.name, part.style, part.on),
    );
}
