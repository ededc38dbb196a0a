// Cut: the panels apart with their allowances, as they will lie on paper; which paper; the print and the other files.

import { wantsReading } from '../../document';
import { IssueList } from '../components/IssueList';
import { useDraft, useOpen } from '../store/storeContext';
import { AllowanceCard } from './AllowanceCard';
import { type Medium, useCutChoices } from './choices/cutChoices';
import { awaitsReading, usePlanInput } from './choices/usePlanInput';
import { DraftingSheetCard } from './DraftingSheetCard';
import { FilesCard } from './FilesCard';
import { MakingCard } from './MakingCard';
import { OnPage, OnProjector, OnSheets } from './media/media';
import { PrinterCard } from './PrinterCard';

const MEDIA: Readonly<Record<Medium, typeof OnSheets>> = {
  sheets: OnSheets,
  page: OnPage,
  projector: OnProjector,
};

export function CutStep() {
  const { client } = useOpen();
  const { issues } = useDraft();
  const { medium } = useCutChoices();
  const input = usePlanInput();
  const Print = MEDIA[medium];
  // Where it keeps the print back, the card of the print says so, with the way on.
  const reportedIssues = awaitsReading(input) ? issues.filter((issue) => !wantsReading(issue)) : issues;
  return (
    <div className="cut-step">
      <Print
        input={input}
        unit={client.unit}
        beside={
          <>
            {medium === 'projector' ? null : <PrinterCard unit={client.unit} />}
            <IssueList issues={reportedIssues} />
          </>
        }
        below={
          <>
            <div className="stack">
              <FilesCard input={input} />
              <AllowanceCard />
              <DraftingSheetCard input={input} />
            </div>
            <MakingCard input={input} />
          </>
        }
      />
    </div>
  );
}
