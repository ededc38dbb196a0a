// What keeping has to say: faults, another tab's book, and what was put aside, to be downloaded or let go.

import { useState, useSyncExternalStore } from 'react';
import { KEEPING, readBook } from '../../document';
import { BackupButton } from '../components/BackupButton';
import { download } from '../components/download';
import type { BookStorage } from '../storage/bookStorage';
import { noticeSentence, saveStatusSentence } from '../storage/keepingSentences';
import type { QuarantinedText } from '../storage/quarantine';
import type { Notice } from '../storage/saveStatus';
import { useStore } from '../store/storeContext';

export interface Keeping {
  readonly storage: BookStorage;
  /** What the first look into the storage found. */
  readonly said: readonly Notice[];
}

export function KeepingNotices({ keeping }: { keeping: Keeping }) {
  const { storage, said } = keeping;
  const status = useSyncExternalStore(storage.subscribe, storage.status);
  const [quarantined, setQuarantined] = useState(storage.quarantined);
  const [refused, setRefused] = useState<string | null>(null);
  const open = useStore((state) => state.open);
  const kept = useStore((state) => state.kept);
  const settle = (refusal: string | null): void => {
    setRefused(refusal);
    setQuarantined(storage.quarantined());
  };
  const noRoom = quarantined.length > 0 ? KEEPING.conflict.noRoomYet : KEEPING.conflict.noRoom;
  const keepOurs = (): void => settle(storage.keepOurs() ? null : noRoom);
  const takeTheirs = (): void => {
    const theirs = storage.takeTheirs(readBook);
    if (theirs) open(theirs.book);
    settle(theirs ? null : noRoom);
  };
  const fault = status.kind === 'failed' ? saveStatusSentence(status) : null;
  const notices = said.map(noticeSentence);
  if (notices.length === 0 && quarantined.length === 0 && !fault && status.kind !== 'conflict') return null;
  return (
    <div className="keeping" role="status">
      {notices.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {quarantined.map((quarantinedText) => (
        <QuarantinedNotice
          key={quarantinedText.key}
          quarantinedText={quarantinedText}
          onDiscard={() => {
            storage.discard(quarantinedText.key);
            settle(null);
          }}
        />
      ))}
      {fault && !notices.includes(fault) ? (
        <p className="failed">
          {fault}
          {quarantined.length > 0 ? ` ${KEEPING.quarantined.takesRoom}` : ''}
          <BackupButton book={kept} />
        </p>
      ) : null}
      {status.kind === 'conflict' ? (
        <p className="failed">
          {saveStatusSentence(status)}
          <button type="button" onClick={keepOurs}>
            {KEEPING.conflict.keepOurs}
          </button>
          <button type="button" onClick={takeTheirs}>
            {KEEPING.conflict.takeTheirs}
          </button>
        </p>
      ) : null}
      {refused ? <p className="failed">{refused}</p> : null}
    </div>
  );
}

/** One book that lies aside. It is let go only once it was downloaded, or on a second press. */
function QuarantinedNotice({
  quarantinedText,
  onDiscard,
}: {
  quarantinedText: QuarantinedText;
  onDiscard: () => void;
}) {
  const [isConfirmed, setConfirmed] = useState(false);
  const time = timeOf(quarantinedText.key);
  return (
    <p>
      {time === null ? KEEPING.quarantined.book : KEEPING.quarantined.bookOn({ time })}
      <button
        type="button"
        onClick={() => {
          download(quarantinedText.text, 'application/json', `${quarantinedText.key}.json`);
          setConfirmed(true);
        }}
      >
        {KEEPING.quarantined.download}
      </button>
      <button
        type="button"
        className="quiet"
        onClick={() => (isConfirmed ? onDiscard() : setConfirmed(true))}
      >
        {isConfirmed ? KEEPING.quarantined.discardForGood : KEEPING.quarantined.discard}
      </button>
    </p>
  );
}

/** The time that is written in the key of a text put aside, as the reader writes times; null where there is none. */
function timeOf(key: string): string | null {
  const [stamp] = /\d{4}-\d{2}-\d{2}T[\d:.]+Z/.exec(key) ?? [];
  return stamp
    ? new Date(stamp).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })
    : null;
}
