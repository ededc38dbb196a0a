// The frame of every medium: the drawing of the print, or why there is none, with the cards around it and what is shown in its place.

import type { ReactNode } from 'react';
import { CUT } from '../../../document';
import { RefusalLink } from '../choices/RefusalLink';
import type { Refusal } from '../choices/usePlanInput';
import { PrintCard, type PrintCardProps } from './PrintCard';

export interface SurroundingCards {
  /** The choice of what is printed, in the card of the paper. */
  readonly choices: ReactNode;
  /** Cards under the choice of paper, beside the drawing. */
  readonly beside: ReactNode;
  /** The choice of what is shown. */
  readonly views: ReactNode;
  /** Whether the drawing is what is shown. */
  readonly isDrawn: boolean;
  /** What is shown in place of the drawing, and what stands under either. */
  readonly below: ReactNode;
}

interface PrintFrameProps extends SurroundingCards, Omit<PrintCardProps, 'choices'> {
  /** Null where there is nothing to draw. */
  readonly drawing: ReactNode | null;
  /** The panels are being laid out; what is drawn, if anything, is of before. */
  readonly isBusy: boolean;
}

export function PrintFrame({
  drawing,
  isBusy,
  children,
  beside,
  views,
  isDrawn,
  below,
  ...print
}: PrintFrameProps) {
  return (
    <>
      <div className="plan">
        {views}
        <div className="cut-view panels-view" hidden={!isDrawn} aria-busy={isBusy}>
          {drawing ??
            (isBusy ? (
              <p className="empty laying-out">{CUT.plan.busy}</p>
            ) : (
              <NoPlan refusal={print.refusal} />
            ))}
        </div>
        {below}
      </div>
      <div className="side">
        <PrintCard {...print}>{children}</PrintCard>
        {beside}
      </div>
    </>
  );
}

function NoPlan({ refusal }: { refusal: Refusal | null }) {
  return (
    <section className="empty no-plan" aria-label={CUT.plan.label}>
      <svg viewBox="0 0 120 64" aria-hidden="true">
        <path className="window" d="M10 4H58V60H10ZM62 4H110V60H62Z" />
        <path d="M26 14Q36 10 46 14Q41 32 48 52H24Q31 32 26 14ZM72 14Q84 10 100 14Q92 32 98 52H76Q80 32 72 14Z" />
      </svg>
      <h2>{refusal ? CUT.plan.noPanels : CUT.plan.nothingOnPaper}</h2>
      <p>{refusal ? CUT.refusals[refusal] : CUT.plan.needsPaper}</p>
      {refusal ? (
        <p>
          <RefusalLink refusal={refusal} />
        </p>
      ) : null}
    </section>
  );
}
