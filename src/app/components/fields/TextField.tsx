// A name typed freely; it is kept when the field is left.

import { useId, useState } from 'react';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onKeep: (value: string) => void;
  readonly labelUnseen?: boolean;
  /** Where Enter leads once the name is kept; without it, it stays in the field. */
  readonly onEnter?: () => void;
}

/** Longest name that is kept; it has to fit on a panel. */
const MOST_LETTERS = 120;

export function TextField({ label, value, onKeep, labelUnseen = false, onEnter }: TextFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const keep = (): void => {
    const name = typed?.trim() ?? '';
    if (name !== '' && name !== value) onKeep(name);
    setTyped(null);
  };
  return (
    <div className="text-field">
      <label htmlFor={id} className={labelUnseen ? 'unseen' : undefined}>
        {label}
      </label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        maxLength={MOST_LETTERS}
        value={typed ?? value}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          keep();
          if (onEnter) onEnter();
          else event.currentTarget.select();
        }}
      />
    </div>
  );
}
