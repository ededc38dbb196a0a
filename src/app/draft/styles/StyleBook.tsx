// The style book: every style as a picture, to be laid on the table, and the maker's own, kept apart from any client, to be named,
// written out and taken out.

import { useState } from 'react';
import { DRAFT, removeStyle, renameStyle, STYLE_BOOK, writeStyle } from '../../../document';
import { Dialog } from '../../components/Dialog';
import { TextField } from '../../components/fields/TextField';
import { download } from '../../components/files/download';
import { fileName } from '../../components/files/fileName';
import { formatDay } from '../../components/files/formatDay';
import { UndoLine } from '../../components/UndoLine';
import { useDraft, useOpen, useStore } from '../../store/storeContext';
import { KeepStyleForm } from './KeepStyleForm';
import type { KnownStyle } from './knownStyle';
import { StyleFile } from './StyleFile';
import { StylePictures } from './StylePictures';

const TEXTS = STYLE_BOOK.list;

interface StyleBookProps {
  readonly current: KnownStyle | null;
  /** The draft was changed since it was `current`. */
  readonly isChanged: boolean;
  readonly onUse: (style: KnownStyle) => void;
  readonly onClose: () => void;
}

export default function StyleBook({ current, isChanged, onUse, onClose }: StyleBookProps) {
  const { book, client } = useOpen();
  const draft = useDraft();
  const change = useStore((state) => state.change);
  const [gone, setGone] = useState<string | null>(null);
  const { drawnFor, needsMeasurements } = STYLE_BOOK.pictures;
  const says = draft.levels.length > 0 ? drawnFor : needsMeasurements;
  return (
    <Dialog title={DRAFT.styles.book} wide={true} onClose={onClose}>
      <p className="hint">{says({ client: client.name })}</p>
      <StylePictures current={current} isChanged={isChanged} onUse={onUse} />
      <KeepStyleForm />
      <section className="style-list" aria-label={DRAFT.styles.own}>
        <StyleFile />
        <UndoLine change={gone === null ? null : { code: 'styleRemoved', title: gone }}>
          {TEXTS.deleted({ name: gone ?? '' })}
        </UndoLine>
        {book.styles.length === 0 ? <p className="hint">{TEXTS.none}</p> : null}
        <ul>
          {book.styles.map((each) => (
            <li key={each.id}>
              <TextField
                label={TEXTS.nameOf(each)}
                labelUnseen={true}
                value={each.name}
                onKeep={(name) =>
                  change({ code: 'styleRenamed' }, (before) => renameStyle(before, each.id, name))
                }
              />
              <span className="hint">{TEXTS.keptOn({ day: formatDay(each.on) })}</span>
              <button
                type="button"
                className="quiet"
                aria-label={TEXTS.writeOutAsFile(each)}
                onClick={() =>
                  download(
                    writeStyle(each.name, each.style),
                    'application/json',
                    `${fileName(each.name, 'style')}.json`,
                  )
                }
              >
                {TEXTS.writeOut}
              </button>
              <button
                type="button"
                className="quiet"
                aria-label={TEXTS.deleteStyle(each)}
                onClick={() => {
                  change({ code: 'styleRemoved', title: each.name }, (before) =>
                    removeStyle(before, each.id),
                  );
                  setGone(each.name);
                }}
              >
                {TEXTS.delete}
              </button>
            </li>
          ))}
        </ul>
      </section>
    </Dialog>
  );
}
