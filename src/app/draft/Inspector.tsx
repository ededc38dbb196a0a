// The numbers of the draft in tabs beside the table, and what leads on to the next step.

import { type KeyboardEvent, memo, type ReactNode, useId } from 'react';
import { DRAFT, SHELL, wedgesOf } from '../../document';
import type { LevelName } from '../../engine';
import { goToMendList } from '../components/awaited/awaitedFocus';
import { NextArrow } from '../components/NextArrow';
import { useSide } from '../store/sideContext';
import { useDraft, useOpen } from '../store/storeContext';
import { EdgeCard } from './EdgeCard';
import { ExtrasCard } from './ExtrasCard';
import { GarmentCard } from './GarmentCard';
import { SafetyCard } from './SafetyCard';
import { ShouldersCard } from './ShouldersCard';
import { SidesCard } from './SidesCard';
import { TABS, type TabName } from './strip/tabs';
import { WedgeCard } from './wedges/WedgeCard';

interface InspectorProps {
  readonly tab: TabName;
  readonly onTab: (tab: TabName) => void;
  readonly selected: string | null;
  readonly onSelect: (wedge: string | null) => void;
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

const TEXTS = DRAFT.inspector;

/** The tab a key leads to. */
const STEPS: Readonly<Record<string, (at: number) => number>> = {
  ArrowRight: (at) => at + 1,
  ArrowLeft: (at) => at - 1,
  Home: () => 0,
  End: () => -1,
};

export const Inspector = memo(function Inspector(props: InspectorProps) {
  const { tab, onTab } = props;
  const id = useId();
  const press = (event: KeyboardEvent): void => {
    const step = STEPS[event.key];
    if (!step) return;
    event.preventDefault();
    const next = TABS.at(step(TABS.indexOf(tab)) % TABS.length) ?? tab;
    onTab(next);
    document.getElementById(`${id}-${next}`)?.focus();
  };
  return (
    <aside className="inspector" aria-label={DRAFT.numbers}>
      <h2 className="unseen">{DRAFT.numbers}</h2>
      <div className="tabs" role="tablist" aria-label={DRAFT.numbers} onKeyDown={press}>
        {TABS.map((each) => (
          <button
            key={each}
            type="button"
            role="tab"
            id={`${id}-${each}`}
            aria-selected={each === tab}
            aria-controls={`${id}-panel`}
            tabIndex={each === tab ? 0 : -1}
            onClick={() => onTab(each)}
          >
            {TEXTS.tabs[each]}
          </button>
        ))}
      </div>
      <div
        className="tab-panel"
        role="tabpanel"
        id={`${id}-panel`}
        aria-labelledby={`${id}-${tab}`}
        data-tab={tab}
      >
        {PANELS[tab](props)}
      </div>
      <InspectorFoot />
    </aside>
  );
});

const PANELS: Readonly<Record<TabName, (props: InspectorProps) => ReactNode>> = {
  wedges: ({ selected, onSelect, level, onLevel }) => (
    <WedgeCard selected={selected} onSelect={onSelect} level={level} onLevel={onLevel} />
  ),
  garment: () => (
    <>
      <GarmentCard />
      <SafetyCard />
    </>
  ),
  edges: () => <EdgeCard />,
  shoulders: () => <ShouldersCard />,
  more: () => (
    <>
      <ExtrasCard />
      <SidesCard />
    </>
  ),
};

/** What there is to mend, or how the wedges are sized, and the way on. */
function InspectorFoot() {
  const { savedDraft } = useOpen();
  const { issues } = useDraft();
  const wedges = wedgesOf(savedDraft.style, useSide());
  const faults = issues.filter(({ severity }) => severity === 'error').length;
  const manual = wedges.filter(({ sizing }) => sizing === 'manual').length;
  return (
    <div className="inspector-foot">
      {faults > 0 ? (
        <button type="button" className="quiet to-mend" onClick={goToMendList}>
          {TEXTS.toMend({ count: faults })}
        </button>
      ) : (
        <p className="hint">{TEXTS.sizing({ count: wedges.length, manual })}</p>
      )}
      <button
        type="button"
        className="primary"
        onClick={() => {
          window.location.hash = 'fit';
        }}
      >
        {TEXTS.next({ step: SHELL.steps.fit })}
        <NextArrow />
      </button>
    </div>
  );
}
