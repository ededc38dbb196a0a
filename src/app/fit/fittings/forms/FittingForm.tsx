// The frame of every form of the fittings: its heading has the focus when it opens, Escape leaves it, its end is always the same.

import { type ReactNode, useEffect, useRef } from 'react';
import { FITTINGS } from '../../../../document';

interface FittingFormProps {
  readonly title: string;
  readonly children: ReactNode;
  /** What has to be filled in first; null where nothing is. */
  readonly wanting: string | null;
  /** The words of the button that takes the form; null where there is nothing to take. */
  readonly make: string | null;
  readonly onMake: () => void;
  readonly onCancel: () => void;
}

export function FittingForm({ title, children, wanting, make, onMake, onCancel }: FittingFormProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.parentElement?.scrollIntoView?.({ block: 'nearest' });
  }, []);
  return (
    <form
      className="alteration-form"
      aria-label={title}
      onSubmit={(event) => {
        event.preventDefault();
        onMake();
      }}
      onKeyDown={(event) => {
        // The field that has the focus takes its number back first.
        if (event.key === 'Escape' && !(event.target instanceof HTMLInputElement)) onCancel();
      }}
    >
      <h4 ref={heading} tabIndex={-1}>
        {title}
      </h4>
      {children}
      {wanting ? (
        <p className="said off" role="alert">
          {wanting}
        </p>
      ) : null}
      <p className="form-end">
        {make === null ? null : (
          <button type="submit" className="primary">
            {make}
          </button>
        )}
        <button type="button" onClick={onCancel}>
          {FITTINGS.form.cancel}
        </button>
      </p>
    </form>
  );
}
