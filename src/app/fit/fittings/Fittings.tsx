// Fit, Fittings: the dated list of what fittings change, and the forms that make an alteration.

import { useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import {
  addFitting,
  type Change,
  changeFittings,
  countOutcomes,
  FITTINGS,
  type Fitting,
  heightWords,
  openClient,
  openDraftOf,
  outcomesOf,
  seamTitle,
  setAlteration,
} from '../../../document';
import type { Alteration, AlteredSide, SeamName } from '../../../engine';
import { goToMockup } from '../../components/awaited/awaitedMockup';
import { today } from '../../components/files/formatDay';
import { draftOfSide, useOpen, useStore } from '../../store/storeContext';
import '../../styles/fittings.css';
import { CarryOver } from './CarryOver';
import { DraftNotesPart } from './DraftNotesPart';
import { FittingEntry } from './FittingEntry';
import { girthChanges } from './forms/Consequence';
import { type Open, OpenForm } from './forms/OpenForm';
import { type AlterationKind, seamAt, startOf } from './forms/startAlteration';
import { withAlterations } from './forms/withAlterations';
import type { PressedSeam } from './pressedSeam';

const KINDS: readonly AlterationKind[] = ['seam', 'length', 'edge', 'bustPoint'];

interface FittingsProps {
  readonly pressed: PressedSeam | null;
  /** The seam that the open form alters; null where it alters none. */
  readonly onSeam: (seam: SeamName | null, side: AlteredSide) => void;
  /** An alteration was made or changed: what was pressed before it is done with. */
  readonly onMade: () => void;
}

export default function Fittings({ pressed, onSeam, onMade }: FittingsProps) {
  const { client } = useOpen();
  const kept = useStore((state) => state.history.present);
  const change = useStore((state) => state.change);
  const drop = useStore((state) => state.drop);
  const [open, setOpen] = useState<Open | null>(null);
  const [formKey, setFormKey] = useState(0);
  const adding = useRef<HTMLHeadingElement>(null);
  // Where a form was left the keyboard goes on behind it.
  useEffect(() => {
    if (formKey > 0 && open === null && document.activeElement === document.body) adding.current?.focus();
  }, [open, formKey]);
  const savedDraft = openDraftOf(openClient(kept));
  const { fittings, style } = savedDraft;
  const { unit } = client;
  // What is under way is not in the list yet.
  const draft = draftOfSide(openClient(kept), savedDraft, null);
  const unaltered = draftOfSide(client, { style }, null);
  const outcomes = outcomesOf(fittings, draft);
  const { made, refused } = countOutcomes(outcomes);
  const begin = (next: Open | null): void => {
    setOpen(next);
    setFormKey(formKey + 1);
  };
  const edit = (what: Change, next: (all: readonly Fitting[]) => readonly Fitting[]): void => {
    // The form would show its alteration over another list, and what it shows is not to be kept twice.
    if (open) begin(null);
    drop();
    change(what, (book) => changeFittings(book, next));
  };
  const add = (added: readonly Alteration[]): void => {
    const kind = added[0]?.kind ?? 'seam';
    edit({ code: 'alterationAdded', kind }, (all) => withAlterations(all, added, today()));
    onMade();
  };
  return (
    <section className="fittings" aria-labelledby="fittings-title">
      <h3 id="fittings-title">{FITTINGS.title}</h3>
      <p className="hint">{FITTINGS.intro}</p>
      <p className="fitting-begins">
        <button type="button" onClick={goToMockup}>
          {FITTINGS.printMockup}
        </button>
        <button
          type="button"
          onClick={() => {
            flushSync(() => edit({ code: 'fittingAdded' }, (all) => addFitting(all, today())));
            // In a long list it stands far below the button.
            adding.current?.parentElement?.scrollIntoView?.({ block: 'nearest' });
          }}
        >
          {FITTINGS.newFitting}
        </button>
      </p>
      {fittings.length === 0 ? (
        <p>{FITTINGS.none}</p>
      ) : (
        <p role="status">
          {fittings.some(({ alterations }) => alterations.length > 0)
            ? FITTINGS.sum({ count: made, refused })
            : null}{' '}
          {made > 0 ? girthChanges(unaltered, draft, unit, fittings) : null}
        </p>
      )}
      {fittings.map((fitting, i) => (
        <FittingEntry
          // biome-ignore lint/suspicious/noArrayIndexKey: a fitting is told by its place in the list
          key={i}
          fitting={fitting}
          index={i}
          ofDay={ofDay(fittings, i)}
          outcomes={outcomes.filter((each) => each.fitting === i)}
          style={style}
          unit={unit}
          onChange={edit}
          onEdit={(alteration) => {
            const start = fitting.alterations[alteration];
            if (start) begin({ kind: 'change', fitting: i, alteration, start });
          }}
        />
      ))}
      {pressed ? (
        <p className="pressed-seam">
          <span>
            {FITTINGS.pressed({
              seam: seamTitle(pressed.seam, style),
              side: pressed.side,
              height: heightWords(pressed.height, unit),
            })}
          </span>
          <button
            type="button"
            onClick={() =>
              begin({
                kind: 'new',
                start: { ...seamAt(pressed.seam, pressed.height, 0), side: pressed.side },
              })
            }
          >
            {FITTINGS.alterHere}
          </button>
        </p>
      ) : null}
      {open === null ? (
        <div className="add-alteration">
          <h4 ref={adding} tabIndex={-1}>
            {FITTINGS.add}
          </h4>
          <p>
            {KINDS.map((kind) => (
              <button
                key={kind}
                type="button"
                onClick={() => begin({ kind: 'new', start: startOf(kind, draft, style) })}
              >
                {FITTINGS.kinds[kind]}
              </button>
            ))}
            {(['gaps', 'seen'] as const).map((kind) => (
              <button key={kind} type="button" onClick={() => begin({ kind })}>
                {FITTINGS.kinds[kind]}
              </button>
            ))}
          </p>
        </div>
      ) : null}
      {open ? (
        <OpenForm
          key={formKey}
          open={open}
          draft={draft}
          unaltered={unaltered}
          fittings={fittings}
          style={style}
          unit={unit}
          onMake={add}
          onSet={(fitting, alteration, next) => {
            edit({ code: 'alterationSet', kind: next.kind }, (all) =>
              setAlteration(all, fitting, alteration, next),
            );
            onMade();
          }}
          onSeam={onSeam}
          onBegin={begin}
        />
      ) : null}
      <CarryOver />
      <DraftNotesPart />
    </section>
  );
}

/** Which of the fittings of its day the one at an index is, from 1; null where it is the only one. */
function ofDay(fittings: readonly Fitting[], index: number): number | null {
  const isSame = ({ date }: Fitting): boolean => date === fittings[index]?.date;
  return fittings.filter(isSame).length > 1 ? fittings.slice(0, index + 1).filter(isSame).length : null;
}
