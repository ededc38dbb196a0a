// What a backup, or what was put aside, holds beside the book, and what becomes of each client and style of it.

import { useEffect, useState } from 'react';
import {
  BACKUP,
  type BackedUpClient,
  type BackedUpStyle,
  type Backup,
  type Book,
  badPartsSentence,
  compareClients,
  comparedWith,
  compareStyles,
  type FaultyPart,
  type RestoreHow,
  restore,
} from '../../../document';
import { Checkbox } from '../../components/fields/Checkbox';
import { formatDay } from '../../components/files/formatDay';
import { withClientsOpened } from '../../storage/book/openClients';
import { useOpen, useStore } from '../../store/storeContext';

interface RestorePreviewProps {
  readonly backup: Backup;
  /** Given what was done as a sentence; null where the book was left as it is. */
  readonly onDone: (said: string | null) => void;
}

export function RestorePreview({ backup, onDone }: RestorePreviewProps) {
  const { book } = useOpen();
  const compared = useComparedBook(book, backup);
  return compared ? <Rows backup={backup} compared={compared} onDone={onDone} /> : null;
}

/** The book with those clients opened that the backup is compared with; null until they are. */
function useComparedBook(book: Book, backup: Backup): Book | null {
  const ids = comparedWith(book, backup);
  const isReady = !book.unopened?.some(({ id }) => ids.includes(id));
  const [opened, setOpened] = useState<{ from: Book; book: Book } | null>(null);
  useEffect(() => {
    let there = true;
    const set = (next: Book): void => {
      if (there) setOpened({ from: book, book: next });
    };
    if (!isReady)
      withClientsOpened(book, comparedWith(book, backup)).then(
        (found) => set(found.book),
        () => set(book),
      );
    return () => {
      there = false;
    };
  }, [book, backup, isReady]);
  if (isReady) return book;
  return opened?.from === book ? opened.book : null;
}

function Rows({ backup, compared, onDone }: RestorePreviewProps & { readonly compared: Book }) {
  const change = useStore((state) => state.change);
  const clients = compareClients(compared, backup);
  const styles = compareStyles(compared, backup);
  const [chosenClients, chooseClient] = useChoices(newOnes(clients, backup));
  const [chosenStyles, chooseStyle] = useChoices(newOnes(styles, backup));
  const back = BACKUP.contents({ clients: chosenClients.size, styles: chosenStyles.size });
  const contents = BACKUP.contents({ clients: clients.length, styles: styles.length });
  const inBook = compared.clients.length + (compared.unopened?.length ?? 0);
  const elsewhere = inBook - clients.filter(({ here }) => here !== null).length;
  return (
    <div className="preview">
      <p>
        {backup.madeOn === null
          ? BACKUP.found({ contents })
          : BACKUP.foundOf({ day: formatDay(backup.madeOn), contents })}
        {elsewhere > 0 ? ` ${BACKUP.notInIt({ count: elsewhere })}` : ''}
      </p>
      {backup.isPart ? <p className="said">{BACKUP.isPart}</p> : null}
      <ul>
        <ChoiceRows
          rows={clients}
          sentence={clientSentence}
          chosen={chosenClients}
          choose={chooseClient}
          faulty={backup.faulty}
        />
        <ChoiceRows
          rows={styles}
          sentence={styleSentence}
          chosen={chosenStyles}
          choose={chooseStyle}
          faulty={backup.faulty}
        />
        {backup.lost.map((part, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: nothing else tells them apart, and the list never changes
          <li key={i}>
            <b>{BACKUP.lost(part)}</b> {badPartsSentence(part)}
          </li>
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
            const chosen = { clients: chosenClients, styles: chosenStyles };
            change({ code: 'backupRestored' }, (before) =>
              restore(before, named(backup), chosen, () => crypto.randomUUID()),
            );
            onDone(BACKUP.restored);
          }}
        >
          {back === '' ? BACKUP.bringBackNothing : BACKUP.bringBack({ contents: back })}
        </button>
      </p>
    </div>
  );
}

/** New ones come back unless one says otherwise, but for those of which a part cannot be read. */
const newOnes = (rows: readonly (BackedUpClient | BackedUpStyle)[], { faulty }: Backup): readonly string[] =>
  rows.filter(({ state, part }) => state === 'new' && !faulty.has(part.id)).map(({ part }) => part.id);

/** A name that could not be read is replaced by one that says so. */
const named = (backup: Backup): Backup => ({
  ...backup,
  clients: backup.clients.map((each) => (each.name === '' ? { ...each, name: BACKUP.unnamed } : each)),
  styles: backup.styles.map((each) => (each.name === '' ? { ...each, name: BACKUP.unnamed } : each)),
});

type Choices = ReadonlyMap<string, RestoreHow>;

function useChoices(first: readonly string[]): [Choices, (id: string, how: RestoreHow | null) => void] {
  const [chosen, setChosen] = useState<Choices>(() => new Map(first.map((id) => [id, 'beside'])));
  const choose = (id: string, how: RestoreHow | null): void => {
    const next = new Map(chosen);
    if (how === null) next.delete(id);
    else next.set(id, how);
    setChosen(next);
  };
  return [chosen, choose];
}

interface ChoiceRowsProps<Part extends BackedUpClient | BackedUpStyle> {
  readonly rows: readonly Part[];
  /** What is said behind the name of a part. */
  readonly sentence: (part: Part) => string;
  readonly chosen: Choices;
  readonly choose: (id: string, how: RestoreHow | null) => void;
  readonly faulty: Backup['faulty'];
}

/** The clients of a backup, or its styles, a row each. */
function ChoiceRows<Part extends BackedUpClient | BackedUpStyle>(props: ChoiceRowsProps<Part>) {
  const { rows, sentence, chosen, choose, faulty } = props;
  return rows.map((row) => (
    <Row
      key={row.part.id}
      row={row}
      chosen={chosen.get(row.part.id)}
      choose={(how) => choose(row.part.id, how)}
      faulty={faulty.get(row.part.id)}
      says={sentence(row)}
    />
  ));
}

interface RowProps {
  readonly row: BackedUpClient | BackedUpStyle;
  readonly chosen: RestoreHow | undefined;
  readonly choose: (how: RestoreHow | null) => void;
  readonly faulty: FaultyPart | undefined;
  /** Goes on behind the name. */
  readonly says: string;
}

function Row({ row, chosen, choose, faulty, says }: RowProps) {
  const name = row.part.name === '' ? BACKUP.unnamed : row.part.name;
  const bad = faulty ? ` ${BACKUP.faulty({ bad: badPartsSentence(faulty) })}` : '';
  if (row.state !== 'different')
    return (
      <li>
        <Checkbox
          on={chosen !== undefined}
          disabled={row.state === 'same'}
          onSet={(on) => choose(on ? 'beside' : null)}
        >
          <b>{name}</b> {says}
          {bad}
        </Checkbox>
      </li>
    );
  return (
    <li className="restore-choice">
      <span>
        <b>{name}</b> {says}
        {bad}
      </span>
      <select
        aria-label={BACKUP.how.label({ name })}
        value={chosen ?? 'leave'}
        onChange={({ target: { value } }) => choose(value === 'beside' || value === 'instead' ? value : null)}
      >
        {(['leave', 'beside', 'instead'] as const).map((how) => (
          <option key={how} value={how}>
            {BACKUP.how[how]}
          </option>
        ))}
      </select>
    </li>
  );
}

function styleSentence({ state, part, here }: BackedUpStyle): string {
  if (state === 'new') return BACKUP.style.new;
  if (state === 'same') return BACKUP.style.same;
  return here && here.name !== part.name ? BACKUP.style.renamed(here) : BACKUP.style.other;
}

function clientSentence({ state, part, here, differs, newer }: BackedUpClient): string {
  if (state === 'new') return BACKUP.client.new;
  if (state === 'same') return BACKUP.client.same;
  const differences = differs.map((each) => BACKUP.differences[each]);
  const other = BACKUP.client.other({
    differences,
    here: here && here.name !== part.name ? here.name : null,
  });
  return newer === null ? other : `${other} ${BACKUP.client.newer[newer]}`;
}
