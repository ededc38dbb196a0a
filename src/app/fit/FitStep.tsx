// Fit: the panels closed up as worn, beside the proof that they will sew together and fit.

import { useCallback, useState } from 'react';
import { flushSync } from 'react-dom';
import { alterationsOf, changeFittings, FIT, PROOFS, pieceLabel } from '../../document';
import {
  type AlteredSide,
  type ClosedAt,
  type Draft,
  keyOfSeam,
  type LevelName,
  type Piece,
  rightSideUp,
  type SeamName,
  SIDES,
  type Side,
  seamNameOf,
} from '../../engine';
import { ClosedUp, type EdgePull, type Picked, type PointedOut } from '../../table';
import { today } from '../components/files/formatDay';
import { IssueList } from '../components/IssueList';
import { LaterSection } from '../components/later/LaterSection';
import { lazyPart } from '../components/later/later';
import { NextArrow } from '../components/NextArrow';
import { UnalteredLegend } from '../components/UnalteredLegend';
import { draftOfSide, useCommittedDraft, useDraft, useOpen, useStore } from '../store/storeContext';
import { sayBands } from './bandSaid';
import { withAlterations } from './fittings/forms/withAlterations';
import { type PressedSeam, pressedSeam, pulledAlteration } from './fittings/pressedSeam';
import { Headline } from './Headline';
import { lengthsOn } from './lengthsOn';
import { sayOpenDarts } from './openDarts';
import { PanelWidths } from './PanelWidths';
import { ProofTable } from './ProofTable';
import { edgeContinuity, girthProof, type Pointer, placeOfDart, placeOfSeam, seamWalk } from './proofs';
import { seamMarks } from './seamMarks';

const Fittings = lazyPart(async () => (await import('./fittings/Fittings')).default);
const AsWorn = lazyPart(async () => (await import('../worn/AsWorn')).default);

type FitView = keyof typeof FIT.views.each;

const VIEWS: readonly FitView[] = ['asWorn', 'closedUp'];

/** As long as the page is open the step comes back to the view that was chosen last. */
let lastView: FitView = 'closedUp';

const HELD_AT: readonly ClosedAt[] = ['top', 'waist', 'hem'];

export function FitStep() {
  const draft = useDraft();
  const [at, setAt] = useState<ClosedAt>('top');
  const { client, savedDraft } = useOpen();
  const [row, setRow] = useState<Pick<Pointer, 'key' | 'place'> | null>(null);
  // A row that is passed over or has the focus shows its place for as long; a press holds it.
  const [passed, setPassed] = useState<PointedOut | null>(null);
  const [view, setView] = useState(lastView);
  const choose = (chosen: FitView): void => {
    lastView = chosen;
    setView(chosen);
  };
  const point = (pointer: Pointer): void => {
    // Its place is in the panels closed up.
    choose('closedUp');
    setRow(row?.key === pointer.key ? null : pointer);
  };
  const [pressed, setPressed] = useState<PressedSeam | null>(null);
  const pressSideSeam = ({
    level,
    side,
  }: {
    readonly level: LevelName;
    readonly side: Side | null;
  }): void => {
    const row = draft.proof.seams.find(
      ({ seam }) => seam.kind === 'sideSeam' && (side === null || seam.side === side),
    );
    const seam = row && seamNameOf(row.seam, row);
    if (!seam) return;
    flushSync(() => setPressed({ seam, height: { kind: 'level', level }, side: side ?? 'both' }));
    document.querySelector<HTMLElement>('.pressed-seam button')?.focus();
  };
  // The seam of the form that is open.
  const [formSeam, setFormSeam] = useState<{ readonly seam: SeamName; readonly side: AlteredSide } | null>(
    null,
  );
  const showFormSeam = useCallback(
    (seam: SeamName | null, side: AlteredSide): void => setFormSeam(seam && { seam, side }),
    [],
  );
  const pull = useEdgeAlteration();
  const shownPlace =
    passed ?? (formSeam && placeOfName(formSeam.seam, formSeam.side, draft)) ?? row?.place ?? null;
  const isAltered = alterationsOf(savedDraft.fittings).length > 0;
  const unaltered = isAltered ? draftOfSide(client, { style: savedDraft.style }, null) : null;
  const pick = (picked: Picked): void => {
    setPressed(pressedSeam(draft, picked));
    const { seams, closedDarts } = draft.proof;
    if ('edge' in picked) {
      const row = seams.find(({ a, b }) =>
        [a, b].some((side) => side.piece.id === picked.piece && side.edge === picked.edge),
      );
      if (row) setRow({ key: row.seam.id, place: placeOfSeam(row) });
    } else {
      const row = closedDarts.find(
        ({ seam }) => seam.piece.id === picked.piece && seam.wedge === picked.wedge,
      );
      if (row) setRow({ key: row.seam.id, place: placeOfDart(row) });
    }
  };
  if (draft.pieces.length === 0)
    return (
      <div className="fit-step">
        <p className="empty">{FIT.empty}</p>
        <IssueList issues={draft.issues} />
      </div>
    );
  const { unit } = client;
  const seams = seamWalk(draft, unit, savedDraft.style);
  const crossings = edgeContinuity(draft, savedDraft.style);
  const girths = girthProof(draft, unit, savedDraft.style.closure);
  return (
    <div className="fit-step">
      <ViewChoice view={view} onView={choose} />
      {view === 'asWorn' ? (
        <LaterSection>
          <AsWorn onSideSeam={pressSideSeam} />
        </LaterSection>
      ) : null}
      <section className="as-worn" aria-label={FIT.closedUp.title} hidden={view !== 'closedUp'}>
        <fieldset className="held">
          <legend>{FIT.closedUp.held}</legend>
          {HELD_AT.map((held) => (
            <label key={held}>
              <input type="radio" name="held" checked={at === held} onChange={() => setAt(held)} />
              <span>{FIT.closedUp.heldAt[held]}</span>
            </label>
          ))}
        </fieldset>
        <ClosedUp
          draft={draft}
          at={at}
          pointedOut={shownPlace}
          lengths={lengthsOn(shownPlace, draft, unit)}
          marks={seamMarks(seams)}
          nameOf={pieceLabel}
          onPick={pick}
          unaltered={unaltered ? sameHalves(unaltered, draft) : null}
          pull={pull}
        />
        {unaltered ? <UnalteredLegend /> : null}
        {[...sayOpenDarts(draft.pieces, at), ...sayBands(draft, unit)].map((sentence) => (
          <p key={sentence} className="hint">
            {sentence}
          </p>
        ))}
      </section>
      <div className="proofs">
        <Headline draft={draft} seams={seams} crossings={crossings} girths={girths} unit={unit} />
        <IssueList issues={draft.issues} />
        <LaterSection>
          <Fittings
            key={`${client.id} ${savedDraft.id}`}
            pressed={pressed}
            onSeam={showFormSeam}
            onMade={() => {
              setPressed(null);
              setRow(null);
            }}
          />
        </LaterSection>
        {[seams, crossings, girths].map((proof) => (
          <ProofTable
            key={proof.title}
            proof={proof}
            isOpen={proof === seams}
            chosen={row?.key ?? null}
            onPoint={point}
            onPass={setPassed}
          />
        ))}
        <PanelWidths draft={draft} unit={unit} />
        <p className="next">
          <a href="#cut">
            {PROOFS.next}
            <NextArrow />
          </a>
        </p>
      </div>
    </div>
  );
}

interface ViewChoiceProps {
  readonly view: FitView;
  readonly onView: (view: FitView) => void;
}

function ViewChoice({ view, onView }: ViewChoiceProps) {
  return (
    <fieldset className="held fit-views">
      <legend className="unseen">{FIT.views.label}</legend>
      {VIEWS.map((each) => (
        <label key={each}>
          <input type="radio" name="fit-view" checked={each === view} onChange={() => onView(each)} />
          <span>{FIT.views.each[each]}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** Pulling an edge in the drawing makes an alteration of its seam there, shown in passing until it is let go. */
function useEdgeAlteration(): EdgePull {
  const { client } = useOpen();
  const draft = useCommittedDraft();
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  const pull = (picked: Picked, mm: number): boolean => {
    const alteration = pulledAlteration(draft, picked, mm, client.unit);
    if (!alteration) drop();
    else show((book) => changeFittings(book, (all) => withAlterations(all, [alteration], today())));
    return alteration !== null;
  };
  return {
    onPull: pull,
    onKeep: (picked, mm) => {
      if (pull(picked, mm)) keep({ code: 'alterationAdded', kind: 'seam' });
    },
    onDrop: drop,
  };
}

/** The pieces of a draft by the names they have in another: those of one half stand for either where that has both. */
function sameHalves(before: Draft, now: Draft): readonly Piece[] {
  if (before.halves || !now.halves) return before.pieces;
  return SIDES.flatMap((side) => before.pieces.map((piece) => rightSideUp(side, piece, before.pieces)));
}

/** Where a seam or dart of a name lies, on the half that is meant; null where the draft has none. */
function placeOfName(name: SeamName, side: AlteredSide, { proof }: Draft): PointedOut | null {
  const key = keyOfSeam(name);
  const isNamed = (found: SeamName | null): boolean => found !== null && keyOfSeam(found) === key;
  const isMeant = (half: Side | null): boolean => side === 'both' || half === null || half === side;
  const walk = proof.seams.find((each) => isMeant(each.seam.side) && isNamed(seamNameOf(each.seam, each)));
  const dart = proof.closedDarts.find(({ seam }) => isMeant(seam.side) && isNamed(seamNameOf(seam, null)));
  return walk ? placeOfSeam(walk) : dart ? placeOfDart(dart) : null;
}
