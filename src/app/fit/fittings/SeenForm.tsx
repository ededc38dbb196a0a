// From what a fitter sees to the alteration that it calls for, with its amounts filled in.

import { useState } from 'react';
import { FITTINGS, SEEN, SEEN_NAMES, type SeenName, type Unit } from '../../../document';
import { MOST_ALTERED_MM } from '../../../engine';
import { AmountField } from './AmountField';
import { ChoiceOf } from './ChoiceOf';
import { FormEnd } from './FormEnd';

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
  return (
    <form
      className="alteration-form"
      aria-label={TEXTS.title}
      onSubmit={(event) => {
        event.preventDefault();
        if (Number.isNaN(mm)) setWanting(FITTINGS.form.unread);
        else if (mm === 0) setWanting(FITTINGS.form.nothing);
        else onTake(seen, mm);
      }}
    >
      <h4>{TEXTS.title}</h4>
      <ChoiceOf
        label={TEXTS.what}
        choices={SEEN_NAMES.map((value) => ({ value, label: SEEN[value].what }))}
        value={seen}
        onChoose={setSeen}
      />
      <p>{SEEN[seen].means}</p>
      <AmountField
        label={SEEN[seen].amount}
        hint={TEXTS.source}
        value={mm}
        unit={unit}
        most={MOST_ALTERED_MM}
        onSet={setMm}
      />
      <FormEnd wanting={wanting} make={TEXTS.take} onCancel={onCancel} />
    </form>
  );
}
