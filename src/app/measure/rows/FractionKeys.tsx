// Keys of fractions over the number keyboard of a device that is touched: the fractions of an inch, the sign where one makes sense,
// and the way to the next number. They leave the focus in the field.

import { useEffect, useState } from 'react';
import { FIELDS, formatLength, MEASURE, type Unit } from '../../../document';
import { inches } from '../../../engine';
import { walkFrom } from './walkFields';
import { withFraction } from './withFraction';

const EIGHTHS = [2, 4, 6, 8, 10, 12, 14];
const SIXTEENTHS = [1, 3, 5, 7, 9, 11, 13, 15];

interface FractionKeysProps {
  readonly unit: Unit;
  /** The number in hand. */
  readonly field: HTMLInputElement;
}

export function FractionKeys({ unit, field }: FractionKeysProps) {
  const bottom = useKeyboardHeight();
  // The card above the rows and these keys may lie over the field that was touched; its scroll margins keep it between them.
  useEffect(() => {
    // In braces: newer browsers return a promise, which React would call as the end of the effect.
    field.scrollIntoView?.({ block: 'nearest' });
  }, [field]);
  const signKey = field.closest('.entry')?.querySelector<HTMLElement>('.sign-key');
  const key = (sixteenths: number) => {
    const fraction = spelled(sixteenths);
    return (
      <button
        key={sixteenths}
        type="button"
        tabIndex={-1}
        aria-label={fraction}
        onClick={() => type(field, withFraction(field.value, fraction))}
      >
        {formatLength(inches(sixteenths / 16), 'in')}
      </button>
    );
  };
  return (
    <div
      className={unit === 'in' ? 'fraction-keys' : 'fraction-keys plain'}
      role="toolbar"
      aria-label={MEASURE.keys.label}
      style={bottom > 0 ? { bottom } : undefined}
      // A press takes the focus from the field otherwise.
      onMouseDown={(event) => event.preventDefault()}
      onPointerDown={(event) => event.preventDefault()}
    >
      <div>
        {signKey ? (
          <button
            type="button"
            tabIndex={-1}
            aria-label={FIELDS.turnSign({ field: field.labels?.[0]?.textContent ?? '' })}
            onClick={() => signKey.click()}
          >
            ±
          </button>
        ) : null}
        {unit === 'in' ? EIGHTHS.map(key) : null}
        <button type="button" tabIndex={-1} className="go-on" onClick={() => walkFrom(field)}>
          {MEASURE.keys.next}
        </button>
      </div>
      {unit === 'in' ? <div>{SIXTEENTHS.map(key)}</div> : null}
    </div>
  );
}

/** A fraction in its lowest terms: 6 sixteenths are "3/8". */
function spelled(sixteenths: number): string {
  let [above, below] = [sixteenths, 16];
  while (above % 2 === 0) [above, below] = [above / 2, below / 2];
  return `${above}/${below}`;
}

/** Types a text into a field as keys do, in place of what is in it. */
function type(field: HTMLInputElement, text: string): void {
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field, text);
  field.dispatchEvent(new Event('input', { bubbles: true }));
}

/** How much of the window the device's own keyboard covers, px. */
function useKeyboardHeight(): number {
  const [height, setHeight] = useState(covered);
  useEffect(() => {
    const read = (): void => setHeight(covered());
    const viewport = window.visualViewport;
    viewport?.addEventListener('resize', read);
    viewport?.addEventListener('scroll', read);
    return () => {
      viewport?.removeEventListener('resize', read);
      viewport?.removeEventListener('scroll', read);
    };
  }, []);
  return height;
}

function covered(): number {
  const viewport = window.visualViewport;
  return viewport ? Math.max(0, window.innerHeight - viewport.offsetTop - viewport.height) : 0;
}
