// Said once of a draft that was kept before the rules of drafting changed.

import { changeDraft, DRAFT } from '../../document';
import { useOpen, useStore } from '../store/storeContext';

export function RedraftedNotice() {
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  if (!savedDraft.redrafted) return null;
  const dismiss = (): void =>
    change({ code: 'newRulesRead' }, (book) => changeDraft(book, ({ redrafted: _, ...draft }) => draft));
  return (
    <div className="keeping" role="status">
      <p>
        {(savedDraft.redrafted === true ? (['told'] as const) : savedDraft.redrafted)
          .map((rule) => DRAFT.redrafted[rule])
          .join(' ')}
        <button type="button" onClick={dismiss}>
          {DRAFT.redrafted.read}
        </button>
      </p>
    </div>
  );
}
