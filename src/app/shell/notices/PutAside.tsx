// One text that lies aside: looked into, brought back, downloaded or let go.

import { useState } from 'react';
import { bookFaultSentence, KEEPING } from '../../../document';
import { Dialog } from '../../components/Dialog';
import { download } from '../../components/files/download';
import { asideFile, readAside } from '../../storage/aside/lookInside';
import type { QuarantinedText } from '../../storage/aside/quarantine';
import { BOOK_KEY } from '../../storage/records/record';
import { RestorePreview } from '../book/RestorePreview';

interface PutAsideProps {
  readonly quarantinedText: QuarantinedText;
  readonly onDiscard: () => void;
}

/** It is let go only once it was downloaded or brought back, or on a second press. */
export function PutAside({ quarantinedText, onDiscard }: PutAsideProps) {
  const [isConfirmed, setConfirmed] = useState(false);
  const [isOpen, setOpen] = useState(false);
  const { quarantined: words } = KEEPING;
  const { key, text } = quarantinedText;
  const time = timeOf(key);
  return (
    <>
      <p>
        {key === BOOK_KEY ? words.earlierBook : time === null ? words.book : words.bookOn({ time })}
        <button type="button" onClick={() => setOpen(true)}>
          {words.look}
        </button>
        <button
          type="button"
          onClick={() => {
            download(asideFile(text), 'application/json', `${key}.json`);
            setConfirmed(true);
          }}
        >
          {words.download}
        </button>
        <button
          type="button"
          className="quiet"
          onClick={() => (isConfirmed ? onDiscard() : setConfirmed(true))}
        >
          {isConfirmed ? words.discardForGood : words.discard}
        </button>
      </p>
      {isOpen ? (
        <Inside
          aside={quarantinedText}
          onClose={(isBack) => {
            setOpen(false);
            if (isBack) setConfirmed(true);
          }}
        />
      ) : null}
    </>
  );
}

interface InsideProps {
  readonly aside: QuarantinedText;
  /** Whether something of it was brought back. */
  readonly onClose: (isBack: boolean) => void;
}

function Inside({ aside, onClose }: InsideProps) {
  const { quarantined: words, notices } = KEEPING;
  const [read] = useState(() => readAside(aside, () => crypto.randomUUID()));
  return (
    <Dialog title={words.title} wide={true} onClose={() => onClose(false)}>
      <section className="backup">
        {read.kind === 'backup' ? (
          <RestorePreview backup={read.backup} onDone={(said) => onClose(said !== null)} />
        ) : (
          <p>
            {read.kind === 'newer'
              ? notices.newer({ version: read.version })
              : `${words.nothingReadable} ${bookFaultSentence(read.fault)}`}
          </p>
        )}
      </section>
    </Dialog>
  );
}

/** The time that is written in the key of a text put aside, as the reader writes times; null where there is none. */
function timeOf(key: string): string | null {
  const [stamp] = /\d{4}-\d{2}-\d{2}T[\d:.]+Z/.exec(key) ?? [];
  return stamp
    ? new Date(stamp).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })
    : null;
}
