// What became of a pasted list: which fields it filled, with the way to undo it, and what in it was no length.

import { type LaidNumbers, MEASURE, MEASUREMENT_WORDS } from '../../../document';
import { UndoLine } from '../../components/UndoLine';

const { pasted: words } = MEASURE;

export function PastedLine({ laid: { filled, unread, tooMany } }: { readonly laid: LaidNumbers }) {
  const [from, to] = [filled[0], filled.at(-1)];
  const aside = [
    filled.length === 0 ? words.none : '',
    unread.length > 0 ? words.unread({ texts: unread }) : '',
    tooMany > 0 ? words.tooMany({ count: tooMany }) : '',
  ];
  return (
    <div className="pasted">
      {from && to ? (
        <UndoLine change={{ code: 'numbersPasted', count: filled.length }}>
          {words.filled({
            count: filled.length,
            from: MEASUREMENT_WORDS[from.name].name,
            to: MEASUREMENT_WORDS[to.name].name,
          })}
        </UndoLine>
      ) : null}
      <p className="unusual" role="status">
        {aside.filter((sentence) => sentence !== '').join(' ')}
      </p>
    </div>
  );
}
