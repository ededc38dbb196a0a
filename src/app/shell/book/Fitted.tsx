// One fitting of a client's past, with its alterations in words. It is loaded by itself, because it drafts.

import { alterationWords, CLIENT_BOOK, type Fitting, type SavedDraft, seamEndAt } from '../../../document';
import { formatDay } from '../../components/files/formatDay';
import { draftOnce, useOpen } from '../../store/storeContext';

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
  const unaltered = draftOnce(client, { style: draft.style });
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
            endAt: (seam, height) => seamEndAt(unaltered, seam, height),
          });
          // biome-ignore lint/suspicious/noArrayIndexKey: an alteration is told by its place in the list
          return <li key={i}>{on && alteration.on ? what : words.notMade({ what })}</li>;
        })}
      </ul>
    </details>
  );
}
