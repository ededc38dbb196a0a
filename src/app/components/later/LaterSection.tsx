// A part of a step or dialog that is fetched when it is first shown, unless it was fetched ahead. Where it does not come, or cannot
// be drawn, words in its place say so, and what is round it goes on.

import { type ReactNode, Suspense } from 'react';
import { useStore } from '../../store/storeContext';
import { ErrorBoundary } from './ErrorBoundary';

export function LaterSection({ children }: { readonly children: ReactNode }) {
  const kept = useStore((state) => state.kept);
  return (
    <ErrorBoundary part="section" book={kept}>
      <Suspense>{children}</Suspense>
    </ErrorBoundary>
  );
}
