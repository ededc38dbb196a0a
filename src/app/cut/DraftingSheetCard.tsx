// The drafting sheet: this draft as steps to draw by hand.

import { useState } from 'react';
import { checkPaper, type PlanInput, paperChoice, sheetHtml, sheetPdf } from '../../paper';
import { download } from '../components/download';
import { fileName } from '../components/fileName';
import { paperFor, useCutChoices } from './choices/cutChoices';
import { refusalOf } from './choices/usePlanInput';
import { lettered } from './print/withGlyphs';

export function DraftingSheetCard({ input }: { input: PlanInput }) {
  const choices = useCutChoices();
  const { client, savedDraft } = input;
  const [making, setMaking] = useState(false);
  const [failure, setFailure] = useState('');
  const refused = refusalOf(input) !== null;
  const chosen = paperFor(choices, client.unit);
  const paper = checkPaper(chosen).ok ? chosen : paperChoice(client.unit === 'in' ? 'Letter' : 'A4');
  const name = fileName(client.name, savedDraft.name, 'drafting sheet');
  const print = async (): Promise<void> => {
    setMaking(true);
    setFailure('');
    try {
      download(await sheetPdf(await lettered(input), paper), 'application/pdf', `${name}.pdf`);
    } catch {
      setFailure('The PDF could not be made. Nothing in the book has changed; try again.');
    }
    setMaking(false);
  };
  return (
    <section className="card drafting-sheet-card" aria-label="Drafting sheet">
      <h2>Drafting sheet</h2>
      <p className="hint">
        This draft as numbered steps with{' '}
        {client.unit === 'in' ? 'inches to 1/16' : 'centimetres to the millimetre'} and a figure each, to draw
        the same block by hand with ruler and curve.
      </p>
      <div className="actions">
        <button type="button" disabled={refused || making} onClick={() => void print()}>
          {making ? 'Making the PDF…' : 'Download as PDF'}
        </button>
        <button
          type="button"
          disabled={refused}
          onClick={() => download(sheetHtml(input), 'text/html;charset=utf-8', `${name}.html`)}
        >
          Download as web page
        </button>
      </div>
      <p className="said" aria-live="polite">
        {failure}
      </p>
    </section>
  );
}
