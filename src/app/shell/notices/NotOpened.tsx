// Stands for the whole page where it could not be opened.

import { SHELL, START } from '../../../document';

export function NotOpened() {
  return (
    <main className="empty" role="alert">
      <p>{SHELL.error.notOpened}</p>
      <p className="dialog-actions">
        <button type="button" onClick={() => window.location.reload()}>
          {START.reload}
        </button>
      </p>
    </main>
  );
}
