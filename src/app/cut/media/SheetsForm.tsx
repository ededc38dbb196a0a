// The form for a print on sheets: which paper, and how the sheets lie over each other.

import { CUT, type Unit } from '../../../document';
import { checkPaper, type Layout, PAPERS, type PaperChoice, paperSentence } from '../../../paper';
import { LengthField } from '../../components/fields/LengthField';
import { ChoiceRow } from '../choices/ChoiceRow';
import { changePaper, choosePaper, correctionOf, useCutChoices } from '../choices/cutChoices';
import { NapChoice } from '../choices/NapChoice';

const ORIENTATIONS = (['fewest', 'portrait', 'landscape'] as const).map((value) => ({
  value,
  label: CUT.sheets.orientations[value],
}));

interface SheetsFormProps {
  readonly paper: PaperChoice;
  readonly unit: Unit;
  readonly layout: Layout | null;
  /** The paper holds the whole pattern, so that nothing is joined. */
  readonly isWhole: boolean;
  /** How many of the sheets are not printed. */
  readonly leftOut: number;
}

export function SheetsForm({ paper, unit, layout, isWhole, leftOut }: SheetsFormProps) {
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
        <span>{CUT.sheets.label}</span>
        <select value={own ? 'own' : paper.name} onChange={(event) => choosePaper(event.target.value, paper)}>
          {PAPERS.map(({ name }) => (
            <option key={name} value={name}>
              {CUT.sheets.papers[name]}
            </option>
          ))}
          <option value="own">{CUT.sheets.anotherSize}</option>
        </select>
      </label>
      {own ? (
        <>
          {length(CUT.sheets.width, 'widthMm')}
          {length(CUT.sheets.height, 'heightMm')}
        </>
      ) : null}
      <ChoiceRow
        legend={CUT.sheets.orientation}
        name="way-up"
        choices={ORIENTATIONS}
        value={paper.orientation}
        onChange={(orientation) => changePaper(paper, { orientation })}
      />
      <NapChoice />
      <details>
        <summary>{CUT.sheets.marginAndOverlap}</summary>
        {length(CUT.sheets.margin, 'marginMm')}
        {length(CUT.sheets.overlap, 'overlapMm')}
      </details>
      {checked.ok ? null : <p className="said">{paperSentence(checked.fault, unit)}</p>}
      {layout && layout.sheets.length > 0 ? (
        <p className="count">
          <b>{CUT.sheets.count({ printed: layout.sheets.length - leftOut })}</b>
          {leftOut > 0
            ? CUT.sheets.rest.some[layout.grid.orientation]({ of: layout.sheets.length })
            : CUT.sheets.rest.all[layout.grid.orientation]}
        </p>
      ) : null}
      {isWhole ? <p className="count">{CUT.sheets.whole}</p> : null}
    </>
  );
}
