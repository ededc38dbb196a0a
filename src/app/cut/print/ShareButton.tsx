// Hands a file that was made to another program of the device: mail, messages, a printer. Not shown where the browser cannot.

import { useState } from 'react';
import { CUT } from '../../../document';

/** Whether the browser shares such files. Older ones have neither function. */
const canShare = (file: File): boolean =>
  typeof navigator.share === 'function' && navigator.canShare?.({ files: [file] }) === true;

export function ShareButton({ file }: { readonly file: File }) {
  const [hasFailed, setFailed] = useState(false);
  if (!canShare(file)) return null;
  const share = (): void => {
    setFailed(false);
    navigator.share({ files: [file], title: file.name }).catch((error: unknown) => {
      // Closing the list of programs is no failure.
      setFailed(!(error instanceof DOMException && error.name === 'AbortError'));
    });
  };
  return (
    <>
      <button type="button" onClick={share}>
        {CUT.print.share}
      </button>
      <p className="said" aria-live="polite">
        {hasFailed ? CUT.print.notShared : ''}
      </p>
    </>
  );
}
