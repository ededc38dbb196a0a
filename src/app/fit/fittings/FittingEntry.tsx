// One fitting: its day, its note and its alterations in words, each switched on or off.

import { useState } from 'react';
import {
  ALTERATION_REFUSED,
  alterationWords,
  type Change,
  FITTINGS,
  type Fitting,
  type FittingOutcome,
  type KeptAlteration,
  removeAlteration,
  removeFitting,
  setFitting,
  switchAlteration,
  type Unit,
} from '../../../document';
import type { Style } from '../../../engine';
import { Checkbox } from '../../components/fields/Checkbox';
import { formatDay } from '../../components/files/formatDay';

interface FittingEntryProps {
  readonly fitting: Fitting;
  readonly index: number;
  /** Which of several of its day it is, from 1; null where it is the only one. */
  readonly ofDay: number | null;
  /** What became of its alterations, in their order. */
  readonly outcomes: readonly FittingOutcome[];
  readonly style: Style;
  readonly unit: Unit;
  readonly onChange: (what: Change, change: (fittings: readonly Fitting[]) => readonly Fitting[]) => void;
  readonly onEdit: (alteration: number) => void;
}

export function FittingEntry(props: FittingEntryProps) {
  const { fitting, index, ofDay, outcomes, style, unit, onChange, onEdit } = props;
  const day =
    ofDay === null
      ? formatDay(fitting.date)
      : FITTINGS.sameDay({ day: formatDay(fitting.date), number: ofDay });
  return (
    <section className="fitting" aria-label={FITTINGS.day({ day })}>
      <header>
        <h4>{FITTINGS.day({ day })}</h4>
        {fitting.alterations.length > 0 ? (
          <Checkbox
            on={fitting.on}
            onSet={(on) => onChange({ code: 'fittingSwitched', on }, (all) => setFitting(all, index, { on }))}
          >
            {FITTINGS.inForce}
          </Checkbox>
        ) : null}
      </header>
      <ul className="alterations">
        {fitting.alterations.map((alteration, i) => (
          <AlterationEntry
            // biome-ignore lint/suspicious/noArrayIndexKey: an alteration is told by its place in the list
            key={i}
            alteration={alteration}
            isOn={fitting.on && alteration.on}
            outcome={outcomes[i]}
            words={alterationWords(alteration, { unit, style })}
            onSwitch={(on) =>
              onChange({ code: 'alterationSwitched', kind: alteration.kind, on }, (all) =>
                switchAlteration(all, index, i, on),
              )
            }
            onEdit={() => onEdit(i)}
            onRemove={() =>
              onChange({ code: 'alterationRemoved', kind: alteration.kind }, (all) =>
                removeAlteration(all, index, i),
              )
            }
          />
        ))}
      </ul>
      {fitting.alterations.length === 0 ? <p className="hint">{FITTINGS.empty}</p> : null}
      <details>
        <summary>{FITTINGS.dayAndNote}</summary>
        <label className="fitting-day">
          <span>{FITTINGS.date}</span>
          <input
            type="date"
            aria-label={FITTINGS.dateOf({ day })}
            value={fitting.date}
            onChange={({ target }) => {
              const date = target.value;
              if (date) onChange({ code: 'fittingDated' }, (all) => setFitting(all, index, { date }));
            }}
          />
        </label>
        <NoteField
          label={FITTINGS.noteOf({ day })}
          value={fitting.note}
          onKeep={(note) => onChange({ code: 'fittingNoted' }, (all) => setFitting(all, index, { note }))}
        />
        <button
          type="button"
          aria-label={FITTINGS.removeFittingOf({ day })}
          onClick={() => onChange({ code: 'fittingRemoved' }, (all) => removeFitting(all, index))}
        >
          {FITTINGS.removeFitting}
        </button>
      </details>
    </section>
  );
}

interface AlterationEntryProps {
  readonly alteration: KeptAlteration;
  readonly isOn: boolean;
  readonly outcome: FittingOutcome | undefined;
  readonly words: string;
  readonly onSwitch: (on: boolean) => void;
  readonly onEdit: () => void;
  readonly onRemove: () => void;
}

function AlterationEntry(props: AlterationEntryProps) {
  const { alteration, isOn, outcome, words, onSwitch, onEdit, onRemove } = props;
  const refused =
    isOn && outcome && !outcome.applied && outcome.code ? ALTERATION_REFUSED[outcome.code] : null;
  return (
    <li className={refused ? 'refused' : isOn ? undefined : 'left-out'}>
      <Checkbox on={alteration.on} onSet={onSwitch}>
        {words}
      </Checkbox>
      <span className="alteration-ends">
        <button
          type="button"
          className="row-button"
          aria-label={FITTINGS.changeOf({ what: words })}
          onClick={onEdit}
        >
          {FITTINGS.change}
        </button>
        <button
          type="button"
          className="row-button"
          aria-label={FITTINGS.removeOf({ what: words })}
          onClick={onRemove}
        >
          {FITTINGS.remove}
        </button>
      </span>
      {refused ? <p className="said off">{refused}</p> : null}
    </li>
  );
}

interface NoteFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onKeep: (value: string) => void;
}

/** A text of some lines; it is kept when the field is left. */
function NoteField({ label, value, onKeep }: NoteFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <label className="note-field">
      <span>{FITTINGS.note}</span>
      <textarea
        rows={3}
        maxLength={MOST_LETTERS}
        aria-label={label}
        value={typed ?? value}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={() => {
          if (typed !== null && typed !== value) onKeep(typed);
          setTyped(null);
        }}
      />
    </label>
  );
}

/** The longest note that is kept. */
const MOST_LETTERS = 2000;
