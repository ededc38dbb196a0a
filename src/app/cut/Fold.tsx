// A part of the Cut step that is folded under its title until it is wanted.

import type { ReactNode } from 'react';

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
      <details open={isOpen}>
        <summary>
          <h2>{title}</h2>
        </summary>
        <div className={className}>{children}</div>
      </details>
    </section>
  );
}
