// The client book: the drafts of the client in view, and every client, searched, copied, put away and taken out.

import { useId, useState } from 'react';
import {
  addClient,
  archiveClient,
  byLastUse,
  CLIENT_BOOK,
  type Client,
  duplicateClient,
  openClientOf,
  removeClient,
  SHELL,
} from '../../document';
import { nameFocus } from '../components/awaitedFocus';
import { Dialog } from '../components/Dialog';
import { Checkbox } from '../components/fields/Checkbox';
import { formatDay } from '../components/formatDay';
import { UndoLine } from '../components/UndoLine';
import { useOpen, useStore } from '../store/storeContext';
import { BackupPart } from './BackupPart';
import { DraftList } from './DraftList';

const { clients: words } = CLIENT_BOOK;

export default function ClientBook({ onClose }: { onClose: () => void }) {
  const { book, client: current } = useOpen();
  const change = useStore((state) => state.change);
  const [sought, setSought] = useState('');
  const [archive, setArchive] = useState(false);
  const [gone, setGone] = useState<string | null>(null);
  const search = useId();
  const found = [...book.clients]
    .sort(byLastUse)
    .filter(
      (client) =>
        (archive || sought !== '' || !client.archived || client === current) && fits(client, sought),
    );
  const archived = book.clients.filter((client) => client.archived).length;
  const add = (): void => {
    nameFocus.request();
    change({ code: 'clientAdded' }, (before) =>
      addClient(before, crypto.randomUUID(), newName(before.clients)),
    );
    window.location.hash = 'measure';
    onClose();
  };
  const open = (client: Client): void => {
    if (client !== current)
      change({ code: 'clientOpened', name: client.name }, (before) =>
        openClientOf(before, client.id, new Date().toISOString()),
      );
    onClose();
  };
  return (
    <Dialog title={CLIENT_BOOK.title} wide={true} onClose={onClose}>
      <DraftList onOpen={onClose} />
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
        <ul>
          {found.map((client) => (
            <ClientRow
              key={client.id}
              client={client}
              current={client === current}
              only={book.clients.length === 1}
              onOpen={() => open(client)}
              onDuplicate={() =>
                change({ code: 'clientCopied', name: client.name }, (before) =>
                  duplicateClient(before, client.id, crypto.randomUUID()),
                )
              }
              onArchive={() =>
                change(
                  { code: client.archived ? 'clientBroughtBack' : 'clientArchived', name: client.name },
                  (before) => archiveClient(before, client.id, !client.archived),
                )
              }
              onRemove={() => {
                change({ code: 'clientRemoved', name: client.name }, (before) =>
                  removeClient(before, client.id),
                );
                setGone(client.name);
              }}
            />
          ))}
        </ul>
        {found.length === 0 ? <p className="hint">{words.noneFound({ sought })}</p> : null}
        {archived > 0 ? (
          <Checkbox on={archive} onSet={setArchive}>
            {words.showArchive({ count: archived })}
          </Checkbox>
        ) : null}
      </section>
      <BackupPart />
    </Dialog>
  );
}

interface ClientRowProps {
  readonly client: Client;
  readonly current: boolean;
  /** The last client cannot be taken out. */
  readonly only: boolean;
  readonly onOpen: () => void;
  readonly onDuplicate: () => void;
  readonly onArchive: () => void;
  readonly onRemove: () => void;
}

function ClientRow({ client, current, only, onOpen, onDuplicate, onArchive, onRemove }: ClientRowProps) {
  const { name, drafts, lastUsed, archived } = client;
  const onlyDraft = drafts.length === 1 ? drafts[0] : undefined;
  return (
    <li className={archived ? 'archived' : undefined}>
      <button type="button" className="open-row" aria-current={current} onClick={onOpen}>
        <b>{name}</b>
        <span className="hint">
          {words.about({
            drafts: onlyDraft ? onlyDraft.name : words.draftCount({ count: drafts.length }),
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
function fits({ name, drafts }: Client, sought: string): boolean {
  const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain([name, ...drafts.map((savedDraft) => savedDraft.name)].join(' ')).split(/\s+/);
  return plain(sought)
    .split(/\s+/)
    .every((part) => words.some((word) => word.startsWith(part)));
}

function newName(clients: readonly { name: string }[]): string {
  let number = clients.length + 1;
  while (clients.some(({ name }) => name === SHELL.clientBar.newClient({ number }))) number += 1;
  return SHELL.clientBar.newClient({ number });
}
