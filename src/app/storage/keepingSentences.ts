// The sentence that the shell shows for each status of keeping and each notice.

import { bookFaultSentence, KEEPING } from '../../document';
import type { Notice, SaveStatus } from './device/saveStatus';

/** Of a conflict each clash has a sentence of its own: see `KEEPING.clash`. */
export function saveStatusSentence(status: Exclude<SaveStatus, { kind: 'conflict' }>): string {
  switch (status.kind) {
    case 'saved':
      return KEEPING.kept;
    case 'pending':
      return KEEPING.pending;
    case 'failed':
      return KEEPING.faults[status.reason];
    case 'cleared':
      return KEEPING.cleared;
  }
}

export function noticeSentence(notice: Notice): string {
  const { notices } = KEEPING;
  switch (notice.kind) {
    case 'unreadable':
      return notices.unreadable({ reason: bookFaultSentence(notice.fault) });
    case 'unavailable':
      return notice.reason === 'absent' ? KEEPING.faults.absent : KEEPING.unread;
    case 'readAgain':
      return KEEPING.readAgain;
    case 'newer':
      return notices.newer(notice);
    case 'setAside':
      return notices.setAside(notice);
    case 'earlierBuild':
      return notices.earlierBuild;
    case 'followed':
      return notices.followed(notice);
    case 'deletedElsewhere':
      return notices.deletedElsewhere(notice);
    case 'undoShortened':
      return notices.undoShortened(notice);
    case 'undoNotFetched':
      return notices.undoNotFetched;
    case 'notFollowed':
      return notices.notFollowed;
    case 'nearlyFull':
      return notices.nearlyFull(notice);
  }
}
