// The Cut step: the panels as they lie on paper, the lay plan or the making list, and beside them the choices of the print and
// the other files.

import { useEffect } from 'react';
import { wantsReading } from '../../document';
import { takeMockup } from '../components/awaited/awaitedMockup';
import { IssueList } from '../components/IssueList';
import { LaterSection } from '../components/later/LaterSection';
import { lazyPart } from '../components/later/later';
import { useDraft, useOpen } from '../store/storeContext';
import { AllowanceCard } from './AllowanceCard';
import { CutViews, useCutViews } from './CutViews';
import { choose, type Medium, useCutChoices } from './choices/cutChoices';
import { awaitsReading, usePlanInput } from './choices/usePlanInput';
import { DraftingSheetCard } from './DraftingSheetCard';
import { FilesCard } from './FilesCard';
import { MakingCard } from './MakingCard';
import { MakingSummary } from './MakingSummary';
import { PagePrint, ProjectorPrint, SheetsPrint } from './media/media';
import { PatternChoices } from './PatternChoices';
import { PrinterCard } from './PrinterCard';
import { PrintsCard } from './PrintsCard';
import { SizesCard } from './SizesCard';

const LayCard = lazyPart(async () => (await import('./lay/LayCard')).default);

const PRINTS: Readonly<Record<Medium, typeof SheetsPrint>> = {
  sheets: SheetsPrint,
  page: PagePrint,
  projector: ProjectorPrint,
};

export function CutStep() {
  const { client } = useOpen();
  const { issues } = useDraft();
  const { medium } = useCutChoices();
  const input = usePlanInput();
  useEffect(() => {
    if (takeMockup()) choose({ kind: 'mockup', view: 'panels' });
  }, []);
  const { views, view } = useCutViews(input);
  const Print = PRINTS[medium];
  // The card of the print already links to cautions that are not read yet, so the list leaves them out.
  const reportedIssues = awaitsReading(input) ? issues.filter((issue) => !wantsReading(issue)) : issues;
  return (
    <div className="cut-step">
      <Print
        input={input}
        unit={client.unit}
        choices={<PatternChoices unit={client.unit} />}
        beside={
          <>
            <IssueList issues={reportedIssues} />
            {medium === 'projector' ? null : <PrinterCard unit={client.unit} />}
            <AllowanceCard />
            <FilesCard input={input} />
            <DraftingSheetCard input={input} />
            <SizesCard />
            <PrintsCard />
          </>
        }
        views={<CutViews views={views} view={view} />}
        isDrawn={view === 'panels'}
        below={
          <>
            {views.includes('lay') ? (
              <div className="cut-view" hidden={view !== 'lay'}>
                <LaterSection>
                  <LayCard input={input} />
                </LaterSection>
              </div>
            ) : null}
            {views.includes('making') ? (
              <>
                <div className="cut-view" hidden={view !== 'making'}>
                  <MakingCard input={input} />
                </div>
                {view === 'making' ? null : <MakingSummary input={input} />}
              </>
            ) : null}
          </>
        }
      />
    </div>
  );
}
