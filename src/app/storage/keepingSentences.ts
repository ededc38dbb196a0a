// The sentence that the shell shows for each status of keeping and each notice.

import { bookFaultSentence, KEEPING } from '../../document';
import type { Notice, SaveStatus } from './saveStatus';

export function saveStatusSentence(status: SaveStatus): string {
  switch (status.kind) {
    case 'saved':
      return KEEPING.kept;
    case 'pending':
      return KEEPING.pending;
    case 'failed':
      return KEEPING.faults[status.reason];
    case 'conflict':
      return status.beside ? KEEPING.conflict.kept : KEEPING.conflict.notKept;
  }
}

export function noticeSentence(notice: Notice): string {
  if (notice.kind === 'unavailable') return KEEPING.faults[notice.reason];
  const kept = notice.quarantineKey === null ? 'guarded' : 'putAside';
  return notice.kind === 'newer'
    ? KEEPING.newer[kept](notice)
    : KEEPING.unreadable[kept]({ reason: bookFaultSentence(notice.fault) });
}
