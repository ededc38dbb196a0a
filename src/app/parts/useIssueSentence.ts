// What the draft says, in words: lengths in the client's unit, and wedges by the name they keep while one is pulled.

import { useCallback } from 'react';
import { issueSentence } from '../../document';
import type { Issue } from '../../engine';
import { useKeptStyle, useOpen } from '../tableContext';

export function useIssueSentence(): (issue: Issue) => string {
  const { unit } = useOpen().client;
  const style = useKeptStyle();
  return useCallback((issue) => issueSentence(issue, { unit, style }), [unit, style]);
}
