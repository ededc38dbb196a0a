// The other drafts on a cloth, each drafted where its client is opened; one whose client is known by her record only is opened for it.

import { useEffect, useMemo, useState } from 'react';
import {
  alterationsOf,
  type Book,
  type Client,
  type DraftOnCloth,
  LAY,
  type SavedDraft,
} from '../../../document';
import { type Draft, draftWhole } from '../../../engine';
import { openedClient } from '../../storage/book/openClients';
import { refusalOf } from '../choices/usePlanInput';
import type { ClothDraft } from './piecesOnCloth';

export interface OtherDraft extends ClothDraft {
  /** Why its pieces cannot be laid; null where they can. */
  readonly fault: 'reading' | 'gone' | 'refused' | 'unreadable' | null;
}

export function useOthers(book: Book, others: readonly DraftOnCloth[]): readonly OtherDraft[] {
  /** Clients that were read from their records for this alone; null for one who cannot be read. */
  const [read, setRead] = useState<ReadonlyMap<string, Client | null>>(new Map());
  const wanted = others
    .map(({ client }) => client)
    .filter((id) => !read.has(id) && book.unopened?.some((each) => each.id === id));
  const wantedText = JSON.stringify([...new Set(wanted)]);
  useEffect(() => {
    let isLeft = false;
    const put = (id: string, client: Client | null): void => {
      if (!isLeft) setRead((before) => new Map(before).set(id, client));
    };
    for (const id of JSON.parse(wantedText) as string[])
      openedClient(book, { id })
        .then((answer) => put(id, answer.kind === 'read' ? answer.value : null))
        .catch(() => put(id, null));
    return () => {
      isLeft = true;
    };
  }, [book, wantedText]);
  return useMemo(
    () =>
      others.map((other): OtherDraft => {
        const nobody = { name: LAY.others.goneName, pieces: [] };
        const opened = book.clients.find(({ id }) => id === other.client);
        const entry = book.unopened?.find(({ id }) => id === other.client);
        if (!opened && !entry) return { ...nobody, fault: 'gone' };
        const client = opened ?? read.get(other.client);
        if (client === undefined) return { name: entry?.name ?? '', pieces: [], fault: 'reading' };
        if (client === null) return { name: entry?.name ?? '', pieces: [], fault: 'unreadable' };
        const savedDraft = client.drafts.find(({ id }) => id === other.draft);
        if (!savedDraft) return { ...nobody, fault: 'gone' };
        const name = LAY.others.name({ client: client.name, draft: savedDraft.name });
        const draft = drafted(client, savedDraft);
        const isRefused = refusalOf({ draft, savedDraft }) !== null;
        return {
          name,
          pieces: isRefused ? [] : [...draft.pieces, ...draft.extras],
          fault: isRefused ? 'refused' : null,
        };
      }),
    [book.clients, book.unopened, others, read],
  );
}

/** Drafts that were drawn for a cloth, by what is kept of them and whose they are. */
const known = new WeakMap<SavedDraft, { readonly client: Client; readonly draft: Draft }>();

function drafted(client: Client, savedDraft: SavedDraft): Draft {
  const found = known.get(savedDraft);
  if (found && found.client.measurements === client.measurements && found.client.sides === client.sides)
    return found.draft;
  const { measurements, sides } = client;
  const draft = draftWhole(measurements, savedDraft.style, sides ?? null, alterationsOf(savedDraft.fittings));
  known.set(savedDraft, { client, draft });
  return draft;
}
