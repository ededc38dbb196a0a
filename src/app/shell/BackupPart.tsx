// The book as one file: written to be kept elsewhere, and read back with a look at what would change.

import { useId, useState } from 'react';
import {
  type BackedUp,
  type Book,
  compareBackup,
  type Difference,
  readBackup,
  restore,
  writeBackup,
} from '../../document';
import { download } from '../parts/download';
import { formatDay, today } from '../parts/formatDay';
import { useOpen, useTable } from '../tableContext';

const DIFFERENCES: Readonly<Record<Difference, string>> = {
  name: 'her name',
  measurements: 'measurements',
  drafts: 'drafts',
  readings: 'readings and estimates',
  otherwise: 'her unit or whether she is in the archive',
};

interface Found {
  readonly book: Book;
  readonly madeOn: string | null;
}

export function BackupPart() {
  const { book } = useOpen();
  const input = useId();
  const [found, setFound] = useState<Found | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [done, setDone] = useState<string | null>(null);
  const read = async (file: File | undefined): Promise<void> => {
    setDone(null);
    setFound(null);
    if (!file) return;
    const backup = readBackup(await file.text().catch(() => ''));
    setFault(
      backup.kind === 'unreadable'
        ? backup.reason
        : backup.kind === 'newer'
          ? `This backup was written by a later version of this page (${backup.version}). Open it with that one.`
          : null,
    );
    if (backup.kind === 'backup') setFound(backup);
  };
  return (
    <section className="backup" aria-label="Backup">
      <div className="list-head">
        <h3>One file of everything</h3>
        <button
          type="button"
          onClick={() =>
            download(writeBackup(book, today()), 'application/json', `staywright-${today()}.json`)
          }
        >
          Download a backup
        </button>
        <label className="file-choice" htmlFor={input}>
          <span>Restore from a backup</span>
          <input
            id={input}
            type="file"
            accept="application/json,.json"
            onChange={(event) => {
              void read(event.target.files?.[0]);
              event.target.value = '';
            }}
          />
        </label>
      </div>
      <p className="said" role="status">
        {fault ?? ''}
      </p>
      {found ? (
        <Preview
          found={found}
          onDone={(said) => {
            setFound(null);
            setDone(said);
          }}
        />
      ) : null}
      <p className="hint" role="status">
        {done ?? ''}
      </p>
    </section>
  );
}

function Preview({ found, onDone }: { found: Found; onDone: (said: string | null) => void }) {
  const { book } = useOpen();
  const change = useTable((table) => table.change);
  const rows = compareBackup(book, found.book);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(rows.filter(({ state }) => state === 'new').map(({ client }) => client.id)),
  );
  const choose = (id: string, on: boolean): void => {
    const next = new Set(chosen);
    if (on) next.add(id);
    else next.delete(id);
    setChosen(next);
  };
  const elsewhere = book.clients.length - rows.filter(({ here }) => here !== null).length;
  return (
    <div className="preview">
      <p>
        {found.madeOn === null ? 'A backup' : `A backup of ${formatDay(found.madeOn)}`} with{' '}
        {rows.length === 1 ? 'one client' : `${rows.length} clients`}. Tick whom to bring back.
        {elsewhere > 0
          ? ` ${elsewhere === 1 ? 'One client' : `${elsewhere} clients`} of the book not in it stay as they are.`
          : ''}
      </p>
      <ul>
        {rows.map((row) => (
          <li key={row.client.id}>
            <label className="tick">
              <input
                type="checkbox"
                disabled={row.state === 'same'}
                checked={chosen.has(row.client.id)}
                onChange={(event) => choose(row.client.id, event.target.checked)}
              />
              <span>
                <b>{row.client.name}</b> {sentence(row)}
              </span>
            </label>
          </li>
        ))}
      </ul>
      <p className="dialog-actions">
        <button type="button" onClick={() => onDone(null)}>
          Leave the book as it is
        </button>
        <button
          type="button"
          className="primary"
          disabled={chosen.size === 0}
          onClick={() => {
            change('restored a backup', (before) => restore(before, found.book, chosen));
            onDone('Restored. Undo brings the book back as it was.');
          }}
        >
          Bring back {chosen.size === 1 ? 'one client' : `${chosen.size} clients`}
        </button>
      </p>
    </div>
  );
}

function sentence({ state, differs }: BackedUp): string {
  if (state === 'new') return 'is not in the book and would be added.';
  if (state === 'same') return 'is in the book just so.';
  return `is in the book with other ${differs.map((each) => DIFFERENCES[each]).join(', ')}, which would be replaced.`;
}
