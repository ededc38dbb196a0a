// The four steps in the head of the page, each with how it stands.

import { useEffect, useState } from 'react';
import { SHELL } from '../../document';
import { later } from '../components/later/later';
import { useStore } from '../store/storeContext';
import type { StepState, StepStates } from './stepStates';
import { STEPS, type StepName } from './steps';

interface StepLinksProps {
  readonly step: StepName;
  readonly onStep: (step: StepName) => void;
}

/** Paths of the signs that stand over the names at a phone's foot, on a square of 20. */
const SIGNS: Readonly<Record<StepName, string>> = {
  measure: 'M2 7h16v6H2ZM5 7v3M8 7v2M11 7v3M14 7v2',
  draft: 'M3 17l1-4L14 3l3 3L7 16ZM12 5l3 3',
  fit: 'M5 3h10c-1 4-3 5-3 7s2 4 3 7H5c1-3 3-5 3-7S6 7 5 3Z',
  cut: 'M5 3l9 11M15 3 6 14M4.500 14a2 2 0 1 1 0 4 2 2 0 0 1 0-4M15.500 14a2 2 0 1 1 0 4 2 2 0 0 1 0-4',
};

/** Paths of the signs before a state, on a square of 12. */
const STATE_SIGNS: Readonly<Partial<Record<StepState['kind'], string>>> = {
  done: 'm2 6.500 2.700 2.700L10 3',
  mend: 'M6 2v5M6 9.800v.1',
};

export function StepLinks({ step, onStep }: StepLinksProps) {
  const states = useLaterStates();
  return (
    <nav className="steps" aria-label={SHELL.steps.label}>
      {STEPS.map(({ name, label }, i) => (
        <div key={name} className="step">
          <a
            href={`#${name}`}
            aria-current={name === step ? 'step' : undefined}
            aria-describedby={`step-${name}-state`}
            onClick={(event) => {
              event.preventDefault();
              onStep(name);
            }}
          >
            <svg className="step-sign" viewBox="0 0 20 20" aria-hidden="true">
              <path d={SIGNS[name]} />
            </svg>
            <span className="count" aria-hidden="true">
              {i + 1}
            </span>
            {label}
          </a>
          <State id={`step-${name}-state`} state={states?.[name]} />
        </div>
      ))}
    </nav>
  );
}

/** Keeps its place while it is not known. */
function State({ id, state }: { id: string; state: StepState | undefined }) {
  const sign = state && STATE_SIGNS[state.kind];
  return (
    <span className={`step-state ${state?.kind ?? 'wait'}`}>
      {sign === undefined ? null : (
        <svg viewBox="0 0 12 12" aria-hidden="true">
          <path d={sign} />
        </svg>
      )}
      <span id={id}>{state?.text}</span>
    </span>
  );
}

const fetchStates = later(async () => (await import('./stepStates')).stepStates);

/** How the steps stand; null until the engine is there, which is fetched after the first step is on the screen. */
function useLaterStates(): StepStates | null {
  // As kept: a pull is reckoned when it is let go.
  const book = useStore((state) => state.history.present);
  const [states, setStates] = useState<StepStates | null>(null);
  useEffect(() => {
    let isLast = true;
    // Where it does not come the steps go without a state.
    fetchStates().then(
      (reckon) => isLast && setStates(reckon(book)),
      () => undefined,
    );
    return () => {
      isLast = false;
    };
  }, [book]);
  return states;
}
