// A length typed the way makers write it. What was typed stays in the field, right or wrong.

import { useId, useState } from 'react';
import {
  formatLength,
  type LengthFault,
  lengthFaultSentence,
  parseLength,
  plainLength,
  type Unit,
} from '../../document';
import { inches } from '../../engine';

export interface LengthFieldProps {
  readonly label: string;
  /** mm; null where nothing is given. */
  readonly value: number | null;
  readonly unit: Unit;
  /** Less than nothing makes sense, as for ease. */
  readonly signed?: boolean;
  /** May be left empty. */
  readonly optional?: boolean;
  /** The draft cannot do without it, though the field may be empty for now. */
  readonly needed?: boolean;
  /** How to take it, or what it does. */
  readonly hint?: string | undefined;
  /** What the draft has to say about it; the first is said aloud. */
  readonly remarks?: readonly string[];
  /** Label for screen readers only, no line in the other unit. */
  readonly compact?: boolean;
  /** Shows a value in passing. */
  readonly onShow: (mm: number | null) => void;
  /** Keeps what was shown. */
  readonly onKeep: () => void;
  /** Goes back to what was kept. */
  readonly onDrop: () => void;
  readonly onFocus?: () => void;
}

interface Typed {
  readonly text: string;
  /** What the text means; null when nothing, undefined while it means no length. */
  readonly mm: number | null | undefined;
  readonly unit: Unit;
}

export function LengthField(props: LengthFieldProps) {
  const {
    label,
    value,
    unit,
    signed = false,
    optional = false,
    needed = false,
    hint,
    remarks = [],
    compact = false,
  } = props;
  const id = useId();
  const [typed, setTyped] = useState<Typed | null>(null);
  const [fault, setFault] = useState<LengthFault | null>(null);
  const [focused, setFocused] = useState(false);
  const own = typed !== null && typed.unit === unit && (typed.mm === undefined || same(typed.mm, value));
  const text = own ? typed.text : value === null ? '' : plainLength(onTape(value, unit), unit);

  const read = (next: string): void => {
    const parsed =
      next.trim() === '' && optional ? { ok: true as const, mm: null } : parseLength(next, unit, { signed });
    setTyped({ text: next, mm: parsed.ok ? parsed.mm : undefined, unit });
    setFault(parsed.ok ? null : parsed.fault);
    if (parsed.ok) props.onShow(parsed.mm);
    else props.onDrop();
  };
  const said = own && fault && !focused ? [lengthFaultSentence(fault, unit)] : focused ? [] : remarks;
  const other: Unit = unit === 'in' ? 'cm' : 'in';
  return (
    <div className={`length-field${compact ? ' compact' : ''}${said.length > 0 ? ' remarked' : ''}`}>
      <label htmlFor={id} className={compact ? 'unseen' : undefined}>
        {`${label} `}
        {optional && !needed && !compact ? <span className="optional">if known</span> : null}
        {needed && value === null && !compact ? <span className="needed">needed</span> : null}
      </label>
      <span className="entry">
        <input
          id={id}
          type="text"
          inputMode={unit === 'cm' ? 'decimal' : 'text'}
          autoComplete="off"
          spellCheck={false}
          value={text}
          aria-invalid={own && fault !== null && !focused}
          aria-describedby={hint && !compact ? `${id}-hint ${id}-said` : `${id}-said`}
          onChange={(event) => read(event.target.value)}
          onFocus={() => {
            setFocused(true);
            props.onFocus?.();
          }}
          onBlur={() => {
            setFocused(false);
            props.onKeep();
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter') event.currentTarget.blur();
            if (event.key === 'Escape' && typed !== null) {
              setTyped(null);
              setFault(null);
              props.onDrop();
            }
          }}
        />
        <span className="unit" aria-hidden="true">
          {unit}
        </span>
      </span>
      {compact ? null : (
        <output className="other-unit" htmlFor={id}>
          {value === null ? '' : formatLength(value, other, { withUnit: true })}
        </output>
      )}
      {hint && !compact ? (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      <p className="said" id={`${id}-said`} aria-live="polite">
        {said.join(' ')}
      </p>
    </div>
  );
}

/** A computed length to the nearest line of the tape: 1/16 in or 1 mm. Showing it so changes nothing that is kept. */
const onTape = (mm: number, unit: Unit): number => {
  const line = unit === 'in' ? inches(1 / 16) : 1;
  return Math.round(mm / line) * line;
};

const same = (a: number | null, b: number | null): boolean =>
  a === b || (a !== null && b !== null && Math.abs(a - b) < 1e-9);
