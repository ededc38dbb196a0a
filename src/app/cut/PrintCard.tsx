// What the pattern is printed on, and the print.

import type { ReactNode } from 'react';
import { choose, type Medium, useCutChoices } from './cutChoices';
import type { Printing } from './usePrint';

const MEDIA: readonly { medium: Medium; label: string; button: string }[] = [
  { medium: 'sheets', label: 'Sheets', button: 'Download the PDF' },
  { medium: 'page', label: 'One page', button: 'Download the page' },
  { medium: 'projector', label: 'Projector', button: 'Download for the projector' },
];

interface PrintCardProps {
  readonly children: ReactNode;
  readonly printing: Printing;
  /** Why nothing may be printed now; null when it may. */
  readonly refusal: string | null;
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
      <fieldset className="choice-row">
        <legend className="unseen">Printed on</legend>
        {MEDIA.map(({ medium: each, label }) => (
          <label key={each}>
            <input
              type="radio"
              name="medium"
              checked={medium === each}
              onChange={() => choose({ medium: each })}
            />
            <span>{label}</span>
          </label>
        ))}
      </fieldset>
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
          {MEDIA.find((each) => each.medium === medium)?.button}
        </button>
      )}
      <p className="said" aria-live="polite">
        {failure ?? refusal ?? ''}
      </p>
    </section>
  );
}
