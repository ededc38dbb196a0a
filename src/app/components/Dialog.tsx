// A sheet laid over the screen: takes the focus, gives it back, and closes with Escape.

import { type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import { FIELDS } from '../../document';

interface DialogProps {
  readonly title: string;
  readonly wide?: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function Dialog({ title, wide = false, onClose, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  // Before it leaves the page: closed later it could not give the focus back.
  useLayoutEffect(() => {
    const element = dialog.current;
    // Test pages without a screen know the element but not its opening.
    if (element && !element.open) element.showModal?.();
    return () => element?.close?.();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={wide ? 'dialog wide' : 'dialog'}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div className="dialog-head">
        <h2 id={id}>{title}</h2>
        <button type="button" onClick={onClose}>
          {FIELDS.close}
        </button>
      </div>
      {children}
    </dialog>
  );
}
