// A key that turns the sign of a number over: the number keyboards of telephones have no minus.

import { FIELDS } from '../../../document';

interface SignKeyProps {
  /** What its field is called. */
  readonly label: string;
  readonly text: string;
  /** The text with the other sign. */
  readonly onTurn: (text: string) => void;
}

/** Seen under a finger while its field has the focus, which it leaves there; a keyboard types the sign. */
export function SignKey({ label, text, onTurn }: SignKeyProps) {
  return (
    <button
      type="button"
      className="sign-key"
      tabIndex={-1}
      aria-label={FIELDS.turnSign({ field: label })}
      onPointerDown={(event) => event.preventDefault()}
      onClick={() => onTurn(turned(text))}
    >
      ±
    </button>
  );
}

function turned(text: string): string {
  const bare = text.trimStart().replace(/^[-+\u2010-\u2015\u2212]\s*/u, '');
  return /^\s*[-\u2010-\u2015\u2212]/u.test(text) ? bare : `-${bare}`;
}
