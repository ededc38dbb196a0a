// The figures that the making list goes by, each with where its default comes from.

import type { Unit } from '../../document';
import { formatLength } from '../../document';
import { checkMaking, MAKING_FIELDS, type MakingField, type MakingSettings } from '../../paper';
import { LengthField } from '../components/LengthField';
import { changeMaking, dropTyped, makingFor, resetMaking, useMakingChoices } from './choices/makingChoices';

const GROUPS: readonly { group: MakingField['group']; label: string }[] = [
  { group: 'bones', label: 'Bones' },
  { group: 'eyelets', label: 'Eyelets' },
  { group: 'trimmings', label: 'Lace, binding, tape, casing' },
  { group: 'cloth', label: 'Cloth' },
];

const RULES: readonly { rule: MakingSettings['rule']; label: string }[] = [
  { rule: 'betweenBindings', label: 'between bindings' },
  { rule: 'channel', label: 'by the channel' },
];

/** A share is chosen in steps of this many per cent. */
const SHARE_STEP = 5;

export function MakingForm({ unit }: { unit: Unit }) {
  const choices = useMakingChoices();
  const values = choices.typed ?? makingFor(choices, unit);
  return (
    <details className="making-form">
      <summary>What the list goes by</summary>
      <label className="choice">
        <span>Bones are reckoned</span>
        <select
          value={values.rule}
          onChange={(event) => {
            const found = RULES.find(({ rule }) => rule === event.target.value);
            if (found) changeMaking(unit, { rule: found.rule });
          }}
        >
          {RULES.map(({ rule, label }) => (
            <option key={rule} value={rule}>
              {label}
            </option>
          ))}
        </select>
      </label>
      {GROUPS.map(({ group, label }) => (
        <fieldset key={group}>
          <legend>{label}</legend>
          {MAKING_FIELDS.filter((field) => field.group === group).map((field) =>
            field.kind === 'length' ? (
              <LengthOf key={field.name} field={field} values={values} unit={unit} />
            ) : (
              <ChoiceOf key={field.name} field={field} values={values} unit={unit} />
            ),
          )}
        </fieldset>
      ))}
      <button type="button" className="quiet" onClick={resetMaking}>
        Back to the usual figures
      </button>
    </details>
  );
}

interface FieldProps {
  readonly field: MakingField;
  readonly values: MakingSettings;
  readonly unit: Unit;
}

function LengthOf({ field, values, unit }: FieldProps) {
  const checked = checkMaking(values);
  const faulty = !checked.ok && checked.faults.some((fault) => fault.field?.name === field.name);
  const said = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  return (
    <LengthField
      label={field.label}
      value={values[field.name]}
      unit={unit}
      hint={field.source}
      remarks={
        faulty
          ? [`This must be between ${said(field.least)} and ${said(field.most)}; the last good figure holds.`]
          : []
      }
      onShow={(mm) => changeMaking(unit, { [field.name]: mm ?? 0 })}
      onKeep={() => undefined}
      onDrop={dropTyped}
    />
  );
}

function ChoiceOf({ field, values, unit }: FieldProps) {
  const share = field.kind === 'share';
  const present = Math.round(values[field.name] * (share ? 100 : 1));
  const step = share ? SHARE_STEP : 1;
  const most = field.most * (share ? 100 : 1);
  const choices = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
  return (
    <label className="choice">
      <span>
        {field.label}
        <span className="hint">{field.source}</span>
      </span>
      <select
        value={present}
        onChange={(event) =>
          changeMaking(unit, { [field.name]: Number(event.target.value) / (share ? 100 : 1) })
        }
      >
        {choices.map((value) => (
          <option key={value} value={value}>
            {share ? `${value} %` : value}
          </option>
        ))}
      </select>
    </label>
  );
}
