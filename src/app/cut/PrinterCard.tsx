// A printer that does not keep the scale: what its print of the square measured corrects the next.

import { useState } from 'react';
import type { Unit } from '../../document';
import { inches } from '../../engine';
import { correctionWords } from '../../paper';
import { LengthField } from '../components/LengthField';
import { createPrinterStorage, printerFaultSentence } from '../storage/printers';
import { browserStorage } from '../storage/storageLike';
import { choose, correctionOf, measuredPrinter, useCutChoices } from './choices/cutChoices';

const kept = createPrinterStorage({ storage: browserStorage(window), now: () => new Date() });

/** Name of a printer that has none yet. */
const NEW = '';

export function PrinterCard({ unit }: { unit: Unit }) {
  const choices = useCutChoices();
  const { printers, printer } = choices;
  const [name, setName] = useState('');
  const [measured, setMeasured] = useState<{ across: number | null; down: number | null }>(NOTHING);
  const [said, setSaid] = useState(() => takeKept());
  const side = unit === 'in' ? { mm: inches(4), words: '4 in' } : { mm: 100, words: '10 cm (100 mm)' };
  const correction = correctionOf(choices);
  const naming = printer === NEW;

  /** Corrects the printer in hand; gives what there is to say of it. */
  const correct = (): string => {
    const called = (naming ? name : (printer ?? '')).trim();
    const { across, down } = measured;
    if (called === '') return 'Give the printer a name, so that its correction is found again.';
    if (across === null || down === null) return 'Type what the square measured, both across and down.';
    const next = measuredPrinter(choices, called, side.mm, { across, down });
    if (!next)
      return 'That is more than 10 % off: look whether the print was fitted to the page, and which square was measured.';
    const fault = kept.keep(next);
    choose({ printers: [...printers.filter((each) => each.name !== called), next], printer: called });
    setMeasured(NOTHING);
    setName('');
    return fault ? printerFaultSentence(fault) : '';
  };

  const forget = (): void => {
    const fault = printer === null ? null : kept.forget(printer);
    choose({ printers: printers.filter((each) => each.name !== printer), printer: null });
    setSaid(fault ? printerFaultSentence(fault) : '');
  };

  const field = (label: string, way: 'across' | 'down') => (
    <LengthField
      label={label}
      value={measured[way]}
      unit={unit}
      onShow={(mm) => setMeasured((before) => ({ ...before, [way]: mm }))}
      onKeep={() => undefined}
      onDrop={() => setMeasured((before) => ({ ...before, [way]: null }))}
    />
  );
  return (
    <section className="card printer-card" aria-label="Printer">
      <h2>Printer</h2>
      <label className="choice">
        <span>The print is for</span>
        <select
          value={printer === null ? 'none' : `printer ${printer}`}
          onChange={({ target: { value } }) => {
            setSaid('');
            choose({ printer: value === 'none' ? null : value.slice('printer '.length) });
          }}
        >
          <option value="none">a printer that keeps the scale</option>
          {printers.map((each) => (
            <option key={each.name} value={`printer ${each.name}`}>
              {each.name}
            </option>
          ))}
          <option value={`printer ${NEW}`}>another printer…</option>
        </select>
      </label>
      {printer === null ? (
        <p className="hint">
          Print at 100 %, without fitting to the page, and measure the square on the first page before
          cutting. If it is not {side.words}, choose another printer here and say what it measured.
        </p>
      ) : (
        <>
          {naming ? (
            <div className="text-field">
              <label htmlFor="printer-name">Name of the printer</label>
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
              ? `Prints for it are drawn ${correctionWords(correction)}. If its last print still was not right:`
              : `What the ${side.words} square of its last print measured, to the centre of the line:`}
          </p>
          {field('Square across', 'across')}
          {field('Square down', 'down')}
          <div className="actions">
            <button type="button" onClick={() => setSaid(correct())}>
              Correct the next print
            </button>
            {naming ? null : (
              <button type="button" className="quiet" onClick={forget}>
                Forget this printer
              </button>
            )}
          </div>
        </>
      )}
      <p className="said" aria-live="polite">
        {said}
      </p>
    </section>
  );
}

const NOTHING = { across: null, down: null } as const;

/** Takes over the printers kept on this device; gives what there is to say of it. */
function takeKept(): string {
  const { printers, fault } = kept.read();
  const { printers: there } = useCutChoices.getState();
  const fresh = printers.filter(({ name }) => !there.some((each) => each.name === name));
  if (fresh.length > 0) choose({ printers: [...there, ...fresh] });
  return fault === 'unreadable' ? printerFaultSentence(fault) : '';
}
