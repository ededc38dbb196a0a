// The card of the seam allowances: one number for each kind of edge, and whether the hem is turned up.

import { CUT, changeStyle, setTurnedHem } from '../../document';
import { type Allowances, styleSpan } from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { useIssueSentence } from '../components/useIssueSentence';
import { useDraft, useOpen, useStore } from '../store/storeContext';

const EDGES: readonly (keyof Allowances)[] = ['seam', 'side', 'top', 'centre', 'hem'];

export function AllowanceCard() {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const sentence = useIssueSentence();
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  return (
    <section className="card allowance-card" aria-label={CUT.allowances.title}>
      <h2>{CUT.allowances.title}</h2>
      <p className="hint">{CUT.allowances.hint}</p>
      {EDGES.map((edge) => {
        const label = CUT.allowances.edges[edge];
        return (
          <LengthField
            key={edge}
            label={label}
            span={styleSpan(`allowances.${edge}`)}
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
        );
      })}
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
        {CUT.allowances.turnedHem}
      </Checkbox>
      <p className="hint" id="turned-hem-hint">
        {CUT.allowances.turnedHemHint}
      </p>
    </>
  );
}
