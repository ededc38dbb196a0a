// What the pattern is printed on, and the print.

import type { ReactNode } from 'react';
import { ChoiceRow } from '../choices/ChoiceRow';
import { choose, type Medium, useCutChoices } from '../choices/cutChoices';
import { RefusalLink } from '../choices/RefusalLink';
import type { Refusal } from '../choices/usePlanInput';
import type { Printing } from './usePrint';

const MEDIA: readonly { value: Medium; label: string; button: string }[] = [
  { value: 'sheets', label: 'Sheets', button: 'Download the PDF' },
  { value: 'page', label: 'One page', button: 'Download the page' },
  { value: 'projector', label: 'Projector', button: 'Download for the projector' },
];

export interface PrintCardProps {
  readonly children: ReactNode;
  readonly printing: Printing;
  /** Why nothing may be printed now; null when it may. */
  readonly refusal: Refusal | null;
  /** The choices made can be printed. */
  readonly ready: boolean;
  readonly onPrint: () => void;
}

export function PrintCard({ children, printing, refusal, ready, onPrint }: PrintCardProps) {
  const { medium } = useCutChoices();
  const { progress, failure, cancel } = printing;
  return (
    <section className="card paper-card" aria-label="Paper">
      <h2>Paper</h2>
      <ChoiceRow
        legend="Printed on"
        name="medium"
        choices={MEDIA}
        value={medium}
        onChange={(value) => choose({ medium: value })}
      />
      {children}
      {progress ? (
        <div className="printing">
          <progress aria-label="Pages drawn" max={progress.of} value={progress.drawn} />
          <span>
            {progress.of > 1 ? `Page ${Math.max(1, progress.drawn)} of ${progress.of}` : 'Making the PDF…'}
          </span>
          <button type="button" onClick={cancel}>
            Cancel
          </button>
        </div>
      ) : (
        <button type="button" className="primary" disabled={refusal !== null || !ready} onClick={onPrint}>
          {MEDIA.find((each) => each.value === medium)?.button}
        </button>
      )}
      {/* What is only not there yet is no fault. */}
      <p className={!failure && refusal?.cure === 'measure' ? 'hint' : 'said'} aria-live="polite">
        {failure ??
          (refusal ? (
            <>
              <b>Not printed yet.</b> {refusal.sentence} <RefusalLink cure={refusal.cure} />
            </>
          ) : (
            ''
          ))}
      </p>
    </section>
  );
}
