// Which sheets, and how they lie over each other.

import type { Unit } from '../../../document';
import { checkPaper, type Layout, PAPERS, type PaperChoice, paperSentence } from '../../../paper';
import { LengthField } from '../../components/LengthField';
import { ChoiceRow } from '../choices/ChoiceRow';
import { changePaper, choosePaper, correctionOf, useCutChoices } from '../choices/cutChoices';
import { NapChoice } from '../choices/NapChoice';

/** What the paper is called in the list; sizes as they are asked for in a shop. */
const PAPER_WORDS: Readonly<Record<(typeof PAPERS)[number]['name'], string>> = {
  A4: 'A4, 210 × 297 mm',
  Letter: 'Letter, 8½ × 11 in',
  Legal: 'Legal, 8½ × 14 in',
  A3: 'A3, 297 × 420 mm',
  Tabloid: 'Tabloid, 11 × 17 in',
  A0: 'A0, 841 × 1189 mm',
};

const WAYS: readonly { value: PaperChoice['orientation']; label: string }[] = [
  { value: 'fewest', label: 'Fewest sheets' },
  { value: 'portrait', label: 'Portrait' },
  { value: 'landscape', label: 'Landscape' },
];

interface SheetsFormProps {
  readonly paper: PaperChoice;
  readonly unit: Unit;
  readonly layout: Layout | null;
  readonly leftOut: number;
}

export function SheetsForm({ paper, unit, layout, leftOut }: SheetsFormProps) {
  const choices = useCutChoices();
  const own = choices.paperName === 'own';
  const checked = checkPaper(paper, correctionOf(choices));
  const length = (label: string, field: 'widthMm' | 'heightMm' | 'marginMm' | 'overlapMm') => (
    <LengthField
      label={label}
      value={paper[field]}
      unit={unit}
      onShow={(mm) => changePaper(paper, { [field]: mm ?? 0 })}
      onKeep={() => undefined}
      onDrop={() => undefined}
    />
  );
  return (
    <>
      <label className="choice">
        <span>Sheets</span>
        <select value={own ? 'own' : paper.name} onChange={(event) => choosePaper(event.target.value, paper)}>
          {PAPERS.map(({ name }) => (
            <option key={name} value={name}>
              {PAPER_WORDS[name]}
            </option>
          ))}
          <option value="own">Another size…</option>
        </select>
      </label>
      {own ? (
        <>
          {length('Width', 'widthMm')}
          {length('Height', 'heightMm')}
        </>
      ) : null}
      <ChoiceRow
        legend="Which way round the sheets lie"
        name="way-up"
        choices={WAYS}
        value={paper.orientation}
        onChange={(orientation) => changePaper(paper, { orientation })}
      />
      <NapChoice />
      <details>
        <summary>Margin and overlap</summary>
        {length('Margin', 'marginMm')}
        {length('Overlap', 'overlapMm')}
      </details>
      {checked.ok ? null : <p className="said">{paperSentence(checked.fault, unit)}</p>}
      {layout && layout.sheets.length > 0 ? (
        <p className="count">
          <b>{sheetsSaid(layout.sheets.length - leftOut)}</b>
          {leftOut > 0 ? ` of ${layout.sheets.length}` : ''}, {layout.grid.orientation}, and a first page with
          the plan of the sheets.
        </p>
      ) : null}
    </>
  );
}

const sheetsSaid = (count: number): string =>
  count === 0 ? 'No sheet' : count === 1 ? 'One sheet' : `${count} sheets`;
