// A style from a file, as this page or a maker's own hand wrote it for the headless drafter, taken into the style book.

import { useState } from 'react';
import {
  addStyle,
  DRAFT,
  type Fault,
  type FileStyle,
  parseJson,
  type Read,
  readStyle,
  refuse,
  STYLE_BOOK,
} from '../../../document';
import { FileChoice } from '../../components/fields/FileChoice';
import { today } from '../../components/files/formatDay';
import { useStore } from '../../store/storeContext';

const TEXTS = STYLE_BOOK.file;

/** More faults than this are not listed: the first ones are to be mended first. */
const MOST_ERRORS = 5;

export function StyleFile() {
  const change = useStore((state) => state.change);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [said, setSaid] = useState('');
  const take = (text: string, file: string): void => {
    const read = styleIn(text, file.replace(/\.json$/i, ''));
    setFaults(read.ok ? [] : read.faults);
    setSaid(read.ok ? TEXTS.wasRead({ name: read.value.title, file }) : TEXTS.notTaken({ file }));
    if (!read.ok) return;
    const { title, style } = read.value;
    change({ code: 'styleRead', title }, (book) =>
      addStyle(book, crypto.randomUUID(), title, style, today()),
    );
  };
  return (
    <>
      <div className="list-head">
        <h3>{DRAFT.styles.own}</h3>
        <FileChoice label={TEXTS.read} onChoose={take} />
      </div>
      <p className={faults.length > 0 ? 'said' : 'hint'} role="status">
        {said}
      </p>
      {faults.length > 0 ? (
        <ul className="said file-faults">
          {faults.slice(0, MOST_ERRORS).map(({ path, message }) => (
            <li key={`${path} ${message}`}>
              {path === '' ? '' : <b>{path} </b>}
              {message}
            </li>
          ))}
          {faults.length > MOST_ERRORS ? <li>{TEXTS.more({ count: faults.length - MOST_ERRORS })}</li> : null}
        </ul>
      ) : null}
    </>
  );
}

function styleIn(text: string, title: string): Read<FileStyle> {
  const data = parseJson(text);
  return data.ok ? readStyle(data.value, title) : refuse('', TEXTS.noStyleFile);
}
