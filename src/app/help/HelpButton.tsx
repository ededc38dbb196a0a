// The way into Help: a button in the head of the page, and the question mark while nothing is typed.

import { useEffect, useState } from 'react';
import { SHELL } from '../../document';
import { LaterDialog } from '../components/later/LaterDialog';
import { lazyPart } from '../components/later/later';

const HelpDialog = lazyPart(async () => (await import('./HelpDialog')).default);

export function HelpButton() {
  const [isOpen, setOpen] = useState(false);
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.key !== '?' || event.ctrlKey || event.metaKey || event.altKey) return;
      const isElsewhere = event.target instanceof Element && event.target.closest(TAKES_KEYS) !== null;
      if (isElsewhere) return;
      event.preventDefault();
      setOpen(true);
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
  return (
    <>
      <button
        type="button"
        className="help-button"
        aria-haspopup="dialog"
        aria-label={SHELL.help}
        title={SHELL.help}
        onClick={() => setOpen(true)}
      >
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M7.500 7.500a2.500 2.500 0 1 1 3.600 2.200c-.8.4-1.100.9-1.100 1.800v.5M10 15v.1M10 1.800a8.200 8.200 0 1 1 0 16.400 8.200 8.200 0 0 1 0-16.400" />
        </svg>
      </button>
      {isOpen ? (
        <LaterDialog onClose={() => setOpen(false)}>
          <HelpDialog onClose={() => setOpen(false)} />
        </LaterDialog>
      ) : null}
    </>
  );
}

/** Where a question mark is typed, and where another dialog is open. */
const TAKES_KEYS =
  'input:not([type="checkbox"], [type="radio"]), textarea, select, [contenteditable], dialog';
