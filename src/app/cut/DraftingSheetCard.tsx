// The card of the drafting sheet: the draft as steps to draw by hand, as a PDF or as a web page.

import { useState } from 'react';
import { CUT } from '../../document';
import { checkPaper, draftingSheetHtml, type PlanInput, paperChoice } from '../../paper';
import { download } from '../components/files/download';
import { fileName } from '../components/files/fileName';
import { paperFor, useCutChoices } from './choices/cutChoices';
import { refusalOf } from './choices/usePlanInput';
import { Fold } from './Fold';
import { startPrint } from './print/startPrint';

export function DraftingSheetCard({ input }: { input: PlanInput }) {
  const choices = useCutChoices();
  const { client, savedDraft } = input;
  const [making, setMaking] = useState(false);
  const [failed, setFailed] = useState(false);
  const refused = refusalOf(input) !== null;
  const chosen = paperFor(choices, client.unit);
  const paper = checkPaper(chosen).ok ? chosen : paperChoice(client.unit === 'in' ? 'Letter' : 'A4');
  const name = fileName(client.name, savedDraft.name, 'drafting sheet');
  const print = async (): Promise<void> => {
    setMaking(true);
    setFailed(false);
    try {
      const bytes = await startPrint({ kind: 'draftingSheet', input, paper }).bytes;
      if (bytes) download(bytes, 'application/pdf', `${name}.pdf`);
    } catch {
      setFailed(true);
    }
    setMaking(false);
  };
  return (
    <Fold title={CUT.draftingSheet.title} className="drafting-sheet-card">
      <p className="hint">{CUT.draftingSheet.hint[client.unit]}</p>
      <div className="actions">
        <button type="button" disabled={refused || making} onClick={() => void print()}>
          {making ? CUT.draftingSheet.making : CUT.draftingSheet.pdf}
        </button>
        <button
          type="button"
          disabled={refused}
          onClick={() => download(draftingSheetHtml(input), 'text/html;charset=utf-8', `${name}.html`)}
        >
          {CUT.draftingSheet.webPage}
        </button>
      </div>
      <p className="said" aria-live="polite">
        {failed ? CUT.draftingSheet.failed : ''}
      </p>
    </Fold>
  );
}
