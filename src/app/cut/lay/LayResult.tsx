// A plan that was made: what it takes of the cloth, its drawing and its files.

import { useState } from 'react';
import { CUT, formatLength, type KeptLay, LAY } from '../../../document';
import { MM_PER_INCH } from '../../../engine';
import {
  isProjectorChoice,
  type LayPlan,
  layStrips,
  laySvg,
  ONE_PAGES,
  type PlanInput,
} from '../../../paper';
import { download } from '../../components/files/download';
import { correctionOf, useCutChoices } from '../choices/cutChoices';
import type { LayPaper } from '../print/printJob';
import { startPrint } from '../print/startPrint';
import { LayDrawing } from './LayDrawing';

/** mm of what a price is given for. */
const PRICED_MM = { in: 36 * MM_PER_INCH, cm: 1000 } as const;

interface LayResultProps {
  readonly lay: KeptLay;
  /** Null where the outlines that it was made of are no longer there. */
  readonly plan: LayPlan | null;
  readonly price: number | null;
  readonly input: PlanInput;
  readonly isBusy: boolean;
  /** The name of its files without what they are of. */
  readonly file: string;
}

export function LayResult({ lay, plan, price, input, isBusy, file }: LayResultProps) {
  const { client, savedDraft } = input;
  const { unit } = client;
  const choices = useCutChoices();
  const [failure, setFailure] = useState<'failed' | 'tooLarge' | null>(null);
  const correction = correctionOf(choices);
  const named = ONE_PAGES.find(({ name }) => name === choices.pageName);
  const paper = named ? CUT.page.papers[named.name] : CUT.page.anotherWidth;
  const print = async (on: LayPaper, what: string): Promise<void> => {
    if (!plan) return;
    setFailure(null);
    try {
      const bytes = await startPrint({ kind: 'lay', input, plan, on }).bytes;
      if (bytes) download(bytes, 'application/pdf', `${[file, what].filter((each) => each).join('-')}.pdf`);
      else setFailure('tooLarge');
    } catch {
      setFailure('failed');
    }
  };
  const { page, projector } = choices;
  const isOnPaper = plan !== null && layStrips(plan, page, correction) !== null;
  return (
    <div className="lay-plan">
      <p className="count">
        <b>
          {LAY.found({
            length: formatLength(lay.lengthMm, unit, { withUnit: true }),
            density: Math.round(1000 * lay.density) / 10,
          })}
        </b>
        {price === null
          ? null
          : ` · ${LAY.cost({ cost: ((lay.lengthMm / PRICED_MM[unit]) * price).toFixed(2) })}`}
      </p>
      {lay.cloth.shrinkAlong > 0 || lay.cloth.shrinkAcross > 0 ? <p className="hint">{LAY.shrunk}</p> : null}
      {plan ? (
        <>
          <LayDrawing plan={plan} />
          <div className="actions">
            <button type="button" disabled={isBusy} onClick={() => void print({ form: 'measured' }, '')}>
              {LAY.pdf}
            </button>
            <button
              type="button"
              disabled={isBusy || !isOnPaper}
              onClick={() => void print({ form: 'page', choice: page, correction }, 'full-size')}
            >
              {LAY.roll({ paper })}
            </button>
            <button
              type="button"
              disabled={isBusy || !isProjectorChoice(projector)}
              onClick={() => void print({ form: 'projector', choice: projector }, 'projector')}
            >
              {LAY.projector}
            </button>
            <button
              type="button"
              disabled={isBusy}
              onClick={() =>
                download(
                  laySvg(plan, [client.name, savedDraft.name].join(', '), unit),
                  'image/svg+xml',
                  `${file}.svg`,
                )
              }
            >
              {LAY.svg}
            </button>
          </div>
          <p className="said" aria-live="polite">
            {failure === 'failed' ? CUT.draftingSheet.failed : ''}
            {failure === 'tooLarge' || !isOnPaper ? LAY.tooLarge : ''}
          </p>
        </>
      ) : null}
    </div>
  );
}
