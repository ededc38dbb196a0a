// The book as one file: written to be kept elsewhere, and read back with a look at what would change.

import { useState } from 'react';
import {
  BACKUP,
  type BackedUpClient,
  type BackedUpStyle,
  type Book,
  bookFaultSentence,
  compareBackup,
  compareStyles,
  readBackup,
  restore,
} from '../../document';
import { BackupButton } from '../components/BackupButton';
import { Checkbox } from '../components/fields/Checkbox';
import { FileChoice } from '../components/fields/FileChoice';
import { formatDay } from '../components/formatDay';
import { useOpen, useStore } from '../store/storeContext';

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
        ? bookFaultSentence(backup.fault)
        : backup.kind === 'newer'
          ? BACKUP.newer({ version: backup.version })
          : null,
    );
    if (backup.kind === 'backup') setFound(backup);
  };
  return (
    <section className="backup" aria-label={BACKUP.label}>
      <div className="list-head">
        <h3>{BACKUP.title}</h3>
        <BackupButton book={kept} />
        <FileChoice label={BACKUP.choose} onChoose={read} />
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
  const back = BACKUP.contents({ clients: clientTicks.chosen.size, styles: styleTicks.chosen.size });
  const contents = BACKUP.contents({ clients: rows.length, styles: styles.length });
  return (
    <div className="preview">
      <p>
        {found.madeOn === null
          ? BACKUP.found({ contents })
          : BACKUP.foundOf({ day: formatDay(found.madeOn), contents })}
        {elsewhere > 0 ? ` ${BACKUP.notInIt({ count: elsewhere })}` : ''}
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
          {BACKUP.leave}
        </button>
        <button
          type="button"
          className="primary"
          disabled={back === ''}
          onClick={() => {
            const chosen = { clients: clientTicks.chosen, styles: styleTicks.chosen };
            change({ code: 'backupRestored' }, (before) => restore(before, found.book, chosen));
            onDone(BACKUP.restored);
          }}
        >
          {back === '' ? BACKUP.bringBackNothing : BACKUP.bringBack({ contents: back })}
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

function styleSentence({ state, style, here }: BackedUpStyle): string {
  if (state === 'new') return BACKUP.style.new;
  if (state === 'same') return BACKUP.style.same;
  return here && here.name !== style.name ? BACKUP.style.renamed(here) : BACKUP.style.other;
}

function sentence({ state, differs }: BackedUpClient): string {
  if (state === 'new') return BACKUP.client.new;
  if (state === 'same') return BACKUP.client.same;
  return BACKUP.client.other({ differences: differs.map((each) => BACKUP.differences[each]) });
}
