// Seam allowances, a number for each kind of edge, and whether the hem's is turned up.

import { changeStyle, setTurnedHem } from '../../document';
import { type Allowances, STYLE_SPANS } from '../../engine';
import { Checkbox } from '../components/Checkbox';
import { LengthField } from '../components/LengthField';
import { useIssueSentence } from '../components/useIssueSentence';
import { useDraft, useOpen, useStore } from '../store/storeContext';

const EDGES: readonly { edge: keyof Allowances; label: string }[] = [
  { edge: 'seam', label: 'Seams' },
  { edge: 'side', label: 'Side seam' },
  { edge: 'top', label: 'Top edge' },
  { edge: 'centre', label: 'Centre edges' },
  { edge: 'hem', label: 'Hem' },
];

export function AllowanceCard() {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const sentence = useIssueSentence();
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  return (
    <section className="card allowance-card" aria-label="Seam allowances">
      <h2>Seam allowances</h2>
      <p className="hint">None on an edge that is bound; none at centre front on a fold.</p>
      {EDGES.map(({ edge, label }) => (
        <LengthField
          key={edge}
          label={label}
          span={STYLE_SPANS.allowance}
          value={savedDraft.style.allowances[edge]}
          unit={client.unit}
          remarks={issues.filter((issue) => issue.at.field === `allowances.${edge}`).map(sentence)}
          onShow={(mm) =>
            show((book) =>
              changeStyle(book, (style) => ({
                ...style,
                allowances: { ...style.allowances, [edge]: mm ?? 0 },
              })),
            )
          }
          onKeep={() => keep({ code: 'allowanceSet', edge })}
          onDrop={drop}
        />
      ))}
      <TurnedHem />
    </section>
  );
}

function TurnedHem() {
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  return (
    <>
      <Checkbox
        on={savedDraft.style.turnedHem === true}
        describedBy="turned-hem-hint"
        onSet={(turned) =>
          change({ code: 'turnedHemSet', turned }, (book) =>
            changeStyle(book, (style) => setTurnedHem(style, turned)),
          )
        }
      >
        Turn the hem up
      </Checkbox>
      <p className="hint" id="turned-hem-hint">
        At its ends the allowance is cut as the mirror image of the seam allowances above the fold, and lies
        on them when it is turned up. Leave this off where the hem is bound or faced.
      </p>
    </>
  );
}
