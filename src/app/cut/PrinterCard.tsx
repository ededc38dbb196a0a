// The card of the printer: a print is corrected for one that does not keep the scale, by what it made of the square.

import { useState } from 'react';
import { CUT, type Unit } from '../../document';
import { inches } from '../../engine';
import { correctionText } from '../../paper';
import { LengthField } from '../components/fields/LengthField';
import { browserStorage } from '../storage/device/storageLike';
import { createPrinterStorage, printerFaultSentence } from '../storage/printers';
import { choose, correctionOf, measuredPrinter, useCutChoices } from './choices/cutChoices';
import { Fold } from './Fold';

const printerStorage = createPrinterStorage({ storage: browserStorage(window), now: () => new Date() });

/** Stands for a printer that has no name yet. */
const NEW = '';

/** Side of the square on the first page, mm. */
const SQUARE_MM: Readonly<Record<Unit, number>> = { in: inches(4), cm: 100 };

type StorageFault = Parameters<typeof printerFaultSentence>[0];
type EntryFault = 'nameMissing' | 'measureMissing' | 'tooFarOff';

/** What the card reports; null where nothing is wrong. */
type Fault =
  | { readonly kind: 'entry'; readonly fault: EntryFault }
  | { readonly kind: 'storage'; readonly fault: StorageFault }
  | null;

const entryFault = (fault: EntryFault): Fault => ({ kind: 'entry', fault });
const storageFault = (fault: StorageFault | null): Fault => fault && { kind: 'storage', fault };

export function PrinterCard({ unit }: { unit: Unit }) {
  const choices = useCutChoices();
  const { printers, printer } = choices;
  const [name, setName] = useState('');
  const [measured, setMeasured] = useState<{ across: number | null; down: number | null }>(NOT_MEASURED);
  const [fault, setFault] = useState(loadPrinters);
  const square = CUT.printer.square[unit];
  const correction = correctionOf(choices);
  const isNew = printer === NEW;

  /** Corrects the chosen printer. */
  const correct = (): Fault => {
    const typedName = (isNew ? name : (printer ?? '')).trim();
    const { across, down } = measured;
    if (typedName === '') return entryFault('nameMissing');
    if (across === null || down === null) return entryFault('measureMissing');
    const next = measuredPrinter(choices, typedName, SQUARE_MM[unit], { across, down });
    if (!next) return entryFault('tooFarOff');
    const failure = printerStorage.keep(next);
    choose({ printers: [...printers.filter((each) => each.name !== typedName), next], printer: typedName });
    setMeasured(NOT_MEASURED);
    setName('');
    return storageFault(failure);
  };

  const forget = (): void => {
    const failure = printer === null ? null : printerStorage.forget(printer);
    choose({ printers: printers.filter((each) => each.name !== printer), printer: null });
    setFault(storageFault(failure));
  };

  const field = (label: string, direction: 'across' | 'down') => (
    <LengthField
      label={label}
      value={measured[direction]}
      unit={unit}
      onShow={(mm) => setMeasured((before) => ({ ...before, [direction]: mm }))}
      onKeep={() => undefined}
      onDrop={() => setMeasured((before) => ({ ...before, [direction]: null }))}
    />
  );
  return (
    <Fold title={CUT.printer.title} className="printer-card" isOpen={printer !== null || fault !== null}>
      <label className="choice">
        <span>{CUT.printer.label}</span>
        <select
          value={printer === null ? 'none' : `printer ${printer}`}
          onChange={({ target: { value } }) => {
            setFault(null);
            choose({ printer: value === 'none' ? null : value.slice('printer '.length) });
          }}
        >
          <option value="none">{CUT.printer.keepsScale}</option>
          {printers.map((each) => (
            <option key={each.name} value={`printer ${each.name}`}>
              {each.name}
            </option>
          ))}
          <option value={`printer ${NEW}`}>{CUT.printer.another}</option>
        </select>
      </label>
      {printer === null ? (
        <p className="hint">{CUT.printer.keepsScaleHint({ square })}</p>
      ) : (
        <>
          {isNew ? (
            <div className="text-field">
              <label htmlFor="printer-name">{CUT.printer.name}</label>
              <input
                id="printer-name"
                type="text"
                autoComplete="off"
                maxLength={60}
                value={name}
                onChange={(event) => setName(event.target.value)}
              />
            </div>
          ) : null}
          <p className="hint">
            {correction
              ? CUT.printer.corrected({ correction: correctionText(correction) })
              : CUT.printer.uncorrected({ square })}
          </p>
          {field(CUT.printer.across, 'across')}
          {field(CUT.printer.down, 'down')}
          <div className="actions">
            <button type="button" onClick={() => setFault(correct())}>
              {CUT.printer.correct}
            </button>
            {isNew ? null : (
              <button type="button" className="quiet" onClick={forget}>
                {CUT.printer.forget}
              </button>
            )}
          </div>
        </>
      )}
      <p className="said" aria-live="polite">
        {fault ? faultSentence(fault) : ''}
      </p>
    </Fold>
  );
}

const NOT_MEASURED = { across: null, down: null } as const;

const faultSentence = (fault: NonNullable<Fault>): string =>
  fault.kind === 'entry' ? CUT.printer.faults[fault.fault] : printerFaultSentence(fault.fault);

/** Adds the printers kept on this device to the choices. Reports only that they cannot be read. */
function loadPrinters(): Fault {
  const { printers, fault } = printerStorage.read();
  const { printers: present } = useCutChoices.getState();
  const added = printers.filter(({ name }) => !present.some((each) => each.name === name));
  if (added.length > 0) choose({ printers: [...present, ...added] });
  return storageFault(fault === 'unreadable' ? fault : null);
}
