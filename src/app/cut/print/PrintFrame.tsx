// What every print has around it: the drawing of what will come, or why there is none, and the cards to choose and print with.

import type { ReactNode } from 'react';
import { RefusalLink } from '../choices/RefusalLink';
import type { Refusal } from '../choices/usePlanInput';
import { PrintCard, type PrintCardProps } from './PrintCard';

export interface Surroundings {
  /** Cards under the choice of paper, and under the drawing. */
  readonly beside: ReactNode;
  readonly below: ReactNode;
}

interface PrintFrameProps extends Surroundings, PrintCardProps {
  /** Null where there is nothing to draw. */
  readonly drawing: ReactNode | null;
}

export function PrintFrame({ drawing, children, beside, below, ...print }: PrintFrameProps) {
  return (
    <>
      <div className="plan">
        {drawing ?? <NoPlan refusal={print.refusal} />}
        <div className="cut-cards">{below}</div>
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
    <section className="empty no-plan" aria-label="Plan">
      <svg viewBox="0 0 120 64" aria-hidden="true">
        <path className="window" d="M10 4H58V60H10ZM62 4H110V60H62Z" />
        <path d="M26 14Q36 10 46 14Q41 32 48 52H24Q31 32 26 14ZM72 14Q84 10 100 14Q92 32 98 52H76Q80 32 72 14Z" />
      </svg>
      <h2>{refusal ? 'No panels to lay out yet' : 'Nothing to show on this paper'}</h2>
      <p>{refusal ? refusal.sentence : 'The panels are laid out as soon as its size can be printed on.'}</p>
      {refusal ? (
        <p>
          <RefusalLink cure={refusal.cure} />
        </p>
      ) : null}
    </section>
  );
}
