// Clients from a table of people: a file that is chosen or dropped here, and what became of it.

import { useState } from 'react';
import { addPeople, entriesOf, PEOPLE, type ReadPeople, readPeople, SHELL } from '../../../document';
import { FileChoice } from '../../components/fields/FileChoice';
import { UndoLine } from '../../components/UndoLine';
import { useOpen, useStore } from '../../store/storeContext';

/** So many bad cells are named one by one. */
const MOST_NAMED = 8;

export function PeoplePart() {
  const { book, client } = useOpen();
  const change = useStore((state) => state.change);
  const [read, setRead] = useState<ReadPeople | 'none' | null>(null);
  const [isOver, setOver] = useState(false);
  const take = (text: string): void => {
    const found = readPeople(text, client.unit);
    setRead(found ?? 'none');
    if (!found || found.people.length === 0) return;
    const added = found.people.map(({ name, measured }, i) => ({
      id: crypto.randomUUID(),
      name: name || SHELL.clientBar.newClient({ number: entriesOf(book).length + 1 + i }),
      measured,
    }));
    change({ code: 'clientsRead', count: added.length }, (before) => addPeople(before, added));
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
      {read === 'none' ? (
        <p className="said" role="alert">
          {PEOPLE.none}
        </p>
      ) : null}
      {read && read !== 'none' ? <Became read={read} /> : null}
    </section>
  );
}

function Became({ read: { people, faults, unknown } }: { read: ReadPeople }) {
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
        {unknown.length > 0 ? <li>{PEOPLE.unknown({ columns: unknown })}</li> : null}
      </ul>
    </>
  );
}
