// What the draft says, in words: lengths in the client's unit, and wedges by the name they keep while one is pulled.

import { useCallback } from 'react';
import { isRead, issueSentence } from '../../document';
import type { Issue } from '../../engine';
import { useKeptStyle, useOpen } from '../store/storeContext';

export function useIssueSentence(): (issue: Issue) => string {
  const { client, savedDraft } = useOpen();
  const { unit } = client;
  const style = useKeptStyle();
  return useCallback(
    (issue) => issueSentence(issue, { unit, style, read: isRead(issue, savedDraft) }),
    [unit, style, savedDraft],
  );
}
