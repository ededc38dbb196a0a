// The style book: the maker's own styles, kept apart from any client, to be used, named, written out and taken out.

import { useState } from 'react';
import {
  changeStyle,
  DRAFT,
  type OwnStyle,
  removeStyle,
  renameStyle,
  STYLE_BOOK,
  writeStyle,
} from '../../../document';
import { Dialog } from '../../components/Dialog';
import { download } from '../../components/download';
import { TextField } from '../../components/fields/TextField';
import { fileName } from '../../components/fileName';
import { formatDay } from '../../components/formatDay';
import { UndoLine } from '../../components/UndoLine';
import { useOpen, useStore } from '../../store/storeContext';
import { KeepStyleForm } from './KeepStyleForm';
import { StyleFile } from './StyleFile';

const TEXTS = STYLE_BOOK.list;

export default function StyleBook({ onClose }: { onClose: () => void }) {
  const { book, client } = useOpen();
  const change = useStore((state) => state.change);
  const [gone, setGone] = useState<string | null>(null);
  const use = ({ name, style }: OwnStyle): void => {
    change({ code: 'styleLaid', title: name }, (before) => changeStyle(before, () => style));
    onClose();
  };
  return (
    <Dialog title={DRAFT.styles.book} wide={true} onClose={onClose}>
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
                aria-label={TEXTS.forClient({ name: each.name, client: client.name })}
                onClick={() => use(each)}
              >
                {TEXTS.use}
              </button>
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
