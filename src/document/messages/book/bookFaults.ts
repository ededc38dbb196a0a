// Why a kept book or a backup cannot be read.

import type { BackupFault } from '../../model/kept/readBackup';
import { catalogue } from '../catalogue';

/** The sentence for a fault of a kept book or of a backup. */
export const bookFaultSentence = (fault: BackupFault): string =>
  fault.code === 'wrongShape' ? BOOK_FAULTS.wrongShape(fault) : BOOK_FAULTS[fault.code];

const BOOK_FAULTS = catalogue({
  notWhole: 'It is not whole, or no book of this page.',
  noVersion: 'It is not a client book: it carries no version.',
  /** `path` is null where the whole is of another shape. */
  wrongShape: ({ path }: { path: string | null }) =>
    path === null
      ? 'It is not a client book as this version keeps it.'
      : `It is not a client book as this version keeps it: see ${path}.`,
  backupNotWhole: 'This is not a backup written by Staywright, or not the whole of one.',
  notBackup: 'This is not a backup written by Staywright.',
});
