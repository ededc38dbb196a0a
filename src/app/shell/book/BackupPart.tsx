// The book as one file: written to be kept elsewhere, and read back with a look at what would change. Says where the book lives.

import { useContext, useEffect, useRef, useState } from 'react';
import { BACKUP, type Backup, bookFaultSentence, KEEPING, readBackup } from '../../../document';
import { FileChoice } from '../../components/fields/FileChoice';
import { BackupButton } from '../../components/files/BackupButton';
import { isPersisted } from '../../storage/persist';
import { BooksContext } from '../../storage/windows/booksContext';
import { useStore } from '../../store/storeContext';
import { RestorePreview } from './RestorePreview';

/** @param props.handed the text of a backup to be looked at without being chosen */
export function BackupPart({ handed = null }: { readonly handed?: string | null }) {
  const section = useRef<HTMLElement>(null);
  const kept = useStore((state) => state.kept);
  const [found, setFound] = useState<Backup | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [done, setDone] = useState<string | null>(null);
  const read = (text: string): void => {
    setDone(null);
    setFound(null);
    const backup = readBackup(text, () => crypto.randomUUID());
    setFault(
      backup.kind === 'unreadable'
        ? bookFaultSentence(backup.fault)
        : backup.kind === 'newer'
          ? BACKUP.newer({ version: backup.version })
          : null,
    );
    if (backup.kind === 'backup') setFound(backup.backup);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: a text is read once, when it comes
  useEffect(() => {
    if (handed === null) return;
    read(handed);
    section.current?.scrollIntoView?.({ block: 'start' });
  }, [handed]);
  return (
    <section ref={section} className="backup" aria-label={BACKUP.label}>
      <div className="list-head">
        <h3>{BACKUP.title}</h3>
        <BackupButton book={kept} />
        <FileChoice label={BACKUP.choose} onChoose={read} />
      </div>
      <p className="said" role="status">
        {fault ?? ''}
      </p>
      {found ? (
        <RestorePreview
          backup={found}
          onDone={(said) => {
            setFound(null);
            setDone(said);
          }}
        />
      ) : null}
      <p className="hint" role="status">
        {done ?? ''}
      </p>
      <WhereItLives />
    </section>
  );
}

function WhereItLives() {
  const books = useContext(BooksContext);
  const [stays, setStays] = useState(false);
  useEffect(() => {
    let there = true;
    void isPersisted(navigator).then((persisted) => {
      if (there) setStays(persisted);
    });
    return () => {
      there = false;
    };
  }, []);
  if (!books) return null;
  const { lives } = KEEPING;
  const percent = Math.ceil(books.storage.taken() * 100);
  return (
    <p className="hint">
      {whereText()} {stays ? lives.stays : lives.mayBeCleared} {lives.room({ percent })}
    </p>
  );
}

function whereText(): string {
  const { host, pathname, protocol } = window.location;
  const { lives } = KEEPING;
  if (protocol !== 'file:') return lives.where({ address: host });
  return lives.whereFile({ file: decodeURIComponent(pathname.slice(pathname.lastIndexOf('/') + 1)) });
}
