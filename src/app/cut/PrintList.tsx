// What was printed for the client, the last first: each with the tape, style, girths and alterations that it was drafted from.

import { useState } from 'react';
import { alterationsOf, CUT, type KeptPrint, type Unit } from '../../document';
import { recordOf } from '../../paper';
import { formatDay } from '../components/files/formatDay';
import { draftOnce, useOpen } from '../store/storeContext';
import '../styles/prints.css';

const TEXTS = CUT.prints;

export default function PrintList() {
  const { client } = useOpen();
  return (
    <ol className="print-list">
      {[...client.prints].reverse().map((print, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a print is told by its place in the list
        <li key={client.prints.length - i}>
          <Print print={print} unit={client.unit} />
        </li>
      ))}
    </ol>
  );
}

function Print({ print, unit }: { readonly print: KeptPrint; readonly unit: Unit }) {
  const [isOpen, setOpen] = useState(false);
  const { mockup, form, draftName, takenOn, fittings } = print;
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        {TEXTS.line({
          day: formatDay(print.on),
          draft: draftName,
          mockup,
          form: TEXTS.forms[form],
          tape: takenOn === null ? null : formatDay(takenOn),
          alterations: alterationsOf(fittings).length,
        })}
      </summary>
      {isOpen ? <PrintedRecord print={print} unit={unit} /> : null}
    </details>
  );
}

function PrintedRecord({ print, unit }: { readonly print: KeptPrint; readonly unit: Unit }) {
  const { measurements, style, fittings, takenOn, mockup, program } = print;
  const { parts, girths } = recordOf({
    draft: draftOnce(print, { style, fittings }),
    client: { unit, measurements, estimated: [] },
    savedDraft: { style, fittings },
    date: formatDay(print.on),
    tapeDay: takenOn === null ? null : formatDay(takenOn),
    program,
    ...(mockup === null ? {} : { mockup: true, mockupNumber: mockup }),
  });
  return (
    <>
      {parts.map(({ heading, rows }) => (
        <section key={heading}>
          <h3>{heading}</h3>
          <table>
            <tbody>
              {rows.map(([what, amount]) => (
                <tr key={`${what} ${amount}`}>
                  <th scope="row">{what}</th>
                  <td>{amount}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      <section>
        <h3>{girths.heading}</h3>
        <table>
          <thead>
            <tr>
              {girths.columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {girths.rows.map(([level, ...cells]) => (
              <tr key={level}>
                <th scope="row">{level}</th>
                {cells.map((cell, i) => (
                  <td key={girths.columns[i + 1]}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
