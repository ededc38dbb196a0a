// The card of the seam allowances: one number for each kind of edge, and whether the hem is turned up.

import { allowanceEdges, CUT, changeStyle, followsTop, setAllowance, setTurnedHem } from '../../document';
import { styleSpan } from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { useNumberEdit } from '../components/fields/useNumberEdit';
import { useIssueSentence } from '../components/useIssueSentence';
import { useDraft, useOpen, useStore } from '../store/storeContext';
import { Fold } from './Fold';

export function AllowanceCard() {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const sentence = useIssueSentence();
  const edit = useNumberEdit();
  const edges = allowanceEdges(savedDraft.style);
  return (
    <Fold
      title={CUT.allowances.title}
      className="allowance-card"
      isOpen={edges.some((edge) => issues.some(({ at }) => at.field === `allowances.${edge}`))}
    >
      <p className="hint">{CUT.allowances.hint}</p>
      {edges.map((edge) => {
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
    </Fold>
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
