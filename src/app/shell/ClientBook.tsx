// The client book: the drafts of the client in view, and every client, searched, copied, put away and taken out.

import { useId, useState } from 'react';
import {
  addClient,
  archiveClient,
  byLastUse,
  type Client,
  duplicateClient,
  openClientOf,
  removeClient,
} from '../../document';
import { Checkbox } from '../components/Checkbox';
import { Dialog } from '../components/Dialog';
import { formatDay } from '../components/formatDay';
import { UndoLine } from '../components/UndoLine';
import { awaitName } from '../measure/nameField';
import { useOpen, useStore } from '../store/storeContext';
import { BackupPart } from './BackupPart';
import { DraftList } from './DraftList';

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
    awaitName();
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
    <Dialog title="Client book" wide={true} onClose={onClose}>
      <DraftList onOpen={onClose} />
      <section className="client-list" aria-label="Clients">
        <div className="list-head">
          <h3>Clients</h3>
          <label className="search" htmlFor={search}>
            <span>Search</span>
            <input
              id={search}
              type="text"
              autoComplete="off"
              value={sought}
              onChange={(event) => setSought(event.target.value)}
            />
          </label>
          <button type="button" onClick={add}>
            New client
          </button>
        </div>
        <UndoLine change={gone === null ? null : { code: 'clientRemoved', name: gone }}>
          {`${gone} was taken out of the book.`}
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
        {found.length === 0 ? <p className="hint">No client’s name or draft has “{sought}” in it.</p> : null}
        {archived > 0 ? (
          <Checkbox on={archive} onSet={setArchive}>
            Show the archive ({archived})
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
  return (
    <li className={archived ? 'archived' : undefined}>
      <button type="button" className="open-row" aria-current={current} onClick={onOpen}>
        <b>{name}</b>
        <span className="hint">
          {drafts.length === 1 ? drafts[0]?.name : `${drafts.length} drafts`}
          {lastUsed === null ? '' : `, opened ${formatDay(lastUsed)}`}
          {archived ? ', in the archive' : ''}
        </span>
      </button>
      <button type="button" className="quiet" aria-label={`Duplicate ${name}`} onClick={onDuplicate}>
        Duplicate
      </button>
      <button
        type="button"
        className="quiet"
        aria-label={`${archived ? 'Take from the archive:' : 'Archive'} ${name}`}
        onClick={onArchive}
      >
        {archived ? 'Bring back' : 'Archive'}
      </button>
      <button
        type="button"
        className="quiet"
        disabled={only}
        title={only ? 'The last client stays in the book' : undefined}
        aria-label={`Delete ${name}`}
        onClick={onRemove}
      >
        Delete
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
  while (clients.some(({ name }) => name === `Client ${number}`)) number += 1;
  return `Client ${number}`;
}
