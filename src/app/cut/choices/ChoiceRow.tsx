// A few choices side by side, of which one holds.

interface ChoiceRowProps<Value extends string> {
  /** Told to those who do not see the row. */
  readonly legend: string;
  readonly name: string;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value;
  readonly onChange: (value: Value) => void;
}

export function ChoiceRow<Value extends string>({
  legend,
  name,
  choices,
  value,
  onChange,
}: ChoiceRowProps<Value>) {
  return (
    <fieldset className="unit-choice choice-row">
      <legend className="unseen">{legend}</legend>
      {choices.map((each) => (
        <label key={each.value}>
          <input
            type="radio"
            name={name}
            checked={value === each.value}
            onChange={() => onChange(each.value)}
          />
          <span>{each.label}</span>
        </label>
      ))}
    </fieldset>
  );
}
