// When a part of the screen cannot be drawn, or does not come from the server: says which, keeps everything, and offers a way on.

import { Component, type ReactNode } from 'react';
import { type Book, SHELL, START } from '../../../document';
import { BackupButton } from '../files/BackupButton';
import { NotFetched } from './later';

const TEXTS = SHELL.error;

interface ErrorBoundaryProps {
  readonly part: 'page' | 'step' | 'section' | 'dialog';
  /** The book as it was last kept. */
  readonly book: () => Book;
  /** Another step is another try. */
  readonly step?: string;
  /** Undoing the last change may be the cure; not offered where it is absent. */
  readonly onUndo?: () => void;
  /** What stands round the words. */
  readonly frame?: (trouble: ReactNode) => ReactNode;
  readonly children: ReactNode;
}

interface ErrorBoundaryState {
  readonly trouble: 'notDrawn' | 'notFetched' | null;
}

export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override state: ErrorBoundaryState = { trouble: null };

  static getDerivedStateFromError(error: unknown): ErrorBoundaryState {
    return { trouble: error instanceof NotFetched ? 'notFetched' : 'notDrawn' };
  }

  override componentDidUpdate(before: ErrorBoundaryProps): void {
    if (before.step !== this.props.step && this.state.trouble) this.#tryAgain();
  }

  readonly #tryAgain = (): void => this.setState({ trouble: null });

  override render(): ReactNode {
    const { trouble } = this.state;
    const { part, book, onUndo, frame, children } = this.props;
    if (!trouble) return children;
    const words = (
      <section className="empty" role="alert">
        <p>{TEXTS[trouble][part]}</p>
        <p className="dialog-actions">
          {trouble === 'notDrawn' && onUndo ? (
            <button
              type="button"
              onClick={() => {
                onUndo();
                this.#tryAgain();
              }}
            >
              {TEXTS.undo}
            </button>
          ) : null}
          {trouble === 'notDrawn' ? (
            <button type="button" onClick={this.#tryAgain}>
              {TEXTS.again}
            </button>
          ) : null}
          <button type="button" onClick={() => window.location.reload()}>
            {START.reload}
          </button>
          <BackupButton book={book} />
        </p>
      </section>
    );
    return frame ? frame(words) : words;
  }
}
