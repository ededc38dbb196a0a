// A tick with its words: set or not.

import type { ReactNode } from 'react';

interface CheckboxProps {
  readonly on: boolean;
  readonly onSet: (on: boolean) => void;
  /** Ids of what is said about it. */
  readonly describedBy?: string;
  readonly disabled?: boolean;
  /** One of several close together. */
  readonly small?: boolean;
  readonly children: ReactNode;
}

export function Checkbox({
  on,
  onSet,
  describedBy,
  disabled = false,
  small = false,
  children,
}: CheckboxProps) {
  return (
    <label className={small ? 'tick small' : 'tick'}>
      <input
        type="checkbox"
        checked={on}
        disabled={disabled}
        aria-describedby={describedBy}
        onChange={(event) => onSet(event.target.checked)}
      />
      <span>{children}</span>
    </label>
  );
}
