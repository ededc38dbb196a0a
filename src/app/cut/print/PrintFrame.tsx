// The frame of every medium: the drawing of the print, or why there is none, with the cards around it.

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
  /** Cards under the drawing. */
  readonly below: ReactNode;
}

interface PrintFrameProps extends SurroundingCards, Omit<PrintCardProps, 'choices'> {
  /** Null where there is nothing to draw. */
  readonly drawing: ReactNode | null;
}

export function PrintFrame({ drawing, children, beside, below, ...print }: PrintFrameProps) {
  return (
    <>
      <div className="plan">
        {drawing ?? <NoPlan refusal={print.refusal} />}
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
