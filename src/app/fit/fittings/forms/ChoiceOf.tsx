// One of a list, chosen from what the platform shows.

import { useId } from 'react';

interface ChoiceOfProps<Value extends string> {
  readonly label: string;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value;
  readonly onChoose: (value: Value) => void;
}

export function ChoiceOf<Value extends string>({ label, choices, value, onChoose }: ChoiceOfProps<Value>) {
  const id = useId();
  return (
    <div className="choice-of">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={({ target }) => {
          const chosen = choices.find((each) => each.value === target.value);
          if (chosen) onChoose(chosen.value);
        }}
      >
        {choices.map((each) => (
          <option key={each.value} value={each.value}>
            {each.label}
          </option>
        ))}
      </select>
    </div>
  );
}
