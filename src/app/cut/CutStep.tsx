// Cut: the panels apart with their allowances, as they will lie on sheets of paper; which paper; the print.

import { useMemo, useState } from 'react';
import { checkPaper, PAPERS, type PaperName, paperChoice, paperSentence } from '../../paper';
import { IssueList } from '../parts/IssueList';
import { useDraft, useOpen } from '../tableContext';
import { AllowanceCard } from './AllowanceCard';
import { FilesCard } from './FilesCard';
import { PlanDrawing } from './PlanDrawing';
import { usePattern } from './usePattern';
import { refusalOf, usePlanInput } from './usePlanInput';

/** What the paper is called in the list; sizes as they are asked for in a shop. */
const PAPER_WORDS: Readonly<Record<PaperName, string>> = {
  A4: 'A4, 210 × 297 mm',
  Letter: 'Letter, 8½ × 11 in',
  Legal: 'Legal, 8½ × 14 in',
  A3: 'A3, 297 × 420 mm',
  Tabloid: 'Tabloid, 11 × 17 in',
};

export function CutStep() {
  const { client } = useOpen();
  const draft = useDraft();
  const [paper, setPaper] = useState<PaperName>(client.unit === 'in' ? 'Letter' : 'A4');
  const choice = useMemo(() => paperChoice(paper), [paper]);
  const checked = checkPaper(choice);
  const input = usePlanInput();
  const { layout, print, printing, failure } = usePattern(input, choice);
  const refusal = refusalOf(input);
  return (
    <div className="cut-step">
      {layout && draft.pieces.length > 0 ? (
        <PlanDrawing layout={layout} />
      ) : (
        <p className="empty">There are no panels to cut yet.</p>
      )}
      <div className="side">
        <section className="card paper-card" aria-label="Paper">
          <h2>Paper</h2>
          <label className="choice">
            <span>Sheets</span>
            <select value={paper} onChange={(event) => setPaper(paperNamed(event.target.value))}>
              {PAPERS.map(({ name }) => (
                <option key={name} value={name}>
                  {PAPER_WORDS[name]}
                </option>
              ))}
            </select>
          </label>
          {checked.ok ? null : <p className="said">{paperSentence(checked.fault, client.unit)}</p>}
          {layout ? (
            <p className="hint">
              {sheetsSaid(layout.sheets.length, layout.grid.orientation)} Print at 100 %, without fitting to
              the page, and measure the square on the first page before cutting.
            </p>
          ) : null}
          <button type="button" className="primary" disabled={refusal !== null || printing} onClick={print}>
            {printing ? 'Making the PDF…' : 'Download the PDF'}
          </button>
          <p className="said" aria-live="polite">
            {failure ?? refusal ?? ''}
          </p>
        </section>
        <FilesCard input={input} />
        <AllowanceCard />
        <IssueList issues={draft.issues} />
      </div>
    </div>
  );
}

const paperNamed = (name: string): PaperName => PAPERS.find((paper) => paper.name === name)?.name ?? 'A4';

const sheetsSaid = (count: number, orientation: string): string =>
  `${count === 1 ? 'One sheet' : `${count} sheets`}, ${orientation}, and a first page with the plan of the sheets.`;
