// A part of the Cut step that is folded under its title until it is wanted.

import type { ReactNode } from 'react';

/** Brings what was just unfolded by a press on its title into view. */
function showUnfolded(details: HTMLDetailsElement): void {
  if (details.open && details.contains(document.activeElement))
    details.scrollIntoView?.({ block: 'nearest' });
}

interface FoldProps {
  readonly title: string;
  readonly className: string;
  /** There is something to see to in it, so that it stands open. */
  readonly isOpen?: boolean;
  readonly children: ReactNode;
}

export function Fold({ title, className, isOpen = false, children }: FoldProps) {
  return (
    <section className={`card fold ${className}`} aria-label={title}>
      <details open={isOpen} onToggle={({ currentTarget }) => showUnfolded(currentTarget)}>
        <summary>
          <h2>{title}</h2>
        </summary>
        <div className={className}>{children}</div>
      </details>
    </section>
  );
}
