// The wearer's safety, next to where the reduction is set; a high one has to be acknowledged, and that prints.

import { useEffect } from 'react';
import {
  acknowledge,
  changeDraft,
  formatLength,
  isRead,
  SAFETY_CAUTIONS,
  SAFETY_STANDING,
  wantsReading,
} from '../../document';
import { Checkbox } from '../components/Checkbox';
import { arriveAtCautions, CAUTIONS_PLACE } from '../components/cautionsWay';
import { useDraft, useOpen, useStore } from '../store/storeContext';

export function SafetyCard() {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const change = useStore((state) => state.change);
  useEffect(arriveAtCautions, []);
  const unreadIssues = issues.filter(wantsReading);
  const high = unreadIssues.length > 0;
  const acknowledged = unreadIssues.every((issue) => isRead(issue, savedDraft));
  const { waist, underBust } = client.measurements;
  const { ease } = savedDraft.style;
  const written = (mm: number): string => formatLength(mm, client.unit, { withUnit: true });
  return (
    <section
      className={`card safety-card${acknowledged ? '' : ' pressing'}`}
      aria-label="The wearer’s safety"
    >
      <h3 {...CAUTIONS_PLACE}>The wearer’s safety</h3>
      {ease.waist < 0 ? (
        <p>
          The waist is {waist === null ? 'to be ' : ''}taken in by <b>{written(-ease.waist)}</b>
          {waist === null ? '; it is not measured yet' : percentOf(-ease.waist, waist, 'natural waist')}.
        </p>
      ) : (
        <p>The waist is not taken in.</p>
      )}
      {ease.underBust < 0 ? (
        <p>
          The ribs at the under-bust are taken in by <b>{written(-ease.underBust)}</b>
          {underBust === null ? '' : percentOf(-ease.underBust, underBust, 'girth there')}.
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
          I have read the cautions and the wearer knows them. This is printed on the pattern.
        </Checkbox>
      ) : null}
      <details open={high}>
        <summary>Usual cautions for tight lacing</summary>
        <p>{SAFETY_STANDING}</p>
        <ul>
          {SAFETY_CAUTIONS.map(({ text, source }) => (
            <li key={text}>
              {text} <small>({source})</small>
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}

/** ", 6.8 % of the natural waist"; nothing of a girth that cannot be. */
const percentOf = (mm: number, whole: number, name: string): string =>
  whole ? `, ${(Math.round((mm / whole) * 1000) / 10).toFixed(1)} % of the ${name}` : '';
