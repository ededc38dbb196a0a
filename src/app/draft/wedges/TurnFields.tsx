// Turning intake about the bust point: so much of this wedge, at a level, to another wedge at the same angle.

import { useState } from 'react';
import {
  changeStyle,
  formatLength,
  LEVEL_WORDS,
  turnIntakeTo,
  WEDGE_CARDS,
  wedgeNameOf,
  wedgePhrase,
  wedgePlaceOf,
} from '../../../document';
import { type DraftedWedge, inches, type LevelName, turnIntake } from '../../../engine';
import { LengthField } from '../../components/fields/LengthField';
import { useDraft, useKeptStyle, useOpen, useStore } from '../../store/storeContext';

const TEXTS = WEDGE_CARDS.turn;

/** What is proposed at first: an inch, or a like measure of the other tape. */
const PROPOSED = { in: inches(1), cm: 25 } as const;

export function TurnFields({ wedge }: { wedge: DraftedWedge }) {
  const { client } = useOpen();
  const kept = useKeptStyle();
  const { levels, blocks } = useDraft();
  const change = useStore((state) => state.change);
  const others = blocks?.front.wedges.filter(({ id }) => id !== wedge.id) ?? [];
  const places = levels.filter(({ name }) => name !== 'bust').map(({ name }) => name);
  const [asked, setAsked] = useState<number>(PROPOSED[client.unit]);
  const [from, setFrom] = useState<LevelName>('waist');
  const [to, setTo] = useState<{ wedge: string; level: LevelName }>({ wedge: '', level: 'waist' });
  const [shown, setShown] = useState<number | null>(null);
  const first = others[0];
  if (!first || !blocks) return null;
  const target = others.find(({ id }) => id === to.wedge) ?? first;
  const turn = {
    from: { wedge: wedge.id, level: from },
    to: { wedge: target.id, level: to.level },
    width: shown ?? asked,
  };
  const turned = turnIntake(blocks.front, levels, turn);
  const there = wedge.intake.get(from) ?? 0;
  const write = (mm: number): string => formatLength(mm, client.unit, { withUnit: true });
  const degrees = Math.round((1800 * (turned?.angleRad ?? 0)) / Math.PI) / 10;
  const level = (label: string, value: LevelName, set: (next: LevelName) => void) => (
    <select
      aria-label={label}
      value={value}
      onChange={(event) => {
        const next = places.find((each) => each === event.target.value);
        if (next) set(next);
      }}
    >
      {places.map((name) => (
        <option key={name} value={name}>
          {LEVEL_WORDS[name]}
        </option>
      ))}
    </select>
  );
  return (
    <div className="cup-fields">
      <span className="hint">{TEXTS.turn}</span>
      <LengthField
        compact={true}
        label={TEXTS.intake}
        span={[1, 300]}
        value={asked}
        unit={client.unit}
        onShow={(mm) => setShown(mm)}
        onKeep={() => {
          setAsked(shown ?? asked);
          setShown(null);
        }}
        onDrop={() => setShown(null)}
      />
      <span className="hint">{TEXTS.ofIt}</span>
      {level(TEXTS.fromLevel, from, setFrom)}
      <span className="hint">{TEXTS.toThe}</span>
      <select
        aria-label={TEXTS.toWedge}
        value={target.id}
        onChange={(event) => setTo({ ...to, wedge: event.target.value })}
      >
        {others.map(({ id }) => (
          <option key={id} value={id}>
            {wedgeNameOf(id, kept)}
          </option>
        ))}
      </select>
      <span className="hint">{TEXTS.atThe}</span>
      {level(TEXTS.toLevel, to.level, (next) => setTo({ wedge: target.id, level: next }))}
      <button
        type="button"
        className="quiet"
        disabled={!turned}
        onClick={() =>
          change({ code: 'intakeTurned', wedge: wedgePlaceOf(wedge.id, kept) }, (book) =>
            changeStyle(book, (style) => turnIntakeTo(style, blocks.front, levels, turn)),
          )
        }
      >
        {TEXTS.done}
      </button>
      <span className="hint" role="status">
        {turned
          ? TEXTS.turned({ degrees, intake: write(turned.width) })
          : there < turn.width
            ? TEXTS.takesOnly({ level: from, intake: write(Math.max(0, there)) })
            : TEXTS.notReached({ wedge: wedgePhrase(wedgePlaceOf(target.id, kept)), level: to.level })}
      </span>
    </div>
  );
}
