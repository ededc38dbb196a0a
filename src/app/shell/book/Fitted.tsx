// One fitting of a client's past, with its alterations in words, which are loaded with it.

import { alterationWords, CLIENT_BOOK, type Fitting, type SavedDraft } from '../../../document';
import { formatDay } from '../../components/files/formatDay';
import { useOpen } from '../../store/storeContext';

const { past: words } = CLIENT_BOOK;

export default function Fitted({
  draft,
  fitting,
}: {
  readonly draft: SavedDraft;
  readonly fitting: Fitting;
}) {
  const { client } = useOpen();
  const { date, note, on, alterations } = fitting;
  return (
    <details>
      <summary>
        {words.fitting({ day: formatDay(date), draft: draft.name, alterations: alterations.length })}
      </summary>
      {note === '' ? null : <p>{note}</p>}
      <ul>
        {alterations.map((alteration, i) => {
          const what = alterationWords(alteration, {
            unit: client.unit,
            style: draft.style,
          });
          // biome-ignore lint/suspicious/noArrayIndexKey: an alteration is told by its place in the list
          return <li key={i}>{on && alteration.on ? what : words.notMade({ what })}</li>;
        })}
      </ul>
    </details>
  );
}
