// The client book: the drafts of the client in view, and every client, searched, copied, put away and taken out.

import { useContext, useId, useState } from 'react';
import {
  addClient,
  archiveClient,
  type Book,
  byLastUse,
  type Change,
  CLIENT_BOOK,
  type ClientEntry,
  duplicateClient,
  entriesOf,
  followed,
  openClientOf,
  openedAfter,
  removeClient,
  SHELL,
  withOpened,
} from '../../../document';
import { nameFocus } from '../../components/awaited/awaitedFocus';
import { Dialog } from '../../components/Dialog';
import { Checkbox } from '../../components/fields/Checkbox';
import { formatDay } from '../../components/files/formatDay';
import { UndoLine } from '../../components/UndoLine';
import { setAside } from '../../storage/asides';
import { openedClient } from '../../storage/book/openClients';
import { recordKey } from '../../storage/records/record';
import { BooksContext } from '../../storage/windows/booksContext';
import { useOpen, useStore } from '../../store/storeContext';
import { BackupPart } from './BackupPart';
import { ClientPast } from './ClientPast';
import { DraftList } from './DraftList';
import { PeoplePart } from './PeoplePart';

const { clients: words } = CLIENT_BOOK;

/** More rows than this are drawn only when they are asked for. */
const MOST_ROWS = 40;

interface ClientBookProps {
  readonly onClose: () => void;
  /** The text of a backup to be looked at at once. */
  readonly handed?: string | null;
}

export default function ClientBook({ onClose, handed = null }: ClientBookProps) {
  const { book, client: current } = useOpen();
  const change = useStore((state) => state.change);
  const books = useContext(BooksContext);
  const [sought, setSought] = useState('');
  const [archive, setArchive] = useState(false);
  const [isLong, setLong] = useState(false);
  const [gone, setGone] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const search = useId();
  const entries = entriesOf(book);
  const found = [...entries]
    .sort(byLastUse)
    .filter(
      (client) =>
        (archive || sought !== '' || !client.archived || client.id === current.id) && fits(client, sought),
    );
  const archived = entries.filter((client) => client.archived).length;
  const add = (): void => {
    nameFocus.request();
    change({ code: 'clientAdded' }, (before) => addClient(before, crypto.randomUUID(), newName(entries)));
    window.location.hash = 'measure';
    onClose();
  };
  /** Makes a change that needs a client opened, who may be known by her record only. */
  const changeOpened = async (
    entry: ClientEntry,
    what: Change,
    step: (book: Book) => Book,
  ): Promise<boolean> => {
    setFault(null);
    if (book.clients.some(({ id }) => id === entry.id)) {
      change(what, step);
      return true;
    }
    try {
      const read = await openedClient(book, entry);
      if (read.kind === 'read') {
        change(what, (before) => step(withOpened(before, read.value)));
        return true;
      }
      if (read.kind === 'newer') setFault(words.cannotOpenNewer({ name: entry.name, version: read.version }));
      else {
        setFault(words.cannotOpen(entry));
        if (books) setAside(books.storage, recordKey('client', entry.id), entry.name);
        books?.host.follow((history) => followed(history, [{ kind: 'client', id: entry.id, now: null }]));
      }
    } catch {
      setFault(words.notFetched);
    }
    return false;
  };
  const open = async (client: ClientEntry): Promise<void> => {
    const step = (before: Book): Book => openClientOf(before, client.id, new Date().toISOString());
    if (
      client.id === current.id ||
      (await changeOpened(client, { code: 'clientOpened', name: client.name }, step))
    )
      onClose();
  };
  const remove = async (client: ClientEntry): Promise<void> => {
    const next = openedAfter(book, client.id);
    const step = (before: Book): Book => removeClient(before, client.id);
    if (next && (await changeOpened(next, { code: 'clientRemoved', name: client.name }, step)))
      setGone(client.name);
  };
  return (
    <Dialog title={CLIENT_BOOK.title} wide={true} onClose={onClose}>
      <DraftList onOpen={onClose} />
      <ClientPast />
      <section className="client-list" aria-label={words.title}>
        <div className="list-head">
          <h3>{words.title}</h3>
          <label className="search" htmlFor={search}>
            <span>{words.search}</span>
            <input
              id={search}
              type="text"
              autoComplete="off"
              value={sought}
              onChange={(event) => setSought(event.target.value)}
            />
          </label>
          <button type="button" onClick={add}>
            {words.add}
          </button>
        </div>
        <UndoLine change={gone === null ? null : { code: 'clientRemoved', name: gone }}>
          {words.removed({ name: gone ?? '' })}
        </UndoLine>
        <p className="said" role="status">
          {fault ?? ''}
        </p>
        <ul>
          {(isLong ? found : found.slice(0, MOST_ROWS)).map((client) => (
            <ClientRow
              key={client.id}
              client={client}
              current={client.id === current.id}
              only={entries.length === 1}
              onOpen={() => void open(client)}
              onDuplicate={() =>
                void changeOpened(client, { code: 'clientCopied', name: client.name }, (before) =>
                  duplicateClient(before, client.id, crypto.randomUUID()),
                )
              }
              onArchive={() =>
                void changeOpened(
                  client,
                  { code: client.archived ? 'clientBroughtBack' : 'clientArchived', name: client.name },
                  (before) => archiveClient(before, client.id, !client.archived),
                )
              }
              onRemove={() => void remove(client)}
            />
          ))}
        </ul>
        {found.length > MOST_ROWS && !isLong ? (
          <button type="button" onClick={() => setLong(true)}>
            {words.showAll({ count: found.length })}
          </button>
        ) : null}
        {found.length === 0 ? <p className="hint">{words.noneFound({ sought })}</p> : null}
        {archived > 0 ? (
          <Checkbox on={archive} onSet={setArchive}>
            {words.showArchive({ count: archived })}
          </Checkbox>
        ) : null}
      </section>
      <PeoplePart />
      <BackupPart handed={handed} />
    </Dialog>
  );
}

interface ClientRowProps {
  readonly client: ClientEntry;
  readonly current: boolean;
  /** The last client cannot be taken out. */
  readonly only: boolean;
  readonly onOpen: () => void;
  readonly onDuplicate: () => void;
  readonly onArchive: () => void;
  readonly onRemove: () => void;
}

function ClientRow({ client, current, only, onOpen, onDuplicate, onArchive, onRemove }: ClientRowProps) {
  const { name, draftNames, lastUsed, archived } = client;
  const onlyDraft = draftNames.length === 1 ? draftNames[0] : undefined;
  return (
    <li className={archived ? 'archived' : undefined}>
      <button type="button" className="open-row" aria-current={current} onClick={onOpen}>
        <b>{name}</b>
        <span className="hint">
          {words.about({
            drafts: onlyDraft ?? words.draftCount({ count: draftNames.length }),
            openedOn: lastUsed === null ? null : formatDay(lastUsed),
            isArchived: archived,
          })}
        </span>
      </button>
      <button type="button" className="quiet" aria-label={words.duplicateOf({ name })} onClick={onDuplicate}>
        {words.duplicate}
      </button>
      <button
        type="button"
        className="quiet"
        aria-label={archived ? words.bringBackOf({ name }) : words.archiveOf({ name })}
        onClick={onArchive}
      >
        {archived ? words.bringBack : words.archive}
      </button>
      <button
        type="button"
        className="quiet"
        disabled={only}
        title={only ? words.lastStays : undefined}
        aria-label={words.removeOf({ name })}
        onClick={onRemove}
      >
        {words.remove}
      </button>
    </li>
  );
}

/** Every word sought begins a word of her name or of a draft's. */
function fits({ name, draftNames }: ClientEntry, sought: string): boolean {
  const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain([name, ...draftNames].join(' ')).split(/\s+/);
  return plain(sought)
    .split(/\s+/)
    .every((part) => words.some((word) => word.startsWith(part)));
}

function newName(clients: readonly { name: string }[]): string {
  let number = clients.length + 1;
  while (clients.some(({ name }) => name === SHELL.clientBar.newClient({ number }))) number += 1;
  return SHELL.clientBar.newClient({ number });
}
