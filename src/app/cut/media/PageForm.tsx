// One page for everything: a plotter's roll, or a large sheet of the copy shop.

import type { Unit } from '../../../document';
import { type LaidOnePage, ONE_PAGES, onePageSentence } from '../../../paper';
import { LengthField } from '../../components/LengthField';
import { choose, choosePage, useCutChoices } from '../choices/cutChoices';
import { NapChoice } from '../choices/NapChoice';

const PAGE_WORDS: Readonly<Record<(typeof ONE_PAGES)[number]['name'], string>> = {
  '36 in roll': 'Roll, 36 in (914 mm) wide',
  '24 in roll': 'Roll, 24 in (610 mm) wide',
  A0: 'A0, 841 × 1189 mm',
};

export function PageForm({ laid, unit }: { laid: LaidOnePage; unit: Unit }) {
  const { page, pageName } = useCutChoices();
  const length = (label: string, field: 'widthMm' | 'marginMm') => (
    <LengthField
      label={label}
      value={page[field]}
      unit={unit}
      onShow={(mm) => choose({ page: { ...page, [field]: mm ?? 0 } })}
      onKeep={() => undefined}
      onDrop={() => undefined}
    />
  );
  return (
    <>
      <label className="choice">
        <span>Page</span>
        <select value={pageName} onChange={(event) => choosePage(event.target.value)}>
          {ONE_PAGES.map(({ name }) => (
            <option key={name} value={name}>
              {PAGE_WORDS[name]}
            </option>
          ))}
          <option value="own">Roll of another width…</option>
        </select>
      </label>
      {pageName === 'own' ? length('Width of the roll', 'widthMm') : null}
      <NapChoice />
      <details>
        <summary>Margin</summary>
        {length('Margin', 'marginMm')}
      </details>
      {laid.ok ? (
        <p className="count">
          <b>{`${metres(laid.page.widthMm)} × ${metres(laid.page.heightMm)} m`}</b>, the squares and all
          panels on it.
        </p>
      ) : (
        <p className="said">{onePageSentence(laid.fault, unit)}</p>
      )}
    </>
  );
}

const metres = (mm: number): string => (mm / 1000).toFixed(2);
