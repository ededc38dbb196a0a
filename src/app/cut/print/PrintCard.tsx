// The card of the paper: the medium the pattern is printed on, the choices for it, and the button that prints.

import type { ReactNode } from 'react';
import { CUT, openDraftOf } from '../../../document';
import { useOpen } from '../../store/storeContext';
import { ChoiceRow } from '../choices/ChoiceRow';
import { choose, type Medium, useCutChoices } from '../choices/cutChoices';
import { RefusalLink } from '../choices/RefusalLink';
import type { Refusal } from '../choices/usePlanInput';
import { ShareButton } from './ShareButton';
import type { Printing } from './usePrint';
import { useUnwritable } from './useUnwritable';

const MEDIA = (['sheets', 'page', 'projector'] satisfies Medium[]).map((value) => ({
  value,
  label: CUT.print.media[value],
}));

export interface PrintCardProps {
  /** The form with the choices for the medium. */
  readonly children: ReactNode;
  /** The choice of what is printed. */
  readonly choices: ReactNode;
  readonly printing: Printing;
  /** Why nothing may be printed now; null when it may. */
  readonly refusal: Refusal | null;
  /** Whether the pattern can be printed with the choices made. */
  readonly isPrintable: boolean;
  readonly onPrint: () => void;
}

export function PrintCard({ children, choices, printing, refusal, isPrintable, onPrint }: PrintCardProps) {
  const { medium } = useCutChoices();
  const { client } = useOpen();
  const letters = useUnwritable(client.name, openDraftOf(client).name);
  const { progress, failure, made, cancel } = printing;
  const print = client.prints.at(-1);
  return (
    <section className="card paper-card" aria-label={CUT.print.title}>
      <h2>{CUT.print.title}</h2>
      {choices}
      <ChoiceRow
        legend={CUT.print.printedOn}
        name="medium"
        choices={MEDIA}
        value={medium}
        onChange={(value) => choose({ medium: value })}
      />
      {children}
      {letters.length > 0 ? <p className="hint unwritable">{CUT.print.unwritable({ letters })}</p> : null}
      {progress ? (
        <div className="printing">
          <progress aria-label={CUT.print.pagesDrawn} max={progress.of} value={progress.drawn} />
          <span>
            {progress.of > 1
              ? CUT.print.page({ drawn: Math.max(1, progress.drawn), of: progress.of })
              : CUT.print.making}
          </span>
          <button type="button" onClick={cancel}>
            {CUT.print.cancel}
          </button>
        </div>
      ) : (
        <button
          type="button"
          className="primary"
          disabled={refusal !== null || !isPrintable}
          onClick={onPrint}
        >
          {CUT.print.download[medium]}
        </button>
      )}
      <p className="hint" role="status">
        {made ? CUT.print.made : ''}
      </p>
      {made && print ? (
        <p className="hint">
          {CUT.print.kept({ mockup: print.mockup })}{' '}
          {print.mockup === null ? null : <a href="#fit">{CUT.print.toFittings}</a>}
        </p>
      ) : null}
      {made ? <ShareButton file={made} /> : null}
      {/* Measurements that are not filled in yet are not shown as a fault. */}
      <p className={!failure && refusal === 'measure' ? 'hint' : 'said'} aria-live="polite">
        {failure ? CUT.print.failures[failure] : null}
        {!failure && refusal ? (
          <>
            <b>{CUT.print.notPrinted}</b> {CUT.refusals[refusal]} <RefusalLink refusal={refusal} />
          </>
        ) : null}
      </p>
    </section>
  );
}
