// True: the panels closed up as worn, beside the proof that they will sew together and fit.

import { useState } from 'react';
import { pieceLabel } from '../../document';
import type { ClosedAt } from '../../engine';
import { ClosedUp, type Picked, type PointedOut } from '../../table';
import { IssueList } from '../components/IssueList';
import { useDraft, useOpen } from '../store/storeContext';
import { sayBands } from './bandSaid';
import { sayOpenDarts } from './openDarts';
import { ProofTable } from './ProofTable';
import { edgeContinuity, girthProof, type Pointer, placeOfDart, placeOfSeam, seamWalk } from './proofs';

const HELD: readonly { at: ClosedAt; label: string }[] = [
  { at: 'top', label: 'at the top edge' },
  { at: 'waist', label: 'at the waist' },
  { at: 'hem', label: 'at the hem' },
];

export function TrueStep() {
  const draft = useDraft();
  const [at, setAt] = useState<ClosedAt>('top');
  const { client, savedDraft } = useOpen();
  const [row, setRow] = useState<Pick<Pointer, 'key' | 'place'> | null>(null);
  // A row that is passed over or has the focus shows its place for as long; a press holds it.
  const [passed, setPassed] = useState<PointedOut | null>(null);
  const point = (pointer: Pointer): void => setRow(row?.key === pointer.key ? null : pointer);
  const pick = (picked: Picked): void => {
    const { seams, closedDarts } = draft.proof;
    if ('edge' in picked) {
      const seam = seams.find(({ a, b }) =>
        [a, b].some((side) => side.piece === picked.piece && side.edge === picked.edge),
      );
      if (seam) setRow({ key: seam.id, place: placeOfSeam(seam) });
    } else {
      const dart = closedDarts.find(({ piece, wedge }) => piece === picked.piece && wedge === picked.wedge);
      if (dart) setRow({ key: dart.id, place: placeOfDart(dart) });
    }
  };
  if (draft.pieces.length === 0)
    return (
      <div className="true-step">
        <p className="empty">There are no panels to close up yet.</p>
        <IssueList issues={draft.issues} />
      </div>
    );
  return (
    <div className="true-step">
      <section className="as-worn" aria-label="Closed up">
        <fieldset className="held">
          <legend>Seams held together</legend>
          {HELD.map((held) => (
            <label key={held.at}>
              <input type="radio" name="held" checked={at === held.at} onChange={() => setAt(held.at)} />
              <span>{held.label}</span>
            </label>
          ))}
        </fieldset>
        <ClosedUp
          draft={draft}
          at={at}
          pointedOut={passed ?? row?.place ?? null}
          nameOf={pieceLabel}
          onPick={pick}
        />
        {[...sayOpenDarts(draft.pieces, at), ...sayBands(draft, client.unit)].map((sentence) => (
          <p key={sentence} className="hint">
            {sentence}
          </p>
        ))}
        <IssueList issues={draft.issues} />
      </section>
      <div className="proofs">
        {[
          seamWalk(draft, client.unit, savedDraft.style),
          edgeContinuity(draft, savedDraft.style),
          girthProof(draft, client.unit, savedDraft.style.closure),
        ].map((proof) => (
          <ProofTable
            key={proof.title}
            proof={proof}
            chosen={row?.key ?? null}
            onPoint={point}
            onPass={setPassed}
          />
        ))}
      </div>
    </div>
  );
}
