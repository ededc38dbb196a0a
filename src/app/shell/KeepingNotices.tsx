// What keeping has to say: faults, another tab's book, and what was put aside and can be downloaded.

import { useSyncExternalStore } from 'react';
import type { Book } from '../../document';
import { download } from '../parts/download';
import type { BookStorage } from '../storage/bookStorage';
import { type Notice, noticeSentence, saveStatusSentence } from '../storage/saveStatus';
import { useTable } from '../tableContext';

export interface Keeping {
  readonly storage: BookStorage;
  /** What the first look into the storage found. */
  readonly said: readonly Notice[];
}

export function KeepingNotices({ keeping }: { keeping: Keeping }) {
  const { storage, said } = keeping;
  const status = useSyncExternalStore(storage.subscribe, storage.status);
  const open = useTable((table) => table.open);
  const asides = said.length > 0 || status.kind === 'failed' ? storage.asides() : [];
  const take = (book: Book | undefined): void => {
    if (book) open(book);
  };
  if (said.length === 0 && status.kind !== 'failed' && status.kind !== 'conflict') return null;
  return (
    <div className="keeping" role="status">
      {said.map((notice) => (
        <p key={notice.kind}>{noticeSentence(notice)}</p>
      ))}
      {asides.map(({ key, text }) => (
        <p key={key}>
          Put aside: {key.split('.').at(2)?.slice(0, 10) ?? key}
          <button type="button" onClick={() => download(text, 'application/json', `${key}.json`)}>
            Download
          </button>
        </p>
      ))}
      {status.kind === 'failed' && said.length === 0 ? (
        <p className="failed">{saveStatusSentence(status)}</p>
      ) : null}
      {status.kind === 'conflict' ? (
        <p className="failed">
          {saveStatusSentence(status)}
          <button type="button" onClick={storage.keepOurs}>
            Go on with this tab’s
          </button>
          <button type="button" onClick={() => take(storage.takeTheirs()?.book)}>
            Go on with the other’s
          </button>
        </p>
      ) : null}
    </div>
  );
}
