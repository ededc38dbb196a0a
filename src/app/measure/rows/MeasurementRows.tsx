// The rows of numbers. Enter and Tab go from number to number, Enter in the last one goes on to the next step; a list pasted into
// one fills it and those after it.

import { type ClipboardEvent, type KeyboardEvent, memo, useMemo, useState } from 'react';
import {
  changeClient,
  type LaidNumbers,
  layNumbers,
  listParts,
  MEASURE,
  setMeasurement,
  unusualOnes,
} from '../../../document';
import type { MeasurementName } from '../../../engine';
import { useOpen, useStore } from '../../store/storeContext';
import { FractionKeys } from './FractionKeys';
import type { FieldShown } from './fieldShown';
import { MeasurementRow } from './MeasurementRow';
import { PastedLine } from './PastedLine';
import { type AlsoGroup, neededGroups, rowGroups } from './rowGroups';
import { SidesFields } from './SidesFields';
import { walkFrom } from './walkFields';

interface MeasurementRowsProps {
  /** Path of the field that was last gone into. */
  readonly inHand: string | null;
  /** Groups that are shown although nothing of them is needed. */
  readonly also: ReadonlySet<AlsoGroup>;
  /** The measurements whose readings are open. */
  readonly reading: readonly MeasurementName[];
  readonly onFocus: (shown: FieldShown) => void;
  readonly onRead: (name: MeasurementName) => void;
}

export const MeasurementRows = memo(function MeasurementRows(props: MeasurementRowsProps) {
  const { inHand, also, reading, onFocus, onRead } = props;
  const { client, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const [pasted, setPasted] = useState<{ readonly of: string; readonly laid: LaidNumbers } | null>(null);
  const [typing, setTyping] = useState<HTMLInputElement | null>(null);
  const odd = useMemo(
    () => unusualOnes(client.measurements, client.estimated),
    [client.measurements, client.estimated],
  );
  const groups = rowGroups(new Set([...also, ...neededGroups(client, savedDraft.style)]));
  const paste = (event: ClipboardEvent<HTMLFormElement>): void => {
    const parts = listParts(event.clipboardData.getData('text/plain'));
    const first = event.target instanceof Element ? fieldOf(event.target) : null;
    const names = groups.flatMap((each) => each.names);
    const from = names.findIndex((name) => String(name) === first);
    if (!parts || from < 0) return;
    event.preventDefault();
    const laid = layNumbers(parts, names.slice(from), client.unit);
    if (laid.filled.length > 0)
      change({ code: 'numbersPasted', count: laid.filled.length }, (book) =>
        changeClient(book, (open) =>
          laid.filled.reduce((before, { name, mm }) => setMeasurement(before, name, mm), open),
        ),
      );
    setPasted({ of: client.id, laid });
  };
  return (
    <form
      className="tape-form"
      onSubmit={(event) => event.preventDefault()}
      onKeyDown={walk}
      onPaste={paste}
      onFocus={({ target }) => setTyping(isNumber(target) ? target : null)}
      onBlur={() => setTyping(null)}
    >
      {pasted?.of === client.id ? <PastedLine laid={pasted.laid} /> : null}
      {groups.map(({ group, names }) => (
        <fieldset key={group}>
          <legend>
            <h2>{MEASURE.groups[group].title}</h2>{' '}
            <span className="intro">{MEASURE.groups[group].intro}</span>
          </legend>
          {names.map((name) => (
            <MeasurementRow
              key={`${client.id} ${name}`}
              name={name}
              odd={odd.get(name) ?? null}
              isInHand={inHand === name}
              isReading={reading.includes(name)}
              onFocus={onFocus}
              onRead={onRead}
            />
          ))}
        </fieldset>
      ))}
      <SidesFields inHand={inHand} onFocus={onFocus} />
      {typing && isTouched() ? <FractionKeys key={client.unit} unit={client.unit} field={typing} /> : null}
    </form>
  );
});

const isNumber = (target: EventTarget): target is HTMLInputElement =>
  target instanceof HTMLInputElement && target.type === 'text';

/** Whether the device is touched, so that its number keyboard has no fractions. */
const isTouched = (): boolean => window.matchMedia?.('(any-pointer: coarse)').matches ?? false;

const fieldOf = (element: Element): string | null =>
  element.closest('[data-field]')?.getAttribute('data-field') ?? null;

/**
 * Enter goes to the next number, with Shift to the one before, and from the last one to the way on. Alt and arrow down opens the
 * menu of the row.
 */
function walk(event: KeyboardEvent<HTMLFormElement>): void {
  const { target, key, nativeEvent, altKey, shiftKey } = event;
  if (!isNumber(target)) return;
  if (nativeEvent.isComposing || event.ctrlKey || event.metaKey) return;
  if (key === 'ArrowDown' && altKey)
    target.closest('.tape-row')?.querySelector<HTMLElement>('.row-more')?.click();
  else if (key === 'Enter' && !altKey) walkFrom(target, shiftKey);
  else return;
  event.preventDefault();
}
