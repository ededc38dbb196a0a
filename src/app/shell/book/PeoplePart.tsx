// Clients from a table of people: a file that is chosen or dropped here, and what became of it.

import { useState } from 'react';
import {
  addPeople,
  type ChosenUses,
  entriesOf,
  hasMeasurement,
  PEOPLE,
  passedOver,
  type ReadPeople,
  readPeople,
  SHELL,
  withUse,
} from '../../../document';
import { ColumnsSaid, ColumnUses } from '../../components/fields/ColumnUses';
import { FileChoice } from '../../components/fields/FileChoice';
import { UndoLine } from '../../components/UndoLine';
import { useOpen, useStore } from '../../store/storeContext';

/** So many bad cells are named one by one. */
const MOST_NAMED = 8;

/** A file that waits for an answer: what its columns are. */
interface Asked {
  readonly text: string;
  readonly chosen: ChosenUses;
}

const NONE_CHOSEN: ChosenUses = new Map();

export function PeoplePart() {
  const { book, client } = useOpen();
  const change = useStore((state) => state.change);
  const [added, setAdded] = useState<ReadPeople | null>(null);
  const [asked, setAsked] = useState<Asked | null>(null);
  const [isOver, setOver] = useState(false);
  const add = (read: ReadPeople): void => {
    setAsked(null);
    setAdded(read);
    const people = read.people.map(({ name, measured }, i) => ({
      id: crypto.randomUUID(),
      name: name || SHELL.clientBar.newClient({ number: entriesOf(book).length + 1 + i }),
      measured,
    }));
    change({ code: 'clientsRead', count: people.length }, (before) => addPeople(before, people));
  };
  const take = (text: string): void => {
    const read = readPeople(text, client.unit);
    setAdded(null);
    if (isClear(read)) add(read);
    else setAsked({ text, chosen: NONE_CHOSEN });
  };
  return (
    <section
      className={isOver ? 'people-part over' : 'people-part'}
      aria-label={PEOPLE.title}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const [file] = event.dataTransfer.files;
        void file
          ?.text()
          .catch(() => '')
          .then(take);
      }}
    >
      <div className="list-head">
        <h3>{PEOPLE.title}</h3>
        <FileChoice label={PEOPLE.choose} accept=".csv,.txt,.tsv,text/csv" onChoose={take} />
      </div>
      <p className="hint">{PEOPLE.hint}</p>
      {asked ? (
        <Ask
          read={readPeople(asked.text, client.unit, asked.chosen)}
          onChoose={(key, use) => setAsked({ ...asked, chosen: withUse(asked.chosen, key, use) })}
          onAdd={add}
          onLeave={() => setAsked(null)}
        />
      ) : null}
      {added ? <Became read={added} /> : null}
    </section>
  );
}

/** Nothing has to be asked: there are people, and every heading says what its column is. */
const isClear = ({ people, columns }: ReadPeople): boolean =>
  people.length > 0 &&
  passedOver(columns).length === 0 &&
  columns.every(({ isPresumedName, isUnderstood }) => isUnderstood || !isPresumedName);

interface AskProps {
  readonly read: ReadPeople;
  readonly onChoose: Parameters<typeof ColumnUses>[0]['onChoose'];
  readonly onAdd: (read: ReadPeople) => void;
  readonly onLeave: () => void;
}

/** What the file's columns are; nothing is added before that is said. */
function Ask({ read, onChoose, onAdd, onLeave }: AskProps) {
  const { people, columns } = read;
  return (
    <>
      <div role="alert">
        {columns.length === 0 ? <p className="said">{PEOPLE.empty}</p> : <ColumnsSaid columns={columns} />}
        {hasMeasurement(read) && people.length === 0 ? <p className="said">{PEOPLE.noRow}</p> : null}
      </div>
      <ColumnUses columns={columns} onChoose={onChoose} />
      {people.length > 0 ? (
        <div className="actions">
          <button type="button" onClick={() => onAdd(read)}>
            {PEOPLE.add({ count: people.length })}
          </button>
          <button type="button" onClick={onLeave}>
            {PEOPLE.leave}
          </button>
        </div>
      ) : null}
    </>
  );
}

function Became({ read: { people, faults } }: { read: ReadPeople }) {
  const count = people.length;
  return (
    <>
      <UndoLine change={{ code: 'clientsRead', count }}>{PEOPLE.added({ count })}</UndoLine>
      <ul className="unusual">
        {faults.slice(0, MOST_NAMED).map((fault) => (
          <li key={`${fault.row} ${fault.column}`}>{PEOPLE.badCell(fault)}</li>
        ))}
        {faults.length > MOST_NAMED ? (
          <li>{PEOPLE.moreFaults({ count: faults.length - MOST_NAMED })}</li>
        ) : null}
      </ul>
    </>
  );
}
