// The printed pattern of the draft in view: its layout on sheets now, its PDF when asked for.

import { useEffect, useMemo, useRef, useState } from 'react';
import { checkPaper, type Layout, layOut, type PaperChoice, type PlanInput, patternPdf } from '../../paper';
import { download } from '../parts/download';
import { fileName } from '../parts/fileName';

export interface Pattern {
  /** Null where the paper cannot be used. */
  readonly layout: Layout | null;
  readonly print: () => void;
  readonly printing: boolean;
  /** What went wrong with the last print; null when nothing did. */
  readonly failure: string | null;
}

export function usePattern(plan: PlanInput, paper: PaperChoice): Pattern {
  const [printing, setPrinting] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const there = useRef(true);
  useEffect(() => {
    there.current = true;
    return () => {
      there.current = false;
    };
  }, []);
  const input = useMemo(() => ({ ...plan, paper }), [plan, paper]);
  const layout = useMemo(() => (checkPaper(input.paper).ok ? layOut(input) : null), [input]);
  const print = (): void => {
    setPrinting(true);
    setFailure(null);
    patternPdf(input)
      .then((bytes) =>
        download(bytes, 'application/pdf', `${fileName(plan.client.name, plan.sheet.name)}.pdf`),
      )
      .catch(() => {
        if (there.current)
          setFailure('The PDF could not be made. Nothing in the book has changed; try again.');
      })
      .finally(() => {
        if (there.current) setPrinting(false);
      });
  };
  return { layout, print, printing, failure };
}
