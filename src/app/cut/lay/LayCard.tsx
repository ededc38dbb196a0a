// The lay plan: the cloth of a layer, the panels on it, and what it takes.

import { useMemo, useState } from 'react';
import { CUT, formatLength, LAY } from '../../../document';
import { MM_PER_INCH } from '../../../engine';
import { isCutOnce, layFaultSentence, laySvg, type PlanInput } from '../../../paper';
import { download } from '../../components/download';
import { fileName } from '../../components/fileName';
import { useOpen } from '../../store/storeContext';
import { refusalOf } from '../choices/usePlanInput';
import { startPrint } from '../print/startPrint';
import { LayDrawing } from './LayDrawing';
import { LayForm } from './LayForm';
import { isOld, keepPlan, type MadePlan, outsideSpan, useLayChoices } from './layChoices';
import { MOST_SECONDS } from './layRequest';
import { useLay } from './useLay';

/** mm of what a price is given for. */
const PRICED_MM = { in: 36 * MM_PER_INCH, cm: 1000 } as const;

export default function LayCard({ input }: { input: PlanInput }) {
  const { client, savedDraft } = useOpen();
  const { unit } = client;
  const { layer, cloths, plans } = useLayChoices();
  const cloth = cloths[layer];
  const { pieces, extras } = input.draft;
  const cut = useMemo(
    () => [...pieces, ...extras].filter((piece) => layer === 'fashion' || !isCutOnce(piece)),
    [pieces, extras, layer],
  );
  const key = JSON.stringify([client.id, savedDraft.id, layer]);
  const made = plans.get(key) ?? null;
  const laying = useLay();
  const [isPrintFailed, setPrintFailed] = useState(false);
  const isBusy = laying.state === 'busy';
  const isRefused = refusalOf(input) !== null || outsideSpan(cloth) !== null;
  const start = (): void =>
    laying.start({ pieces: cut, cloth }, (plan) => keepPlan(key, { plan, pieces: cut, cloth }));
  const name = fileName(client.name, savedDraft.name, 'lay plan', layer);
  const print = async ({ plan }: MadePlan): Promise<void> => {
    setPrintFailed(false);
    try {
      const bytes = await startPrint({ kind: 'lay', input, plan }).bytes;
      if (bytes) download(bytes, 'application/pdf', `${name}.pdf`);
    } catch {
      setPrintFailed(true);
    }
  };
  return (
    <section className="card lay-card" aria-label={LAY.title}>
      <h2>{LAY.title}</h2>
      <p className="hint">{LAY.hint}</p>
      <div className="lay-parts">
        <LayForm
          layer={layer}
          cloth={cloth}
          unit={unit}
          hasStraps={cut.some(({ kind }) => kind === 'strap')}
        />
        <div className="lay-plan">
          <div className="actions">
            {isBusy ? (
              <button type="button" onClick={laying.stop}>
                {LAY.stop}
              </button>
            ) : (
              <button type="button" className="primary" disabled={isRefused} onClick={start}>
                {made ? LAY.again : LAY.start}
              </button>
            )}
            <span className="hint">
              {isBusy ? LAY.working({ seconds: laying.seconds, most: MOST_SECONDS }) : ''}
            </span>
          </div>
          <p className="said" aria-live="polite">
            {laying.state === 'failed' ? LAY.failed : ''}
            {laying.faults.map((fault) => layFaultSentence(fault, cloth, unit)).join(' ')}
          </p>
          {made ? (
            <>
              <p className="count">
                <b>
                  {LAY.found({
                    length: formatLength(made.plan.lengthMm, unit, { withUnit: true }),
                    density: Math.round(1000 * made.plan.density) / 10,
                  })}
                </b>
                {cloth.price === null
                  ? null
                  : ` · ${LAY.cost({ cost: ((made.plan.lengthMm / PRICED_MM[unit]) * cloth.price).toFixed(2) })}`}
              </p>
              {isOld(made, cut, cloth) ? <p className="said">{LAY.old}</p> : null}
              {made.cloth.shrinkAlong > 0 || made.cloth.shrinkAcross > 0 ? (
                <p className="hint">{LAY.shrunk}</p>
              ) : null}
              <LayDrawing plan={made.plan} />
              <div className="actions">
                <button type="button" disabled={isRefused || isBusy} onClick={() => void print(made)}>
                  {LAY.pdf}
                </button>
                <button
                  type="button"
                  disabled={isRefused || isBusy}
                  onClick={() =>
                    download(
                      laySvg(made.plan, [client.name, savedDraft.name].join(', '), unit),
                      'image/svg+xml',
                      `${name}.svg`,
                    )
                  }
                >
                  {LAY.svg}
                </button>
              </div>
              <p className="said" aria-live="polite">
                {isPrintFailed ? CUT.draftingSheet.failed : ''}
              </p>
            </>
          ) : null}
        </div>
      </div>
    </section>
  );
}
