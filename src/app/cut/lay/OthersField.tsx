// The other drafts on a cloth: those there are, and a list to add one from.

import { useState } from 'react';
import { type DraftOnCloth, entriesOf, LAY, type LayCloth } from '../../../document';
import { openedClient } from '../../storage/book/openClients';
import { useOpen } from '../../store/storeContext';
import { withoutOther } from './piecesOnCloth';
import type { OtherDraft } from './useOthers';

interface OthersFieldProps {
  readonly cloth: LayCloth;
  readonly others: readonly OtherDraft[];
  readonly onSet: (cloth: LayCloth) => void;
}

export function OthersField({ cloth, others, onSet }: OthersFieldProps) {
  const { book, client: current, savedDraft } = useOpen();
  const [fault, setFault] = useState<string | null>(null);
  const isOn = (client: string, draft: string | undefined): boolean =>
    (client === current.id && draft === savedDraft.id) ||
    cloth.others.some((each) => each.client === client && each.draft === draft);
  const listed = entriesOf(book)
    .filter(({ archived, id }) => !archived || id === current.id)
    .flatMap((entry) => {
      const drafts = book.clients.find(({ id }) => id === entry.id)?.drafts;
      return entry.draftNames.map((draft, index) => ({
        client: entry.id,
        index,
        name: LAY.others.name({ client: entry.name, draft }),
        isOn: isOn(entry.id, drafts?.[index]?.id),
      }));
    })
    .filter((each) => !each.isOn);
  const add = async (chosen: (typeof listed)[number]): Promise<void> => {
    setFault(null);
    const read = await openedClient(book, { id: chosen.client }).catch(() => null);
    const draft = read?.kind === 'read' ? read.value.drafts[chosen.index] : undefined;
    if (!draft) setFault(LAY.others.unreadable({ name: chosen.name }));
    else if (!isOn(chosen.client, draft.id)) {
      const added: DraftOnCloth = { client: chosen.client, draft: draft.id };
      onSet({ ...cloth, others: [...cloth.others, added] });
    }
  };
  return (
    <div className="lay-others">
      <label className="choice">
        <span>{LAY.others.title}</span>
        <select
          value=""
          disabled={listed.length === 0}
          onChange={({ target }) => {
            const chosen = listed[Number(target.value)];
            if (chosen) void add(chosen);
          }}
        >
          <option value="">{listed.length === 0 ? LAY.others.none : LAY.others.add}</option>
          {listed.map(({ client, index, name }, i) => (
            <option key={`${client} ${index}`} value={i}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {others.length > 0 ? (
        <ul>
          {others.map(({ name }, i) => (
            // One draft may be said to be gone more than once, so that a name is no key.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <li key={i}>
              <span>{name}</span>
              <button
                type="button"
                className="quiet"
                aria-label={LAY.others.remove({ name })}
                onClick={() => onSet(withoutOther(cloth, i))}
              >
                ×
              </button>
            </li>
          ))}
        </ul>
      ) : null}
      <p className="said" aria-live="polite">
        {fault}
        {others
          .map(({ name, fault: why }) => {
            if (why === null) return '';
            return why === 'gone' ? LAY.others.gone : LAY.others[why]({ name });
          })
          .filter((sentence) => sentence !== '')
          .join(' ')}
      </p>
    </div>
  );
}
