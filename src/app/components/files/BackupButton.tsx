// The whole book as one file, to be kept elsewhere.

import { useState } from 'react';
import { type Book, FIELDS, writeBackup } from '../../../document';
import { download } from './download';
import { today } from './formatDay';

/** @param props.book asked when it is pressed */
export function BackupButton({ book }: { readonly book: () => Book }) {
  const [said, setSaid] = useState<string | null>(null);
  const write = (whole: Book): void =>
    download(writeBackup(whole, today()), 'application/json', `staywright-${today()}.json`);
  const press = async (): Promise<void> => {
    const kept = book();
    if (!kept.unopened) return write(kept);
    const { withClientsOpened } = await import('../../storage/book/openClients');
    const { book: whole, unreadable } = await withClientsOpened(kept);
    write(whole);
    setSaid(
      unreadable.length > 0 ? FIELDS.backupWithout({ names: unreadable.map(({ name }) => name) }) : null,
    );
  };
  return (
    <>
      <button type="button" onClick={() => void press().catch(() => setSaid(FIELDS.backupNotFetched))}>
        {FIELDS.downloadBackup}
      </button>
      {said === null ? null : (
        <span className="failed" role="status">
          {said}
        </span>
      )}
    </>
  );
}
