// When a part of the screen cannot be drawn: says so, keeps everything, and offers a way on.

import { Component, type ReactNode } from 'react';
import { type Book, SHELL } from '../../document';
import { BackupButton } from '../components/BackupButton';

interface ErrorBoundaryProps {
  /** The book as it was last kept. */
  readonly book: () => Book;
  /** Another step is another try. */
  readonly step: string;
  readonly onUndo: () => void;
  readonly children: ReactNode;
}

interface ErrorBoundaryState {
  readonly failed: boolean;
}

export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override state: ErrorBoundaryState = { failed: false };

  static getDerivedStateFromError(): ErrorBoundaryState {
    return { failed: true };
  }

  override componentDidUpdate(before: ErrorBoundaryProps): void {
    if (before.step !== this.props.step && this.state.failed) this.setState({ failed: false });
  }

  override render(): ReactNode {
    const { book, onUndo, children } = this.props;
    if (!this.state.failed) return children;
    return (
      <section className="empty" role="alert">
        <p>{SHELL.error.notDrawn}</p>
        <p className="dialog-actions">
          <button
            type="button"
            onClick={() => {
              onUndo();
              this.setState({ failed: false });
            }}
          >
            {SHELL.error.undo}
          </button>
          <button type="button" onClick={() => this.setState({ failed: false })}>
            {SHELL.error.again}
          </button>
          <BackupButton book={book} />
        </p>
      </section>
    );
  }
}
