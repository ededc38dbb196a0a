// A length typed the way makers write it. What was typed stays in the field, right or wrong.

import { useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import {
  FIELDS,
  formatLength,
  lengthFaultSentence,
  outsideSpanSentence,
  type ParsedLength,
  parseLength,
  parsePercent,
  plainLength,
  type Unit,
} from '../../../document';
import { inches } from '../../../engine';
import { SignKey } from './SignKey';
import { layByText, unreadText } from './unreadTexts';

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
  /** The draft cannot take the value; the remarks say why. */
  readonly refused?: boolean;
  /** Keys of fractions stand beside it, so that a number keyboard is enough for inches too. */
  readonly hasFractionKeys?: boolean;
  /** Label for screen readers only, no line in the other unit. */
  readonly compact?: boolean;
  /** What the field can take, mm; beyond it the value is not shown but said. */
  readonly span?: readonly [least: number, most: number];
  /** What it may also be written as a part of, in per cent, mm: "-7 %". */
  readonly partOf?: number;
  /** Name under which a text that cannot be read is kept while another step is in view. */
  readonly remember?: string;
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
  /**
   * Not kept yet. Until it is, the field shows the text and not `value`: the value that the text was read as may come back some
   * frames later, when the next keys are already typed.
   */
  readonly open: boolean;
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
    refused = false,
    compact = false,
    span,
  } = props;
  const id = useId();
  const [laidBy] = useState(() => unreadText(props.remember));
  const [typed, setTyped] = useState<Typed | null>(
    laidBy ? { text: laidBy.text, mm: undefined, unit, open: false } : null,
  );
  const [fault, setFault] = useState<string | null>(laidBy?.fault ?? null);
  const own =
    typed !== null && typed.unit === unit && (typed.open || typed.mm === undefined || same(typed.mm, value));
  const typing = own && typed.open;
  const { remember } = props;
  const otherUnit = typed !== null && typed.unit !== unit;
  useEffect(() => {
    // In another unit the field shows the kept number again, so nothing lies in it unread.
    if (otherUnit) layByText(remember, null);
  }, [otherUnit, remember]);
  const text = own ? typed.text : value === null ? '' : plainLength(onTape(value, unit), unit);
  const input = useRef<HTMLInputElement>(null);
  // What Enter left selected stays selected when the kept value is written anew.
  const allSelected = useRef(false);
  // Whether the press under way brings the focus here.
  const comes = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new text takes the selection away
  useLayoutEffect(() => {
    if (allSelected.current) input.current?.select();
  }, [text]);

  const read = (next: string): void => {
    allSelected.current = false;
    const parsed = readLength(next, props);
    const wrong = parsed.ok ? outside(parsed.mm, span, unit) : lengthFaultSentence(parsed, unit);
    const mm = parsed.ok && wrong === null ? within(parsed.mm, span) : undefined;
    setTyped({ text: next, mm, unit, open: true });
    setFault(wrong);
    layByText(
      props.remember,
      wrong === null ? null : { text: next, fault: wrong, label, isBeingTyped: true },
    );
    if (mm === undefined) props.onDrop();
    else props.onShow(mm);
  };
  const keep = (): void => {
    setTyped((last) => last && { ...last, open: false });
    const lying = unreadText(props.remember);
    if (lying?.isBeingTyped) layByText(props.remember, { ...lying, isBeingTyped: false });
    props.onKeep();
  };
  const said = typing ? [] : own && fault ? [fault] : remarks;
  // A text that cannot be read has no reading, and one that names its unit needs no other behind it.
  const unread = own && typed.mm === undefined;
  const named = own && UNIT_NAMED.test(text);
  const other: Unit = unit === 'in' ? 'cm' : 'in';
  return (
    <div className={`length-field${compact ? ' compact' : ''}${said.length > 0 ? ' remarked' : ''}`}>
      <label htmlFor={id} className={compact ? 'unseen' : undefined}>
        {`${label} `}
        {optional && !needed && !compact ? <span className="optional">{FIELDS.ifKnown}</span> : null}
        {needed && value === null && !compact ? <span className="needed">{FIELDS.needed}</span> : null}
      </label>
      <span className={named ? 'entry named' : 'entry'}>
        <input
          ref={input}
          id={id}
          type="text"
          inputMode={unit === 'cm' || props.hasFractionKeys ? 'decimal' : 'text'}
          autoComplete="off"
          spellCheck={false}
          value={text}
          aria-invalid={(refused || (own && fault !== null)) && !typing}
          data-rests={typing ? undefined : ''}
          aria-describedby={hint && !compact ? `${id}-hint ${id}-said` : `${id}-said`}
          onChange={(event) => read(event.target.value)}
          onFocus={props.onFocus}
          onBlur={() => {
            allSelected.current = false;
            keep();
          }}
          onPointerDown={(event) => {
            allSelected.current = false;
            comes.current = document.activeElement !== event.currentTarget;
          }}
          onClick={({ currentTarget }) => {
            // What is typed after the press that brings one here takes the number's place, as after Tab.
            if (comes.current && currentTarget.selectionStart === currentTarget.selectionEnd)
              currentTarget.select();
            comes.current = false;
          }}
          onKeyDown={(event) => {
            allSelected.current = false;
            // The focus stays, and the next number takes this one's place.
            if (event.key === 'Enter') {
              keep();
              allSelected.current = true;
              event.currentTarget.select();
            }
            if (event.key === 'Escape' && typed !== null) {
              setTyped(null);
              setFault(null);
              layByText(props.remember, null);
              props.onDrop();
            }
          }}
        />
        {signed ? (
          <SignKey
            label={label}
            text={text}
            onTurn={(turned) => {
              input.current?.focus();
              read(turned);
            }}
          />
        ) : null}
        {named ? null : (
          <span className="unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </span>
      {compact ? null : (
        <output className="other-unit" htmlFor={id} aria-live="off">
          {value === null || unread ? '' : formatLength(value, other, { withUnit: true })}
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

/** What a text means in the field: nothing where it may be empty, a part of `partOf`, or a length. */
function readLength(
  text: string,
  { unit, optional = false, signed = false, partOf }: LengthFieldProps,
): ParsedLength | { readonly ok: true; readonly mm: null } {
  if (optional && text.trim() === '') return { ok: true, mm: null };
  const part = partOf === undefined ? null : parsePercent(text, partOf);
  return part === null || (part < 0 && !signed)
    ? parseLength(text, unit, { signed })
    : { ok: true, mm: part };
}

/** The signs and words of units; whatever other letters stand there, no unit of the field's own belongs behind them. */
const UNIT_NAMED = /[\p{L}%"'\u2018\u2019\u201c\u201d\u2032\u2033]/u;

/** A computed length to the nearest line of the tape: 1/16 in or 1 mm. Showing it so changes nothing that is kept. */
const onTape = (mm: number, unit: Unit): number => {
  const line = unit === 'in' ? inches(1 / 16) : 1;
  return Math.round(mm / line) * line;
};

type Span = LengthFieldProps['span'];

/** Less than this beyond a span is the tape's rounding. mm */
const BESIDE_MM = 1;

function outside(mm: number | null, span: Span, unit: Unit): string | null {
  if (mm === null || !span) return null;
  const [least, most] = span;
  return mm > least - BESIDE_MM && mm < most + BESIDE_MM ? null : outsideSpanSentence(least, most, unit);
}

const within = (mm: number | null, span: Span): number | null =>
  mm === null || !span ? mm : Math.min(span[1], Math.max(span[0], mm));

const same = (a: number | null, b: number | null): boolean =>
  a === b || (a !== null && b !== null && Math.abs(a - b) < 1e-9);
