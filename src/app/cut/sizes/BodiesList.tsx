// What holds of each size or person, a row each, a page of them at a time; which of them are printed.

import { useState } from 'react';
import {
  formatLength,
  issueSentence,
  MEASUREMENT_WORDS,
  SIZING,
  type SizeProof,
  type Unit,
} from '../../../document';
import type { Style } from '../../../engine';
import { tick, useSizingChoices, type Whom } from './sizingChoices';
import { AT_ONCE } from './useSizes';

const TEXTS = SIZING.proof;

interface BodiesListProps {
  /** Those that are drafted so far, in the order of the bodies. */
  readonly proofs: readonly SizeProof[];
  /** How many bodies there are. */
  readonly count: number;
  readonly state: 'busy' | 'proved' | 'failed';
  readonly whom: Whom;
  readonly style: Style;
  readonly unit: Unit;
}

export function BodiesList({ proofs, count, state, whom, style, unit }: BodiesListProps) {
  const [asked, setPage] = useState(0);
  const { off } = useSizingChoices();
  const page = Math.min(asked, Math.max(0, Math.ceil(proofs.length / AT_ONCE) - 1));
  if (count === 0) return null;
  const first = page * AT_ONCE;
  const shown = proofs.slice(first, first + AT_ONCE);
  return (
    <div className="bodies">
      <h3>{TEXTS[whom]}</h3>
      <p className="said" aria-live="polite">
        {state === 'busy' ? TEXTS.busy : state === 'failed' ? TEXTS.failed : ''}
      </p>
      {shown.length > 0 ? (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways is reached by keys
        <div className="wide-table" role="region" aria-label={TEXTS[whom]} tabIndex={0}>
          <table>
            <thead>
              <tr>
                <th scope="col">{TEXTS.name[whom]}</th>
                <th scope="col">{TEXTS.measured}</th>
                <th scope="col">{TEXTS.holds}</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((proof) => (
                <tr key={proof.name}>
                  <th scope="row">
                    <label className="tick">
                      <input
                        type="checkbox"
                        checked={proof.canBeCut && !off.includes(proof.name)}
                        disabled={!proof.canBeCut}
                        aria-label={TEXTS.choose({ name: proof.name })}
                        onChange={(event) => tick(proof.name, event.target.checked)}
                      />
                      <span>{proof.name}</span>
                    </label>
                  </th>
                  <td className="lengths">
                    {[proof.measurements.bust, proof.measurements.waist, proof.measurements.hip]
                      .map((mm) => formatLength(mm ?? Number.NaN, unit, { parts: 8 }))
                      .join(' · ')}
                  </td>
                  <td>
                    <Holds proof={proof} style={style} unit={unit} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ) : null}
      {proofs.length > AT_ONCE ? (
        <nav className="pages" aria-label={TEXTS.pages}>
          <button type="button" disabled={page === 0} onClick={() => setPage(page - 1)}>
            {TEXTS.earlier}
          </button>
          <span>{TEXTS.page({ first: first + 1, last: first + shown.length, of: count })}</span>
          <button type="button" disabled={first + AT_ONCE >= proofs.length} onClick={() => setPage(page + 1)}>
            {TEXTS.next}
          </button>
        </nav>
      ) : null}
    </div>
  );
}

function Holds({ proof, style, unit }: { proof: SizeProof; style: Style; unit: Unit }) {
  const context = { unit, style };
  const { canBeCut, missing, errors, warnings, off, seams, crossings, girths } = proof;
  return (
    <>
      {missing.length > 0 ? (
        <p className="off">
          {TEXTS.missing({ names: missing.map((name) => MEASUREMENT_WORDS[name].label) })}
        </p>
      ) : null}
      {errors.map((issue) => (
        <p key={issueSentence(issue, context)} className="off">
          {issueSentence(issue, context)}
        </p>
      ))}
      {off > 0 ? <p className="off">{TEXTS.off({ count: off })}</p> : null}
      {canBeCut && off === 0 ? <p className="met">{TEXTS.counted({ seams, crossings, girths })}</p> : null}
      {warnings.length > 0 ? (
        <details>
          <summary>{TEXTS.remarks({ count: warnings.length })}</summary>
          <ul>
            {warnings.map((issue) => (
              <li key={issueSentence(issue, context)}>{issueSentence(issue, context)}</li>
            ))}
          </ul>
        </details>
      ) : null}
    </>
  );
}
