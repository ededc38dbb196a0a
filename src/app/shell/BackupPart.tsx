// The book as one file: written to be kept elsewhere, and read back with a look at what would change.

import { useState } from 'react';
import {
  type BackedUpClient,
  type BackedUpStyle,
  type Book,
  compareBackup,
  compareStyles,
  type Difference,
  readBackup,
  restore,
} from '../../document';
import { BackupButton } from '../components/BackupButton';
import { Checkbox } from '../components/Checkbox';
import { FileChoice } from '../components/FileChoice';
import { formatDay } from '../components/formatDay';
import { useOpen, useStore } from '../store/storeContext';

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
  const kept = useStore((state) => state.kept);
  const [found, setFound] = useState<Found | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [done, setDone] = useState<string | null>(null);
  const read = (text: string): void => {
    setDone(null);
    setFound(null);
    const backup = readBackup(text);
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
        <BackupButton book={kept} />
        <FileChoice label="Restore from a backup" onChoose={read} />
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
  const change = useStore((state) => state.change);
  const rows = compareBackup(book, found.book);
  const styles = compareStyles(book, found.book);
  const clientTicks = useTicks(rows.filter(({ state }) => state === 'new').map(({ client }) => client.id));
  const styleTicks = useTicks(styles.filter(({ state }) => state === 'new').map(({ style }) => style.id));
  const elsewhere = book.clients.length - rows.filter(({ here }) => here !== null).length;
  const back = [
    ...counted(clientTicks.chosen.size, 'client'),
    ...counted(styleTicks.chosen.size, 'style'),
  ].join(' and ');
  return (
    <div className="preview">
      <p>
        {found.madeOn === null ? 'A backup' : `A backup of ${formatDay(found.madeOn)}`} with{' '}
        {[...counted(rows.length, 'client'), ...counted(styles.length, 'style')].join(' and ')}. Tick what to
        bring back.
        {elsewhere > 0
          ? ` ${elsewhere === 1 ? 'One client' : `${elsewhere} clients`} of the book not in it stay as they are.`
          : ''}
      </p>
      <ul>
        {rows.map((row) => (
          <Row key={row.client.id} row={row} name={row.client.name} ticks={clientTicks} id={row.client.id}>
            {sentence(row)}
          </Row>
        ))}
        {styles.map((row) => (
          <Row key={row.style.id} row={row} name={row.style.name} ticks={styleTicks} id={row.style.id}>
            {styleSentence(row)}
          </Row>
        ))}
      </ul>
      <p className="dialog-actions">
        <button type="button" onClick={() => onDone(null)}>
          Leave the book as it is
        </button>
        <button
          type="button"
          className="primary"
          disabled={back === ''}
          onClick={() => {
            const chosen = { clients: clientTicks.chosen, styles: styleTicks.chosen };
            change({ code: 'backupRestored' }, (before) => restore(before, found.book, chosen));
            onDone('Restored. Undo brings the book back as it was.');
          }}
        >
          Bring back {back === '' ? 'nothing' : back}
        </button>
      </p>
    </div>
  );
}

interface Ticks {
  readonly chosen: ReadonlySet<string>;
  readonly choose: (id: string, on: boolean) => void;
}

function useTicks(first: readonly string[]): Ticks {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(() => new Set(first));
  const choose = (id: string, on: boolean): void => {
    const next = new Set(chosen);
    if (on) next.add(id);
    else next.delete(id);
    setChosen(next);
  };
  return { chosen, choose };
}

interface RowProps {
  readonly row: BackedUpClient | BackedUpStyle;
  readonly id: string;
  readonly name: string;
  readonly ticks: Ticks;
  readonly children: string;
}

function Row({ row, id, name, ticks, children }: RowProps) {
  return (
    <li>
      <Checkbox
        on={ticks.chosen.has(id)}
        disabled={row.state === 'same'}
        onSet={(chosen) => ticks.choose(id, chosen)}
      >
        <b>{name}</b> {children}
      </Checkbox>
    </li>
  );
}

/** "one client", "3 clients"; none is not spoken of. */
const counted = (count: number, of: string): string[] =>
  count === 0 ? [] : [count === 1 ? `one ${of}` : `${count} ${of}s`];

function styleSentence({ state, style, here }: BackedUpStyle): string {
  if (state === 'new') return 'is a style that is not in the book and would be added.';
  if (state === 'same') return 'is a style that is in the book just so.';
  return here && here.name !== style.name
    ? `is the style called ${here.name} in the book, which would be replaced.`
    : 'is a style that is otherwise in the book, which would be replaced.';
}

function sentence({ state, differs }: BackedUpClient): string {
  if (state === 'new') return 'is not in the book and would be added.';
  if (state === 'same') return 'is in the book just so.';
  return `is in the book with other ${differs.map((each) => DIFFERENCES[each]).join(', ')}, which would be replaced.`;
}
