// A style to start from: wedges, edges, ease and closing at once; it can be undone like any change. While the draft is one
// of these styles it is shown as the one chosen; once changed it can be chosen anew.

import { useMemo, useState } from 'react';
import { changeStyle, DRAFT, openClient, openDraftOf } from '../../../document';
import { LaterDialog } from '../../components/LaterDialog';
import { lazyPart } from '../../components/later';
import { useStore } from '../../store/storeContext';
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
  return (
    <div className="style-choice">
      <label className="choice">
        <span className="unseen">{TEXTS.label}</span>
        <select
          value={shown?.key ?? ''}
          onChange={({ target }) => {
            const asked = [...own, ...READY_MADE].find(({ key }) => key === target.value);
            if (!asked) return;
            setChosen(asked.key);
            change({ code: 'styleLaid', title: asked.title }, (before) =>
              changeStyle(before, () => asked.style),
            );
          }}
        >
          {/* The word before the name, which may be too long for its room. */}
          <option value="">{begun ? TEXTS.changedFrom({ title: begun.title }) : TEXTS.choose}</option>
          {own.length > 0 ? <Group label={TEXTS.own} styles={own} /> : null}
          <Group label={TEXTS.readyMade} styles={READY_MADE} />
        </select>
      </label>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {TEXTS.book}
      </button>
      {open ? (
        <LaterDialog onClose={() => setOpen(false)}>
          <StyleBook onClose={() => setOpen(false)} />
        </LaterDialog>
      ) : null}
    </div>
  );
}

function Group({ label, styles }: { label: string; styles: readonly KnownStyle[] }) {
  return (
    <optgroup label={label}>
      {styles.map(({ key, title }) => (
        <option key={key} value={key}>
          {title}
        </option>
      ))}
    </optgroup>
  );
}
