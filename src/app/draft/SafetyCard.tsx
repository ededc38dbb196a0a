// The wearer's safety, next to where the reduction is set; a high one has to be acknowledged, and that prints.

import { changeSheet, formatLength, SAFETY_CAUTIONS, SAFETY_STANDING } from '../../document';
import { Tick } from '../parts/Tick';
import { useDraft, useOpen, useTable } from '../tableContext';

export function SafetyCard() {
  const { client, sheet } = useOpen();
  const { issues } = useDraft();
  const change = useTable((table) => table.change);
  const high = issues.some((issue) => issue.code === 'waistReductionHigh');
  const { waist } = client.measurements;
  const reduction = -sheet.style.ease.waist;
  const acknowledged = isAcknowledged(sheet.acknowledgedReduction, reduction);
  return (
    <section
      className={`card safety-card${high && !acknowledged ? ' pressing' : ''}`}
      aria-label="The wearer’s safety"
    >
      <h3>The wearer’s safety</h3>
      {reduction > 0 ? (
        <p>
          The waist is {waist === null ? 'to be ' : ''}taken in by{' '}
          <b>{formatLength(reduction, client.unit, { withUnit: true })}</b>
          {waist === null ? '; it is not measured yet' : percentOf(reduction, waist)}.
        </p>
      ) : (
        <p>The waist is not taken in.</p>
      )}
      {high ? (
        <Tick
          on={acknowledged}
          onSet={(read) =>
            change('acknowledged the caution', (book) =>
              changeSheet(book, (open) => ({ ...open, acknowledgedReduction: read ? reduction : null })),
            )
          }
        >
          I have read the cautions and the wearer knows them. This is printed on the pattern.
        </Tick>
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

/** An acknowledgement holds up to the reduction it was given for. mm */
export const isAcknowledged = (acknowledged: number | null, reduction: number): boolean =>
  acknowledged !== null && reduction <= acknowledged + 0.05;

/** ", 6.8 % of the natural waist"; nothing of a waist that cannot be. */
const percentOf = (mm: number, whole: number): string =>
  whole ? `, ${(Math.round((mm / whole) * 1000) / 10).toFixed(1)} % of the natural waist` : '';
