// The printed pattern of the draft in view: its layout on sheets now, its PDF when asked for.

import { useEffect, useMemo, useRef, useState } from 'react';
import { checkPaper, type Layout, layOut, type PaperChoice, patternPdf } from '../../paper';
import { isAcknowledged } from '../draft/SafetyCard';
import { download } from '../parts/download';
import { fileName } from '../parts/fileName';
import { useDraft, useOpen } from '../tableContext';

export interface Pattern {
  /** Null where the paper cannot be used. */
  readonly layout: Layout | null;
  readonly print: () => void;
  readonly printing: boolean;
  /** Why nothing may be printed now; null when it may. */
  readonly refusal: string | null;
  /** What went wrong with the last print; null when nothing did. */
  readonly failure: string | null;
}

export function usePattern(paper: PaperChoice): Pattern {
  const { client, sheet } = useOpen();
  const draft = useDraft();
  const [printing, setPrinting] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const there = useRef(true);
  useEffect(() => {
    there.current = true;
    return () => {
      there.current = false;
    };
  }, []);
  const input = useMemo(
    () => ({
      draft,
      client,
      sheet,
      paper,
      date: new Date().toLocaleDateString(undefined, { dateStyle: 'medium' }),
    }),
    [draft, client, sheet, paper],
  );
  const layout = useMemo(() => (checkPaper(input.paper).ok ? layOut(input) : null), [input]);
  const print = (): void => {
    setPrinting(true);
    setFailure(null);
    patternPdf(input)
      .then((bytes) => download(bytes, 'application/pdf', `${fileName(client.name, sheet.name)}.pdf`))
      .catch(() => {
        if (there.current)
          setFailure('The PDF could not be made. Nothing in the book has changed; try again.');
      })
      .finally(() => {
        if (there.current) setPrinting(false);
      });
  };
  return { layout, print, printing, refusal: refusalOf(), failure };

  function refusalOf(): string | null {
    if (draft.pieces.length === 0) return 'There is nothing to print yet.';
    if (draft.issues.some((issue) => issue.severity === 'block'))
      return 'The draft cannot be cut as it is, so it is not printed; what to change stands below.';
    const high = draft.issues.some((issue) => issue.code === 'waistReductionHigh');
    if (high && !isAcknowledged(sheet.acknowledgedReduction, -sheet.style.ease.waist))
      return 'The waist is taken in by more than is usual. Read the cautions in the Draft step and acknowledge them; then it prints.';
    return null;
  }
}
