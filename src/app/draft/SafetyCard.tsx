// The wearer's safety, next to where the reduction is set; a high one has to be acknowledged, and that prints.

import { useEffect } from 'react';
import {
  acknowledge,
  changeDraft,
  DRAFT,
  formatLength,
  isRead,
  percentOf,
  SAFETY_CAUTIONS,
  SAFETY_STANDING,
  wantsReading,
} from '../../document';
import { arriveAtCautions, CAUTIONS_PLACE } from '../components/awaited/awaitedFocus';
import { Checkbox } from '../components/fields/Checkbox';
import { waistAlteredBy } from '../components/girthWords';
import { useDraft, useOpen, useStore } from '../store/storeContext';

const TEXTS = DRAFT.safety;

export function SafetyCard() {
  const { client, savedDraft } = useOpen();
  const draft = useDraft();
  const { issues } = draft;
  const change = useStore((state) => state.change);
  useEffect(arriveAtCautions, []);
  const unreadIssues = issues.filter(wantsReading);
  const high = unreadIssues.length > 0;
  const acknowledged = unreadIssues.every((issue) => isRead(issue, savedDraft));
  const { waist, underBust } = client.measurements;
  const { ease } = savedDraft.style;
  const written = (mm: number): string => formatLength(mm, client.unit, { withUnit: true });
  const alteredBy = waistAlteredBy(draft);
  const isAltered = alteredBy !== 0 && (ease.waist < 0 || ease.waist + alteredBy < 0);
  return (
    <section className={`safety-card${acknowledged ? '' : ' pressing'}`} aria-label={TEXTS.title}>
      <h3 {...CAUTIONS_PLACE}>{TEXTS.title}</h3>
      {ease.waist < 0 ? (
        <p>
          {waist === null ? TEXTS.unmeasuredWaistTakenIn : TEXTS.waistTakenIn} <b>{written(-ease.waist)}</b>
          {waist === null
            ? TEXTS.afterUnmeasuredWaist
            : TEXTS.afterWaist({ percent: percentOf(-ease.waist, waist) })}
        </p>
      ) : (
        <p>{TEXTS.waistNotTakenIn}</p>
      )}
      {isAltered ? (
        <p>
          {ease.waist + alteredBy < 0 ? (
            <>
              {TEXTS.waistAltered} <b>{written(-ease.waist - alteredBy)}</b>
              {TEXTS.afterWaist({ percent: percentOf(-ease.waist - alteredBy, waist) })}
            </>
          ) : (
            TEXTS.waistAlteredAway
          )}
        </p>
      ) : null}
      <p className="hint">{TEXTS.howTyped}</p>
      {ease.underBust < 0 ? (
        <p>
          {TEXTS.ribsTakenIn} <b>{written(-ease.underBust)}</b>
          {TEXTS.afterRibs({ percent: percentOf(-ease.underBust, underBust) })}
        </p>
      ) : null}
      {high ? (
        <Checkbox
          on={acknowledged}
          onSet={(read) =>
            change({ code: 'cautionAcknowledged' }, (book) =>
              changeDraft(book, (open) => acknowledge(open, read)),
            )
          }
        >
          {TEXTS.acknowledged}
        </Checkbox>
      ) : null}
      <details open={high}>
        <summary>{TEXTS.cautions}</summary>
        <p>{SAFETY_STANDING}</p>
        <ul>
          {SAFETY_CAUTIONS.map(({ text }) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
