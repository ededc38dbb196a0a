// Draft: the table with the girth ledger on its level lines, the inspector beside it with the numbers in tabs, and below the
// table the widths of the panels and what there is to mend.

import { memo, startTransition, useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { type Book, wedgesOf } from '../../document';
import type { LevelName, Side } from '../../engine';
import { areCautionsAwaited, onCautionsAwaited } from '../components/awaited/awaitedFocus';
import { arriveAtWedge, awaitedWedge } from '../components/awaited/awaitedPlace';
import { LaterSection } from '../components/later/LaterSection';
import { lazyPart } from '../components/later/later';
import { SideContext } from '../store/sideContext';
import { seen } from '../store/store';
import { SeenContext, useKeptStyle, usePullAtRest, useStore } from '../store/storeContext';
import { CanvasPane } from './canvas/CanvasPane';
import { Inspector } from './Inspector';
import { RedraftedNotice } from './RedraftedNotice';
import { SideChoice, type SideChoiceProps } from './SideChoice';
import { Strip } from './strip/Strip';
import type { TabName } from './strip/tabs';

export function DraftStep() {
  const [side, setSide] = useState<Side>(() => awaitedWedge()?.side ?? 'left');
  return (
    <SideContext value={side}>
      <DraftBench side={side} onSide={setSide} />
    </SideContext>
  );
}

function DraftBench({ side, onSide }: SideChoiceProps) {
  const [pulling, setPulling] = useState(false);
  const shown = useLagging(pulling);
  // A number is drawn as it is typed, and so is the table; what the other numbers become follows as soon as there is time. A choice
  // that is made is drawn at once: a radio button that waits would spring back meanwhile.
  const later = useDeferredValue(shown);
  const isBegun = useStore((state) => state.preview !== null);
  const pull = useCallback((on: boolean): void => {
    // Catching up when a handle is let go need not be done in one frame.
    if (on) setPulling(true);
    else startTransition(() => setPulling(false));
  }, []);
  const sideChoice = useMemo(() => <SideChoice side={side} onSide={onSide} />, [side, onSide]);
  const [chosen, setChosen] = useState<string | null>(() => awaitedWedge()?.wedge ?? null);
  const [level, setLevel] = useState<LevelName>(() => awaitedWedge()?.level ?? 'waist');
  useEffect(arriveAtWedge, []);
  const [tab, setTab] = useState<TabName>(() => (areCautionsAwaited() ? CAUTIONS_TAB : 'wedges'));
  useEffect(() => onCautionsAwaited(() => setTab(CAUTIONS_TAB)), []);
  const [isWornSeen, setWornSeen] = useState(false);
  const closeWorn = useCallback(() => setWornSeen(false), []);
  const worn = useMemo(
    () => (isWornSeen ? <WornBeside pulling={pulling} onClose={closeWorn} /> : null),
    [isWornSeen, pulling, closeWorn],
  );
  // As kept: a pull or a number half typed adds no wedge and takes none away.
  const wedges = wedgesOf(useKeptStyle(), side);
  const selected = wedges.some((wedge) => wedge.id === chosen)
    ? chosen
    : (wedges.find((wedge) => wedge.station === 0)?.id ?? wedges[0]?.id ?? null);
  const showTab = useCallback((there: TabName, wedge: string | null) => {
    setTab(there);
    if (wedge !== null) setChosen(wedge);
  }, []);
  return (
    <div className="draft-step">
      <RedraftedNotice />
      <div className="draft-layout">
        <PulledCanvas
          selected={selected}
          onSelect={setChosen}
          level={level}
          onLevel={setLevel}
          onPull={pull}
          sideChoice={sideChoice}
          worn={worn}
          onWorn={setWornSeen}
        />
        <SeenContext value={isBegun ? later : shown}>
          <Inspector
            tab={tab}
            onTab={setTab}
            selected={selected}
            onSelect={setChosen}
            level={level}
            onLevel={setLevel}
          />
          <LaggingStrip level={level} onLevel={setLevel} onShow={showTab} />
        </SeenContext>
      </div>
    </div>
  );
}

/** The tab that has the cautions for tight lacing. */
const CAUTIONS_TAB: TabName = 'garment';

// Each is drawn again for what it shows only: the table under a pull, inspector and strip when the pull has rested.
const PulledCanvas = memo(CanvasPane);
const LaggingStrip = memo(Strip);

const SmallWorn = lazyPart(async () => (await import('../worn/SmallWorn')).default);

interface WornBesideProps {
  readonly pulling: boolean;
  readonly onClose: () => void;
}

/** The garment as worn, fetched when it is first asked for; not drawn again with each frame of a pull. */
const WornBeside = memo(function WornBeside(props: WornBesideProps) {
  return (
    <LaterSection>
      <SmallWorn {...props} />
    </LaterSection>
  );
});

/** The book in view; while a handle is pulled, as the pull last rested: the table and its ledger follow with every frame. */
function useLagging(pulling: boolean): Book {
  const book = useStore((state) => (pulling ? state.history.present : seen(state)));
  return usePullAtRest(pulling) ?? book;
}
