// Draft: the cutting table with the girth ledger on its level lines, and below it the numbers of the wedge in hand.

import { memo, startTransition, useEffect, useState } from 'react';
import { type Book, DRAFT, wedgesOf } from '../../document';
import type { Side } from '../../engine';
import { IssueList } from '../components/IssueList';
import { SideContext } from '../store/sideContext';
import { seen } from '../store/store';
import { SeenContext, useDraft, useOpen, useStore } from '../store/storeContext';
import { CanvasPane } from './canvas/CanvasPane';
import { EdgeCard } from './EdgeCard';
import { ExtrasCard } from './ExtrasCard';
import { GarmentCard } from './GarmentCard';
import { RedraftedNotice } from './RedraftedNotice';
import { SafetyCard } from './SafetyCard';
import { ShouldersCard } from './ShouldersCard';
import { SideChoice, type SideChoiceProps } from './SideChoice';
import { SidesCard } from './SidesCard';
import { WedgeCard } from './wedges/WedgeCard';

export function DraftStep() {
  const [side, setSide] = useState<Side>('left');
  return (
    <SideContext value={side}>
      <DraftBench side={side} onSide={setSide} />
    </SideContext>
  );
}

function DraftBench({ side, onSide }: SideChoiceProps) {
  const [pulling, setPulling] = useState(false);
  const shown = useLagging(pulling);
  const pull = (on: boolean): void => {
    // Catching up when a handle is let go need not be done in one frame.
    if (on) setPulling(true);
    else startTransition(() => setPulling(false));
  };
  const [chosen, setChosen] = useState<string | null>(null);
  const { savedDraft } = useOpen();
  const wedges = wedgesOf(savedDraft.style, side);
  const selected = wedges.some((wedge) => wedge.id === chosen)
    ? chosen
    : (wedges.find((wedge) => wedge.station === 0)?.id ?? wedges[0]?.id ?? null);
  return (
    <div className="draft-step">
      <SideChoice side={side} onSide={onSide} />
      <RedraftedNotice />
      <CanvasPane selected={selected} onSelect={setChosen} onPull={pull} />
      <SeenContext value={shown}>
        <Cards selected={selected} onSelect={setChosen} />
      </SeenContext>
    </div>
  );
}

interface CardsProps {
  readonly selected: string | null;
  readonly onSelect: (wedge: string | null) => void;
}

const Cards = memo(function Cards({ selected, onSelect }: CardsProps) {
  const { issues } = useDraft();
  return (
    <>
      <IssueList issues={issues} />
      <h2 className="unseen">{DRAFT.numbers}</h2>
      <div className="cards">
        <WedgeCard selected={selected} onSelect={onSelect} />
        <GarmentCard />
        <div className="small-cards">
          <SafetyCard />
          <ExtrasCard />
          <SidesCard />
        </div>
        <ShouldersCard />
        <EdgeCard />
      </div>
    </>
  );
});

/** The cards follow a pull when it has rested so long; the table and its ledger follow with every frame. ms */
const REST_MS = 400;

/** The book in view; while a handle is pulled, as it was a moment ago. */
function useLagging(pulling: boolean): Book {
  const book = useStore(seen);
  const kept = useStore((state) => state.history.present);
  const [lagging, setLagging] = useState<Book | null>(null);
  useEffect(() => {
    if (!pulling) {
      setLagging(null);
      return;
    }
    const rest = setTimeout(() => startTransition(() => setLagging(book)), REST_MS);
    return () => clearTimeout(rest);
  }, [pulling, book]);
  return pulling ? (lagging ?? kept) : book;
}
