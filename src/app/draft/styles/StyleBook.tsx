// The style book: the maker's own styles, kept apart from any client, to be used, named, written out and taken out.

import { useState } from 'react';
import { changeStyle, type OwnStyle, removeStyle, renameStyle, writeStyle } from '../../../document';
import { Dialog } from '../../components/Dialog';
import { download } from '../../components/download';
import { fileName } from '../../components/fileName';
import { formatDay } from '../../components/formatDay';
import { TextField } from '../../components/TextField';
import { UndoLine } from '../../components/UndoLine';
import { useOpen, useStore } from '../../store/storeContext';
import { KeepStyleForm } from './KeepStyleForm';
import { StyleFile } from './StyleFile';

export default function StyleBook({ onClose }: { onClose: () => void }) {
  const { book, client } = useOpen();
  const change = useStore((state) => state.change);
  const [gone, setGone] = useState<string | null>(null);
  const use = ({ name, style }: OwnStyle): void => {
    change({ code: 'styleLaid', title: name }, (before) => changeStyle(before, () => style));
    onClose();
  };
  return (
    <Dialog title="Style book" wide={true} onClose={onClose}>
      <KeepStyleForm />
      <section className="style-list" aria-label="Your styles">
        <StyleFile />
        <UndoLine change={gone === null ? null : { code: 'styleRemoved', title: gone }}>
          {`The style ${gone} was taken out of the book.`}
        </UndoLine>
        {book.styles.length === 0 ? (
          <p className="hint">
            None yet. A style that is kept here is listed with the ready-made ones, for every client.
          </p>
        ) : null}
        <ul>
          {book.styles.map((each) => (
            <li key={each.id}>
              <TextField
                label={`Name of the style ${each.name}`}
                labelUnseen={true}
                value={each.name}
                onKeep={(name) =>
                  change({ code: 'styleRenamed' }, (before) => renameStyle(before, each.id, name))
                }
              />
              <span className="hint">kept {formatDay(each.on)}</span>
              <button
                type="button"
                aria-label={`Use it for ${client.name}: ${each.name}`}
                onClick={() => use(each)}
              >
                Use it
              </button>
              <button
                type="button"
                className="quiet"
                aria-label={`Write out ${each.name} as a file`}
                onClick={() =>
                  download(
                    writeStyle(each.name, each.style),
                    'application/json',
                    `${fileName(each.name, 'style')}.json`,
                  )
                }
              >
                Write out
              </button>
              <button
                type="button"
                className="quiet"
                aria-label={`Delete the style ${each.name}`}
                onClick={() => {
                  change({ code: 'styleRemoved', title: each.name }, (before) =>
                    removeStyle(before, each.id),
                  );
                  setGone(each.name);
                }}
              >
                Delete
              </button>
            </li>
          ))}
        </ul>
      </section>
    </Dialog>
  );
}
