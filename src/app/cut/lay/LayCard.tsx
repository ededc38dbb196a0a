// The lay plan: the cloth of a layer, the panels on it, and what it takes.

import { useEffect, useMemo } from 'react';
import { type KeptLay, keepLay, LAY } from '../../../document';
import { type LayPlan, layFaultSentence, type PlanInput, placesOf, planAgain, sumOf } from '../../../paper';
import { fileName } from '../../components/files/fileName';
import { useOpen, useStore } from '../../store/storeContext';
import { makingFor, useMakingChoices } from '../choices/makingChoices';
import { refusalOf } from '../choices/usePlanInput';
import { LayForm } from './LayForm';
import { LayResult } from './LayResult';
import { clothFor, isOtherCloth, outsideSpan, setCloth, showPlan, useLayChoices } from './layChoices';
import { MOST_SECONDS } from './layRequest';
import { askedOn, type ClothDraft } from './piecesOnCloth';
import { useLay } from './useLay';
import { useOthers } from './useOthers';

/** While it is searched for, a shorter plan is kept at most once in so long, and first when that which came at once is drawn. */
const [KEEP_MS, FIRST_KEEP_MS] = [3000, 500];

export default function LayCard({ input }: { input: PlanInput }) {
  const { book, client, savedDraft } = useOpen();
  const follow = useStore((state) => state.follow);
  const { unit } = client;
  const choices = useLayChoices();
  const { layer } = choices;
  const { settings } = useMakingChoices();
  const key = JSON.stringify([client.id, savedDraft.id, layer]);
  const kept = savedDraft.lays?.find((each) => each.layer === layer) ?? null;
  const cloth = clothFor(choices, key, layer, kept, Math.max(1, makingFor({ settings }, unit)[layer]));
  const { pieces, extras } = input.draft;
  const own = useMemo(
    (): ClothDraft => ({
      name: LAY.others.name({ client: client.name, draft: savedDraft.name }),
      pieces: [...pieces, ...extras],
    }),
    [client.name, savedDraft.name, pieces, extras],
  );
  const others = useOthers(book, cloth.others);
  const othersOfKept = useOthers(book, kept?.cloth.others ?? cloth.others);
  const asked = useMemo(() => askedOn([own, ...others], cloth, layer), [own, others, cloth, layer]);
  const askedThen = useMemo(
    () =>
      kept && outsideSpan(kept.cloth) === null ? askedOn([own, ...othersOfKept], kept.cloth, layer) : null,
    [kept, own, othersOfKept, layer],
  );
  const isSame = useMemo(
    () => askedThen !== null && sumOf(askedThen) === kept?.madeOf,
    [askedThen, kept?.madeOf],
  );
  const laying = useLay();
  const isBusy = laying.state === 'busy';
  const inMemory = choices.plans.get(key);
  const made = inMemory && (isBusy || inMemory.lay === kept) ? inMemory : null;
  const lay = made?.lay ?? kept;
  const isMade = made !== null;
  const again = useMemo(
    () => (!isMade && isSame && kept && askedThen ? planAgain(askedThen, kept.cloth, kept.placed) : null),
    [isMade, isSame, kept, askedThen],
  );
  const plan = made?.plan ?? again;
  const isOld = lay !== null && (isOtherCloth(lay.cloth, cloth) || (!isBusy && !isSame));
  const isRefused =
    refusalOf(input) !== null || outsideSpan(cloth) !== null || others.some(({ fault }) => fault !== null);

  // The search is for one draft and layer: where another is shown it ends.
  const { stop } = laying;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it stops when the draft or the layer is another
  useEffect(() => () => stop(), [key]);

  const start = (): void => {
    let last: { readonly lay: KeptLay; readonly isKept: boolean } | null = null;
    let keepFrom = performance.now() + FIRST_KEEP_MS;
    const keep = (next: KeptLay): void => {
      follow((history) =>
        keepLay(history, { client: client.id, draft: savedDraft.id }, next, new Date().toISOString()),
      );
      last = { lay: next, isKept: true };
      keepFrom = performance.now() + KEEP_MS;
    };
    const onPlan = (found: LayPlan): void => {
      const next: KeptLay = {
        layer,
        cloth,
        madeOf,
        lengthMm: found.lengthMm,
        density: found.density,
        placed: placesOf(found),
      };
      showPlan(key, { plan: found, lay: next });
      last = { lay: next, isKept: false };
      if (performance.now() > keepFrom) keep(next);
    };
    laying.start({ asked, cloth }, onPlan, () => {
      if (last && !last.isKept) keep(last.lay);
    });
    // The worker is asked before, so that it works meanwhile.
    const madeOf = sumOf(asked);
  };
  return (
    <section
      className="card lay-card"
      aria-label={LAY.title}
      onPointerEnter={laying.prepare}
      onFocus={laying.prepare}
    >
      <h2>{LAY.title}</h2>
      <p className="hint">{LAY.hint}</p>
      <LayForm
        layer={layer}
        cloth={cloth}
        unit={unit}
        own={own}
        others={others}
        onSet={(next) => setCloth(key, layer, next)}
      />
      <div className="lay-work">
        <div className="actions">
          {isBusy ? (
            <button type="button" onClick={stop}>
              {LAY.stop}
            </button>
          ) : (
            <button type="button" className="primary" disabled={isRefused} onClick={start}>
              {lay ? (isOld ? LAY.anew : LAY.again) : LAY.start}
            </button>
          )}
          {isBusy ? (
            <>
              <progress aria-label={LAY.progress} max={MOST_SECONDS} value={laying.seconds} />
              <span className="hint">{LAY.working({ seconds: laying.seconds, most: MOST_SECONDS })}</span>
            </>
          ) : null}
          {isOld && !isBusy ? (
            <b className="lay-old">{plan ? LAY.old : [LAY.old, LAY.notDrawn].join(' ')}</b>
          ) : null}
        </div>
        <p className="said" aria-live="polite">
          {laying.state === 'failed' ? LAY.failed : ''}
          {laying.faults.map((fault) => layFaultSentence(fault, cloth, unit)).join(' ')}
        </p>
        {lay ? (
          <LayResult
            lay={lay}
            plan={plan}
            price={cloth.price}
            input={input}
            isBusy={isBusy || isRefused}
            file={fileName(client.name, savedDraft.name, 'lay plan', layer)}
          />
        ) : null}
      </div>
    </section>
  );
}
