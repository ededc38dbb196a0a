// The shell: one client and one draft always in view, the four steps, undo and redo, and what keeping has to say.

import { lazy, type ReactNode, Suspense, useEffect, useState } from 'react';
import { DraftStep } from '../draft/DraftStep';
import { MeasureStep } from '../measure/MeasureStep';
import { useTable } from '../tableContext';
import { TrueStep } from '../true/TrueStep';
import { ClientBar } from './ClientBar';
import { type Keeping, KeepingNotices } from './KeepingNotices';
import { STEPS, type StepName, useStep } from './steps';

// Sheets and print are loaded when they are first asked for.
const CutStep = lazy(() => import('../cut/CutStep').then(({ CutStep: step }) => ({ default: step })));

const SCREENS: Readonly<Record<StepName, () => ReactNode>> = {
  measure: () => <MeasureStep />,
  draft: () => <DraftStep />,
  true: () => <TrueStep />,
  cut: () => <CutStep />,
};

export function App({ keeping }: { keeping: Keeping }) {
  const [step, go] = useStep();
  useUndoKeys();
  return (
    <>
      <header className="shell">
        <p className="brand">
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M6 2c1 4 2.500 6 2.500 10S7 18 6 22M18 2c-1 4-2.500 6-2.500 10s1.500 6 2.500 10M12 2v20" />
          </svg>
          Staywright
        </p>
        <ClientBar />
        <nav className="steps" aria-label="Steps">
          {STEPS.map(({ name, label }, i) => (
            <a
              key={name}
              href={`#${name}`}
              aria-current={name === step ? 'step' : undefined}
              onClick={(event) => {
                event.preventDefault();
                go(name);
              }}
            >
              <span className="count" aria-hidden="true">
                {i + 1}
              </span>
              {label}
            </a>
          ))}
        </nav>
        <History />
      </header>
      <KeepingNotices keeping={keeping} />
      <main id="step" tabIndex={-1} aria-label={STEPS.find((each) => each.name === step)?.label}>
        <Suspense fallback={null}>{SCREENS[step]()}</Suspense>
      </main>
    </>
  );
}

function History() {
  const history = useTable((table) => table.history);
  const undo = useTable((table) => table.undo);
  const redo = useTable((table) => table.redo);
  const [last, next] = [history.past.at(-1), history.future[0]];
  return (
    <div className="history">
      <button
        type="button"
        disabled={!last}
        onClick={undo}
        title={last ? `Undo: ${last.change}` : 'Nothing to undo'}
      >
        Undo
      </button>
      <button
        type="button"
        disabled={!next}
        onClick={redo}
        title={next ? `Redo: ${next.change}` : 'Nothing to redo'}
      >
        Redo
      </button>
      <Said text={last ? last.change : ''} />
    </div>
  );
}

/** Tells a screen reader what was changed last. */
function Said({ text }: { text: string }) {
  const [said, setSaid] = useState('');
  useEffect(() => setSaid(text), [text]);
  return (
    <span className="unseen" role="status">
      {said}
    </span>
  );
}

function useUndoKeys(): void {
  const undo = useTable((table) => table.undo);
  const redo = useTable((table) => table.redo);
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const typing = event.target instanceof HTMLInputElement && event.target.type === 'text';
      if (typing || !(event.ctrlKey || event.metaKey)) return;
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) undo();
      else if (key === 'y' || (key === 'z' && event.shiftKey)) redo();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [undo, redo]);
}
