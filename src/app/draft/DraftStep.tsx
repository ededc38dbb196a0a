// Draft: the cutting table with the girth ledger on its level lines, and below it the numbers of the wedge in hand.

import { useState } from 'react';
import { IssueList } from '../parts/IssueList';
import { useDraft, useOpen } from '../tableContext';
import { EdgeCard } from './EdgeCard';
import { GarmentCard } from './GarmentCard';
import { SafetyCard } from './SafetyCard';
import { TableBench } from './TableBench';
import { WedgeCard } from './WedgeCard';

export function DraftStep() {
  const { sheet } = useOpen();
  const { issues } = useDraft();
  const [chosen, setChosen] = useState<string | null>(null);
  const { wedges } = sheet.style;
  const selected = wedges.some((wedge) => wedge.id === chosen)
    ? chosen
    : (wedges.find((wedge) => wedge.station === 0)?.id ?? wedges[0]?.id ?? null);
  return (
    <div className="draft-step">
      <TableBench selected={selected} onSelect={setChosen} />
      <IssueList issues={issues} />
      <h2 className="unseen">The draft’s numbers</h2>
      <div className="cards">
        <WedgeCard selected={selected} onSelect={setChosen} />
        <GarmentCard />
        <SafetyCard />
        <EdgeCard />
      </div>
    </div>
  );
}
