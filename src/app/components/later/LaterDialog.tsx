// A dialog that is fetched when it is first opened, unless it was fetched ahead. Where it does not come, or cannot be drawn, a
// sheet in its place says so, and the page under it goes on.

import { type ReactNode, Suspense } from 'react';
import { SHELL } from '../../../document';
import { useStore } from '../../store/storeContext';
import { Dialog } from '../Dialog';
import { ErrorBoundary } from './ErrorBoundary';

interface LaterDialogProps {
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function LaterDialog({ onClose, children }: LaterDialogProps) {
  const kept = useStore((state) => state.kept);
  const sheet = (trouble: ReactNode): ReactNode => (
    <Dialog title={SHELL.error.title} onClose={onClose}>
      {trouble}
    </Dialog>
  );
  return (
    <ErrorBoundary part="dialog" book={kept} frame={sheet}>
      <Suspense fallback={null}>{children}</Suspense>
    </ErrorBoundary>
  );
}
