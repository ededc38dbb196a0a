// What is printed: the pattern, or a mock-up with wide allowances to fit it by; and lines right across its panels.

import { CUT, MOCKUP_ALLOWANCE_MM, type Unit } from '../../document';
import { styleSpan } from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { ChoiceRow } from './choices/ChoiceRow';
import { choose, useCutChoices } from './choices/cutChoices';

const KINDS = (['pattern', 'mockup'] as const).map((value) => ({ value, label: CUT.kinds[value] }));

export function PatternChoices({ unit }: { unit: Unit }) {
  const { kind, mockupAllowance, linesAcross } = useCutChoices();
  return (
    <>
      <ChoiceRow
        legend={CUT.kinds.legend}
        name="print-kind"
        choices={KINDS}
        value={kind}
        onChange={(value) => choose({ kind: value })}
      />
      {kind === 'mockup' ? (
        <LengthField
          label={CUT.kinds.allowance}
          hint={CUT.kinds.mockupHint}
          span={styleSpan('allowances.seam')}
          value={mockupAllowance}
          unit={unit}
          onShow={(mm) => choose({ mockupAllowance: mm ?? MOCKUP_ALLOWANCE_MM })}
          onKeep={() => undefined}
          onDrop={() => undefined}
        />
      ) : (
        <Checkbox on={linesAcross} onSet={(on) => choose({ linesAcross: on })}>
          {CUT.kinds.linesAcross}
        </Checkbox>
      )}
    </>
  );
}
