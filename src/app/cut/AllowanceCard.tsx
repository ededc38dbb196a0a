// The card of the seam allowances: one number for each kind of edge, and whether the hem is turned up.

import { allowanceEdges, CUT, changeStyle, followsTop, setAllowance, setTurnedHem } from '../../document';
import { styleSpan } from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { useNumberEdit } from '../components/fields/useNumberEdit';
import { useIssueSentence } from '../components/useIssueSentence';
import { useDraft, useOpen, useStore } from '../store/storeContext';

export function AllowanceCard() {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const sentence = useIssueSentence();
  const edit = useNumberEdit();
  return (
    <section className="card allowance-card" aria-label={CUT.allowances.title}>
      <h2>{CUT.allowances.title}</h2>
      <p className="hint">{CUT.allowances.hint}</p>
      {allowanceEdges(savedDraft.style).map((edge) => {
        const label = CUT.allowances.edges[edge];
        return (
          <LengthField
            key={edge}
            label={label}
            span={styleSpan(`allowances.${edge}`)}
            value={savedDraft.style.allowances[edge] ?? null}
            optional={followsTop(edge)}
            hint={followsTop(edge) ? CUT.allowances.followsTop : undefined}
            unit={client.unit}
            remarks={issues.filter((issue) => issue.at.field === `allowances.${edge}`).map(sentence)}
            {...edit({ code: 'allowanceSet', edge }, (book, mm) =>
              changeStyle(book, (style) => setAllowance(style, edge, mm)),
            )}
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
