// The garment's own numbers: where it begins and ends, and how it closes.

import { changeStyle, issueSentence, LEVEL_WORDS } from '../../document';
import type { Closure, Style } from '../../engine';
import { LengthField } from '../parts/LengthField';
import { useDraft, useOpen, useTable } from '../tableContext';
import { StyleChoice } from './StyleChoice';

const FRONT: readonly { kind: Closure['front']; label: string }[] = [
  { kind: 'seam', label: 'Seam' },
  { kind: 'fold', label: 'Fold' },
  { kind: 'busk', label: 'Busk' },
];

export function GarmentCard() {
  const { client, sheet } = useOpen();
  const { issues } = useDraft();
  const change = useTable((table) => table.change);
  const show = useTable((table) => table.show);
  const keep = useTable((table) => table.keep);
  const drop = useTable((table) => table.drop);
  const { style } = sheet;
  const remarksAt = (field: string): string[] =>
    issues
      .filter((issue) => issue.at.field === field)
      .map((issue) => issueSentence(issue, { unit: client.unit, style }));
  const length = (
    label: string,
    field: string,
    value: number,
    signed: boolean,
    set: (style: Style, mm: number) => Style,
    hint: string,
  ) => (
    <LengthField
      label={label}
      value={value}
      signed={signed}
      unit={client.unit}
      hint={hint}
      remarks={remarksAt(field)}
      onShow={(mm) => show((book) => changeStyle(book, (before) => set(before, mm ?? 0)))}
      onKeep={() => keep(label.toLowerCase())}
      onDrop={drop}
    />
  );
  const closed = remarksAt('closure.front');
  return (
    <section className="card garment-card" aria-label="Garment">
      <h3>Garment</h3>
      <StyleChoice />
      {length(
        'Top edge',
        'topAbove',
        style.topAbove,
        true,
        (before, mm) => ({ ...before, topAbove: mm }),
        `above the ${LEVEL_WORDS[style.topFrom]} line`,
      )}
      {length(
        'Hem',
        'hemBelow',
        style.hemBelow,
        true,
        (before, mm) => ({ ...before, hemBelow: mm }),
        'below the waist line',
      )}
      {length(
        'Lacing gap',
        'closure.lacingGap',
        style.closure.lacingGap,
        false,
        (before, mm) => ({ ...before, closure: { ...before.closure, lacingGap: mm } }),
        'left open at centre back',
      )}
      <fieldset className="closure">
        <legend>Centre front</legend>
        {FRONT.map(({ kind, label }) => (
          <label key={kind}>
            <input
              type="radio"
              name="front"
              checked={style.closure.front === kind}
              onChange={() =>
                change('centre front', (book) =>
                  changeStyle(book, (before) => ({ ...before, closure: { ...before.closure, front: kind } })),
                )
              }
            />
            <span>{label}</span>
          </label>
        ))}
        <p className="said" aria-live="polite">
          {closed.join(' ')}
        </p>
      </fieldset>
    </section>
  );
}
