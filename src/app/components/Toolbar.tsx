// A row of buttons that Tab comes to once: arrow keys go from button to button, Home and End to the first and the last.

import { type KeyboardEvent, type ReactNode, useLayoutEffect, useRef } from 'react';

interface ToolbarProps {
  readonly label: string;
  readonly className?: string;
  readonly children: ReactNode;
}

/** What the arrow keys go through. */
const STOPS = 'button:not(:disabled)';

/** The change of place for a key; null for any other key. */
const STEPS: Readonly<Record<string, 1 | -1 | 'first' | 'last'>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
  Home: 'first',
  End: 'last',
};

export function Toolbar({ label, className, children }: ToolbarProps) {
  const row = useRef<HTMLDivElement>(null);
  const last = useRef<Element | null>(null);
  const stops = (): HTMLElement[] => [...(row.current?.querySelectorAll<HTMLElement>(STOPS) ?? [])];
  /** Only one of the buttons is a stop of Tab: the one that had the focus last, else the pressed one, else the first. */
  const settle = (): void => {
    const all = stops();
    const stop =
      all.find((each) => each === last.current) ??
      all.find((each) => each.getAttribute('aria-pressed') === 'true') ??
      all[0];
    for (const each of all) {
      const index = each === stop ? '0' : '-1';
      // Written only where it changes, so that a drawing that changes nothing leaves no trace.
      if (each.getAttribute('tabindex') !== index) each.setAttribute('tabindex', index);
    }
  };
  useLayoutEffect(settle);
  const press = (event: KeyboardEvent): void => {
    const step = STEPS[event.key];
    const all = stops();
    const at = all.indexOf(document.activeElement as HTMLElement);
    if (step === undefined || at < 0) return;
    event.preventDefault();
    const next = step === 'first' ? 0 : step === 'last' ? all.length - 1 : at + step;
    all[(next + all.length) % all.length]?.focus();
  };
  return (
    <div
      ref={row}
      className={className}
      role="toolbar"
      aria-label={label}
      onKeyDown={press}
      onFocus={({ target }) => {
        if (!target.matches(STOPS)) return;
        last.current = target;
        settle();
      }}
    >
      {children}
    </div>
  );
}
