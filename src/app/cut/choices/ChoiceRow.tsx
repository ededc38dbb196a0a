// A row of radio buttons.

interface ChoiceRowProps<Value extends string> {
  /** Read by screen readers only. */
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
