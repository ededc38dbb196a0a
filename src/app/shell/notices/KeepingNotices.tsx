// What keeping has to say: faults, what another tab keeps otherwise, and what was put aside.

import { useContext, useRef, useState, useSyncExternalStore } from 'react';
import { KEEPING } from '../../../document';
import { BackupButton } from '../../components/files/BackupButton';
import { discard, keepAgain, quarantinedIn } from '../../storage/asides';
import type { Clash, Notice, SaveStatus } from '../../storage/device/saveStatus';
import { noticeSentence, saveStatusSentence } from '../../storage/keepingSentences';
import { type Books, BooksContext } from '../../storage/windows/booksContext';
import { type ClashChoice, settleClash } from '../../storage/windows/settleClash';
import { useStore } from '../../store/storeContext';
import { NoticeAbove } from './NoticeAbove';
import { PutAside } from './PutAside';

/** Said once: the user puts them away when they are read. The others go when what they tell of does. */
const PASSING: readonly Notice['kind'][] = [
  'followed',
  'deletedElsewhere',
  'readAgain',
  'undoShortened',
  'undoNotFetched',
  'notFollowed',
];

export function KeepingNotices() {
  const books = useContext(BooksContext);
  return books ? <Notices books={books} /> : null;
}

function Notices({ books }: { books: Books }) {
  const { storage } = books;
  const { status, notices } = useSyncExternalStore(storage.subscribe, storage.keeping);
  // Looked up again at each drawing, because it changes with what is chosen below and with nothing else.
  const [, lookAgain] = useState(0);
  const quarantined = quarantinedIn(storage);
  const area = useRef<HTMLDivElement>(null);
  const sentences = notices.map((notice) => ({ notice, sentence: noticeSentence(notice) }));
  const isAbsent = notices.some((notice) => notice.kind === 'unavailable');
  const clashes = status.kind === 'conflict' ? status.clashes : [];
  const isFault = (status.kind === 'failed' && !isAbsent) || status.kind === 'cleared';
  if (sentences.length === 0 && quarantined.length === 0 && clashes.length === 0 && !isFault) return null;
  return (
    <>
      <div className="keeping" role="status" ref={area}>
        {sentences.map(({ notice, sentence }) => (
          <p key={notice.kind}>
            {sentence}
            {PASSING.includes(notice.kind) ? (
              <button type="button" className="quiet" onClick={() => storage.dismiss(notice.kind)}>
                {KEEPING.notices.close}
              </button>
            ) : null}
          </p>
        ))}
        {quarantined.map((text) => (
          <PutAside
            key={text.key}
            quarantinedText={text}
            onDiscard={() => {
              discard(storage, text.key);
              lookAgain((count) => count + 1);
            }}
          />
        ))}
        {isFault ? <Fault books={books} status={status} takesRoom={quarantined.length > 0} /> : null}
        {clashes.map((clash) => (
          <ClashNotice
            key={clash.key}
            books={books}
            clash={clash}
            isBeside={status.kind === 'conflict' && status.beside}
          />
        ))}
      </div>
      {isFault || clashes.length > 0 ? <NoticeAbove notices={area} /> : null}
    </>
  );
}

interface FaultProps {
  readonly books: Books;
  readonly status: SaveStatus;
  readonly takesRoom: boolean;
}

function Fault({ books, status, takesRoom }: FaultProps) {
  const kept = useStore((state) => state.kept);
  if (status.kind === 'conflict') return null;
  return (
    <p className="failed">
      {saveStatusSentence(status)}
      {takesRoom && status.kind === 'failed' ? ` ${KEEPING.quarantined.takesRoom}` : ''}
      {status.kind === 'cleared' ? (
        <button type="button" onClick={() => keepAgain(books.storage)}>
          {KEEPING.keepAgain}
        </button>
      ) : null}
      <BackupButton book={kept} />
    </p>
  );
}

const CHOICES: readonly ClashChoice[] = ['ours', 'theirs', 'both'];

function ClashNotice({ books, clash, isBeside }: { books: Books; clash: Clash; isBeside: boolean }) {
  const [refused, setRefused] = useState(false);
  const { clash: words } = KEEPING;
  const { name } = clash;
  const says = name === '' ? words.deletedHere : isBeside ? words.kept({ name }) : words.notKept({ name });
  const nameOf = { ours: words.oursOf, theirs: words.theirsOf, both: words.bothOf };
  // A client who was deleted here is not there to be kept beside the other.
  const choices = name === '' ? CHOICES.filter((choice) => choice !== 'both') : CHOICES;
  return (
    <p className="failed">
      {says}
      {choices.map((choice) => (
        <button
          key={choice}
          type="button"
          aria-label={nameOf[choice]({ name })}
          onClick={() =>
            void settleClash(books.storage, books.host, clash.key, choice).then((done) => setRefused(!done))
          }
        >
          {words[choice]}
        </button>
      ))}
      {refused ? <span>{words.noRoom}</span> : null}
    </p>
  );
}
