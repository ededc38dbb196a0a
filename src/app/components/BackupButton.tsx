// The whole book as one file, to be kept elsewhere.

import { BACKUP, type Book, writeBackup } from '../../document';
import { download } from './download';
import { today } from './formatDay';

/** @param props.book asked when it is pressed */
export function BackupButton({ book }: { readonly book: () => Book }) {
  return (
    <button
      type="button"
      onClick={() => download(writeBackup(book(), today()), 'application/json', `staywright-${today()}.json`)}
    >
      {BACKUP.download}
    </button>
  );
}
