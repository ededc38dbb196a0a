// True: the panels closed up as worn, beside the proof that they will sew together and fit.

import { type ReactNode, useState } from 'react';
import { formatLength, LEVEL_WORDS, pieceLabel, seamName } from '../../document';
import type { ClosedAt, Draft, EdgeRunRow, LedgerRow, SeamWalkRow } from '../../engine';
import { ClosedUp, type PointedOut } from '../../table';
import { IssueList } from '../parts/IssueList';
import { useDraft, useOpen } from '../tableContext';

const HELD: readonly { at: ClosedAt; label: string }[] = [
  { at: 'top', label: 'at the top edge' },
  { at: 'waist', label: 'at the waist' },
  { at: 'hem', label: 'at the hem' },
];

export function TrueStep() {
  const draft = useDraft();
  const [at, setAt] = useState<ClosedAt>('top');
  const [row, setRow] = useState<{ key: string; place: PointedOut } | null>(null);
  // A row that is passed over or has the focus shows its place for as long; a press holds it.
  const [passed, setPassed] = useState<PointedOut | null>(null);
  const point = (key: string, place: PointedOut): void => setRow(row?.key === key ? null : { key, place });
  const pick = (piece: string, edge: number): void => {
    const seam = draft.proof.seams.find(({ a, b }) =>
      [a, b].some((side) => side.piece === piece && side.edge === edge),
    );
    if (seam) setRow({ key: seam.id, place: placeOfSeam(seam) });
  };
  const proof = { draft, chosen: row?.key ?? null, onPoint: point, onPass: setPassed };
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
        <IssueList issues={draft.issues} />
      </section>
      <div className="proofs">
        <SeamWalk {...proof} />
        <EdgeRun {...proof} />
        <GirthProof {...proof} />
      </div>
    </div>
  );
}

interface ProofProps {
  readonly draft: Draft;
  readonly chosen: string | null;
  readonly onPoint: (key: string, place: PointedOut) => void;
  readonly onPass: (place: PointedOut | null) => void;
}

function SeamWalk(proof: ProofProps) {
  const { draft, chosen } = proof;
  const { client } = useOpen();
  const write = (mm: number): string => formatLength(mm, client.unit);
  const differs = (row: SeamWalkRow): boolean => Math.abs(row.lengthA - row.lengthB) > 0.05;
  return (
    <Proof
      title="Seam walk"
      says="Each mate rolled along the other, edge against edge."
      met={!draft.proof.seams.some(differs)}
    >
      <thead>
        <tr>
          <th scope="col">Seam</th>
          <th scope="col">One edge</th>
          <th scope="col">Its mate</th>
          <th scope="col">Differ by</th>
          <th scope="col">Marks moved</th>
        </tr>
      </thead>
      <tbody>
        {draft.proof.seams.map((row) => (
          <tr key={row.id} className={rowClass(chosen === row.id, differs(row))}>
            <th scope="row">
              <PlaceButton {...proof} row={row.id} place={placeOfSeam(row)}>
                {shortSeam(row.id)}
              </PlaceButton>
            </th>
            <td>{write(row.lengthA)}</td>
            <td>{write(row.lengthB)}</td>
            <td>{millimetres(row.lengthA - row.lengthB)}</td>
            <td>{millimetres(row.markDrift)}</td>
          </tr>
        ))}
      </tbody>
    </Proof>
  );
}

const placeOfSeam = ({ a, b }: SeamWalkRow): PointedOut => ({
  kind: 'seam',
  pieces: [a.piece, b.piece],
  edges: [a.edge, b.edge],
});

function EdgeRun(proof: ProofProps) {
  const { draft, chosen } = proof;
  const degrees = (row: EdgeRunRow): number => row.angle * DEGREES;
  const kinked = (row: EdgeRunRow): boolean => Math.abs(row.angle - row.asked) > 0.5 / DEGREES;
  const isCorner = (row: EdgeRunRow): boolean => Math.abs(row.asked - Math.PI) > 0.5 / DEGREES;
  return (
    <Proof
      title="Edge run"
      says="The angle across each seam when it is sewn; 180° runs straight on, unless a corner was wanted."
      met={!draft.proof.edges.some(kinked)}
    >
      <thead>
        <tr>
          <th scope="col">Crossing</th>
          <th scope="col">Top edge</th>
          <th scope="col">Hem</th>
        </tr>
      </thead>
      <tbody>
        {draft.proof.edges
          .filter((row) => row.edge === 'top')
          .map((top) => {
            const hem = draft.proof.edges.find((row) => row.seam === top.seam && row.edge === 'hem');
            const cell = (row: EdgeRunRow | undefined): ReactNode =>
              row ? (
                <PlaceButton
                  {...proof}
                  row={`${row.seam} ${row.edge}`}
                  place={{ kind: 'crossing', piece: row.at.piece, at: row.at.point }}
                >
                  {`${isCorner(row) ? 'corner ' : ''}${degrees(row).toFixed(1)}°`}
                </PlaceButton>
              ) : null;
            return (
              <tr
                key={top.seam}
                className={rowClass(
                  chosen?.startsWith(`${top.seam} `) ?? false,
                  kinked(top) || (hem ? kinked(hem) : false),
                )}
              >
                <th scope="row">{shortSeam(top.seam)}</th>
                <td>{cell(top)}</td>
                <td>{cell(hem)}</td>
              </tr>
            );
          })}
      </tbody>
    </Proof>
  );
}

function GirthProof(proof: ProofProps) {
  const { draft, chosen } = proof;
  const { client } = useOpen();
  const write = (mm: number): string => formatLength(mm, client.unit);
  const off = (row: LedgerRow): number => (row.sewnGirth === null ? 0 : row.sewnGirth - row.targetGirth);
  return (
    <Proof
      title="Girths"
      says="Cloth measured across the finished panels, the lacing gap left out."
      met={!draft.proof.ledger.some((row) => Math.abs(off(row)) > 0.1)}
    >
      <thead>
        <tr>
          <th scope="col">Level</th>
          <th scope="col">Asked</th>
          <th scope="col">Sewn</th>
          <th scope="col">Differ by</th>
        </tr>
      </thead>
      <tbody>
        {draft.proof.ledger.map((row) => (
          <tr key={row.level} className={rowClass(chosen === row.level, Math.abs(off(row)) > 0.1)}>
            <th scope="row">
              <PlaceButton {...proof} row={row.level} place={{ kind: 'level', level: row.level }}>
                {LEVEL_WORDS[row.level]}
              </PlaceButton>
            </th>
            <td>{write(row.targetGirth)}</td>
            <td>{row.sewnGirth === null ? 'not reached' : write(row.sewnGirth)}</td>
            <td>{row.sewnGirth === null ? '' : millimetres(off(row))}</td>
          </tr>
        ))}
      </tbody>
    </Proof>
  );
}

function Proof({
  title,
  says,
  met,
  children,
}: {
  title: string;
  says: string;
  met: boolean;
  children: ReactNode;
}) {
  return (
    <section className="card proof" aria-label={title}>
      <h2>
        {title} <span className={met ? 'met' : 'off'}>{met ? 'holds' : 'look again'}</span>
      </h2>
      <p className="hint">{says}</p>
      <table>{children}</table>
    </section>
  );
}

interface PlaceButtonProps extends ProofProps {
  readonly row: string;
  readonly place: PointedOut;
  readonly children: ReactNode;
}

/** Head of a row: its place is seen while it is passed over or has the focus, and held by a press. */
function PlaceButton({ row, place, chosen, onPoint, onPass, children }: PlaceButtonProps) {
  return (
    <button
      type="button"
      className="row-button"
      aria-pressed={chosen === row}
      onClick={() => onPoint(row, place)}
      onPointerEnter={() => onPass(place)}
      onPointerLeave={() => onPass(null)}
      onFocus={() => onPass(place)}
      onBlur={() => onPass(null)}
    >
      {children}
    </button>
  );
}

const rowClass = (chosen: boolean, off: boolean): string => `${chosen ? 'chosen ' : ''}${off ? 'fails' : ''}`;

/** Degrees in a radian. */
const DEGREES = 180 / Math.PI;

const millimetres = (mm: number): string => `${Math.abs(mm).toFixed(Math.abs(mm) < 0.1 ? 2 : 1)} mm`;

/** "Front 1 + 2": a seam at the head of a row. */
function shortSeam(id: string): string {
  const name = seamName(id)
    .replace(/^the seam of |^the /, '')
    .replace(/^(\w+) (\d+) and \1 (\d+)$/, '$1 $2 + $3');
  return name.charAt(0).toUpperCase() + name.slice(1);
}
