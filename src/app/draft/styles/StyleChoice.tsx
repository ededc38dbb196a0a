// A style to start from: wedges, edges, ease and closing at once; it can be undone like any change. While the draft is one
// of these styles it is shown as the one chosen; once changed it can be chosen anew.

import { useMemo, useState } from 'react';
import { changeStyle, DRAFT, openClient, openDraftOf } from '../../../document';
import { GarmentSketch } from '../../../table';
import { LaterDialog } from '../../components/later/LaterDialog';
import { lazyPart } from '../../components/later/later';
import { useCommittedDraft, useStore } from '../../store/storeContext';
import { begunFrom, type KnownStyle, ownOnes, READY_MADE, recogniser } from './knownStyle';

const TEXTS = DRAFT.styles;

const StyleBook = lazyPart(async () => (await import('./StyleBook')).default);

export function StyleChoice() {
  // As kept: a pull is not told from the style it began on before it is let go.
  const history = useStore((state) => state.history);
  const change = useStore((state) => state.change);
  const [open, setOpen] = useState(false);
  const [chosen, setChosen] = useState('');
  const { styles } = history.present;
  const own = useMemo(() => ownOnes({ styles }), [styles]);
  const recognise = useMemo(() => recogniser([...own, ...READY_MADE]), [own]);
  const same = recognise(openDraftOf(openClient(history.present)).style);
  // Of two that are the same, the one that was asked for.
  const shown = same.find(({ key }) => key === chosen) ?? same[0];
  const begun = shown ? null : begunFrom(history, recognise);
  const use = (asked: KnownStyle): void => {
    setChosen(asked.key);
    change({ code: 'styleLaid', title: asked.title }, (before) => changeStyle(before, () => asked.style));
    setOpen(false);
  };
  const name = shown ? shown.title : begun ? TEXTS.changedFrom({ title: begun.title }) : TEXTS.choose;
  const draft = useCommittedDraft();
  const { style } = openDraftOf(openClient(history.present));
  return (
    <div className="style-choice">
      <button
        type="button"
        aria-haspopup="dialog"
        aria-label={TEXTS.opener({ shown: name })}
        title={name}
        onClick={() => setOpen(true)}
      >
        <GarmentSketch draft={draft} closure={style.closure} />
        <span className="style-name">{name}</span>
      </button>
      {open ? (
        <LaterDialog onClose={() => setOpen(false)}>
          <StyleBook current={shown ?? begun} isChanged={!shown} onUse={use} onClose={() => setOpen(false)} />
        </LaterDialog>
      ) : null}
    </div>
  );
}
