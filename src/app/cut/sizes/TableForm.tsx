// A table of sizes or of a cast: typed, pasted or out of a file, and what of it could not be read.

import { useId } from 'react';
import {
  hasMeasurement,
  type ReadBodies,
  rowFaultSentence,
  SIZES,
  SIZING,
  type Unit,
} from '../../../document';
import { ColumnsSaid, ColumnUses } from '../../components/fields/ColumnUses';
import { FileChoice } from '../../components/fields/FileChoice';
import { chooseUse, typeTable, useSizingChoices, type Whom } from './sizingChoices';

const TEXTS = SIZING.table;

/** So many rows with a fault are named one by one. */
const MOST_NAMED = 8;

interface TableFormProps {
  readonly whom: Whom;
  /** Null where the table is empty. */
  readonly read: ReadBodies | null;
  readonly unit: Unit;
}

export function TableForm({ whom, read, unit }: TableFormProps) {
  const text = useSizingChoices((choices) => choices.text[whom]);
  const id = useId();
  return (
    <div className="table-form">
      <label htmlFor={id}>{TEXTS[whom]}</label>
      <p className="hint" id={`${id}hint`}>
        {TEXTS.hint({ unit })}
      </p>
      <textarea
        id={id}
        aria-describedby={`${id}hint ${id}said`}
        rows={7}
        spellCheck={false}
        value={text}
        onChange={(event) => typeTable(whom, event.target.value)}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          if (event.dataTransfer.files.length === 0) return;
          event.preventDefault();
          void event.dataTransfer.files[0]?.text().then(
            (dropped) => typeTable(whom, dropped),
            () => undefined,
          );
        }}
      />
      <FileChoice
        label={TEXTS.file}
        accept=".csv,.txt,.tsv,text/csv"
        onChoose={(chosen) => typeTable(whom, chosen)}
      />
      <div id={`${id}said`} aria-live="polite">
        <Said read={read} />
      </div>
      {read ? <ColumnUses columns={read.columns} onChoose={(key, use) => chooseUse(whom, key, use)} /> : null}
    </div>
  );
}

function Said({ read }: { read: ReadBodies | null }) {
  if (!read) return <p className="hint">{TEXTS.empty}</p>;
  const { faults, bodies } = read;
  const isRead = hasMeasurement(read);
  return (
    <>
      <ColumnsSaid columns={read.columns} />
      {isRead && bodies.length === 0 && faults.length === 0 ? <p className="said">{SIZES.noRow}</p> : null}
      {faults.length > 0 ? (
        <ul className="unusual">
          {faults.slice(0, MOST_NAMED).map((fault) => (
            <li key={rowFaultSentence(fault)}>{rowFaultSentence(fault)}</li>
          ))}
          {faults.length > MOST_NAMED ? (
            <li>{TEXTS.moreFaults({ count: faults.length - MOST_NAMED })}</li>
          ) : null}
        </ul>
      ) : null}
    </>
  );
}
