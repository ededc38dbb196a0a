// From what a fitter sees to the alteration that it calls for, with its amounts filled in.

import { useState } from 'react';
import { FITTINGS, SEEN, SEEN_NAMES, type SeenName, type Unit } from '../../../../document';
import { MOST_ALTERED_MM } from '../../../../engine';
import { AmountField } from './AmountField';
import { ChoiceOf } from './ChoiceOf';
import { FittingForm } from './FittingForm';

const TEXTS = FITTINGS.seen;

interface SeenFormProps {
  readonly unit: Unit;
  readonly onTake: (seen: SeenName, mm: number) => void;
  readonly onCancel: () => void;
}

export function SeenForm({ unit, onTake, onCancel }: SeenFormProps) {
  const [seen, setSeen] = useState<SeenName>('gapAtTop');
  const [mm, setMm] = useState(0);
  const [wanting, setWanting] = useState<string | null>(null);
  const { means, amount } = SEEN[seen];
  const take = (): void => {
    if (amount !== null && Number.isNaN(mm)) setWanting(FITTINGS.form.unread);
    else if (amount !== null && mm === 0) setWanting(FITTINGS.form.nothing);
    else onTake(seen, mm);
  };
  return (
    <FittingForm
      title={TEXTS.title}
      wanting={wanting}
      make={amount === null ? FITTINGS.kinds.gaps : TEXTS.take}
      onMake={take}
      onCancel={onCancel}
    >
      <ChoiceOf
        label={TEXTS.what}
        choices={SEEN_NAMES.map((value) => ({ value, label: SEEN[value].what }))}
        value={seen}
        onChoose={setSeen}
      />
      <p>{means}</p>
      {amount === null ? null : (
        <AmountField
          label={amount}
          hint={TEXTS.source}
          value={mm}
          unit={unit}
          most={MOST_ALTERED_MM}
          onSet={setMm}
        />
      )}
    </FittingForm>
  );
}
