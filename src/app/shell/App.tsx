// The shell: one client and one draft always in view, the four steps, undo and redo, and what keeping has to say.

import { type ReactNode, Suspense, useContext, useEffect, useRef } from 'react';
import { SHELL, START } from '../../document';
import { ErrorBoundary } from '../components/later/ErrorBoundary';
import { fetchAhead, lazyPart } from '../components/later/later';
import { HelpButton } from '../help/HelpButton';
import { MeasureStep } from '../measure/MeasureStep';
import { BooksContext } from '../storage/windows/booksContext';
import { useStore } from '../store/storeContext';
import { ClientBar } from './ClientBar';
import { HistoryButtons } from './HistoryButtons';
import { keepFocus } from './keepFocus';
import { keepPage } from './keepPage';
import { KeepingArea } from './notices/KeepingArea';
import { UnreadNotice } from './notices/UnreadNotice';
import { UpdateNotice } from './notices/UpdateNotice';
import { StepLinks } from './StepLinks';
import { STEPS, type StepName, useStep } from './steps';

// The first step is there at once; the others come when they are asked for, or while nothing else is to be done.
const DraftStep = lazyPart(async () => (await import('../draft/DraftStep')).DraftStep);
const FitStep = lazyPart(async () => (await import('../fit/FitStep')).FitStep);
const CutStep = lazyPart(async () => (await import('../cut/CutStep')).CutStep);

/** How long after the first step the others and the dialogs are fetched. ms */
const QUIET_MS = 1500;

const SCREENS: Readonly<Record<StepName, () => ReactNode>> = {
  measure: () => <MeasureStep />,
  draft: () => <DraftStep />,
  fit: () => <FitStep />,
  cut: () => <CutStep />,
};

export function App() {
  const books = useContext(BooksContext);
  const [step, go] = useStep();
  const kept = useStore((state) => state.kept);
  const undo = useStore((state) => state.undo);
  useUndoKeys();
  useEffect(() => keepFocus(document), []);
  useEffect(() => keepPage(window), []);
  useEffect(() => {
    const wait = setTimeout(() => void fetchAhead(), QUIET_MS);
    return () => clearTimeout(wait);
  }, []);
  const label = STEPS.find((each) => each.name === step)?.label ?? '';
  return (
    <>
      <a
        className="skip"
        href={`#${STEP_HEADING}`}
        onClick={(event) => {
          event.preventDefault();
          document.getElementById(STEP_HEADING)?.focus();
        }}
      >
        {SHELL.skip({ step: label })}
      </a>
      <header className="shell">
        <p className="brand">
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M6 2c1 4 2.500 6 2.500 10S7 18 6 22M18 2c-1 4-2.500 6-2.500 10s1.500 6 2.500 10M12 2v20" />
          </svg>
          Staywright
        </p>
        <ClientBar />
        <StepLinks step={step} onStep={go} />
        <HistoryButtons />
        <HelpButton />
      </header>
      <KeepingArea />
      {books ? <UpdateNotice storage={books.storage} /> : null}
      {step === 'measure' ? null : <UnreadNotice />}
      <main data-step={step}>
        <StepHeading label={label} />
        <ErrorBoundary part="step" step={step} book={kept} onUndo={undo}>
          <Suspense fallback={<p className="empty">{START.loading}</p>}>{SCREENS[step]()}</Suspense>
        </ErrorBoundary>
      </main>
    </>
  );
}

const STEP_HEADING = 'step-heading';

/** The step's name for those who do not see the screen change; it takes the focus when the step was chosen. */
function StepHeading({ label }: { label: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef(label);
  useEffect(() => {
    if (shown.current !== label) heading.current?.focus({ preventScroll: true });
    shown.current = label;
  }, [label]);
  return (
    <h1 ref={heading} id={STEP_HEADING} className="unseen" tabIndex={-1}>
      {label}
    </h1>
  );
}

function useUndoKeys(): void {
  const undo = useStore((state) => state.undo);
  const redo = useStore((state) => state.redo);
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      // Keys undo within a text that is being typed; a number that rests is a number of the book.
      const { target } = event;
      const typing =
        target instanceof HTMLInputElement && target.type === 'text' && target.dataset.rests === undefined;
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
