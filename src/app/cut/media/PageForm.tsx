// The form for a print on one page: a plotter's roll, or a large sheet of the copy shop.

import { CUT, type Unit } from '../../../document';
import { ONE_PAGES, type OnePageLayout, onePageSentence } from '../../../paper';
import { LengthField } from '../../components/fields/LengthField';
import { choose, choosePage, useCutChoices } from '../choices/cutChoices';
import { NapChoice } from '../choices/NapChoice';

export function PageForm({ laid, unit }: { laid: OnePageLayout | null; unit: Unit }) {
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
        <span>{CUT.page.label}</span>
        <select value={pageName} onChange={(event) => choosePage(event.target.value)}>
          {ONE_PAGES.map(({ name }) => (
            <option key={name} value={name}>
              {CUT.page.papers[name]}
            </option>
          ))}
          <option value="own">{CUT.page.anotherWidth}</option>
        </select>
      </label>
      {pageName === 'own' ? length(CUT.page.width, 'widthMm') : null}
      <NapChoice />
      <details>
        <summary>{CUT.page.margin}</summary>
        {length(CUT.page.margin, 'marginMm')}
      </details>
      {laid === null ? null : laid.ok ? (
        <p className="count">
          <b>{CUT.page.size({ width: metres(laid.page.widthMm), height: metres(laid.page.heightMm) })}</b>
          {CUT.page.rest}
        </p>
      ) : (
        <p className="said">{onePageSentence(laid.fault, unit)}</p>
      )}
    </>
  );
}

const metres = (mm: number): string => (mm / 1000).toFixed(2);
