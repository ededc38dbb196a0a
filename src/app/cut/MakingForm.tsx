// The form with the figures that the making list is computed from.

import type { Unit } from '../../document';
import { formatLength, MAKING } from '../../document';
import {
  checkMaking,
  MAKING_FIELDS,
  MAKING_SOURCES,
  type MakingField,
  type MakingSettings,
} from '../../paper';
import { LengthField } from '../components/fields/LengthField';
import { changeMaking, dropTyped, makingFor, resetMaking, useMakingChoices } from './choices/makingChoices';

const GROUPS: readonly MakingField['group'][] = ['bones', 'eyelets', 'trimmings', 'cloth'];

const RULES: readonly MakingSettings['rule'][] = ['betweenBindings', 'channel'];

/** A share is chosen in steps of this many per cent. */
const SHARE_STEP = 5;

/** `rules` say what the sections of the list go by. */
export function MakingForm({ unit, rules }: { unit: Unit; rules: readonly string[] }) {
  const choices = useMakingChoices();
  const values = choices.typed ?? makingFor(choices, unit);
  return (
    <details className="making-form">
      <summary>{MAKING.form.summary}</summary>
      {[...rules, MAKING_SOURCES].map((rule) => (
        <p key={rule} className="hint">
          {rule}
        </p>
      ))}
      <label className="choice">
        <span>{MAKING.form.rule}</span>
        <select
          value={values.rule}
          onChange={(event) => {
            const rule = RULES.find((each) => each === event.target.value);
            if (rule) changeMaking(unit, { rule });
          }}
        >
          {RULES.map((rule) => (
            <option key={rule} value={rule}>
              {MAKING.form.rules[rule]}
            </option>
          ))}
        </select>
      </label>
      {GROUPS.map((group) => (
        <fieldset key={group}>
          <legend>{MAKING.form.groups[group]}</legend>
          {MAKING_FIELDS.filter((field) => field.group === group).map((field) =>
            field.kind === 'length' ? (
              <LengthSetting key={field.name} field={field} values={values} unit={unit} />
            ) : (
              <ChosenSetting key={field.name} field={field} values={values} unit={unit} />
            ),
          )}
        </fieldset>
      ))}
      <button type="button" className="quiet" onClick={resetMaking}>
        {MAKING.form.reset}
      </button>
    </details>
  );
}

interface SettingProps {
  readonly field: MakingField;
  readonly values: MakingSettings;
  readonly unit: Unit;
}

/** A length that is typed. */
function LengthSetting({ field, values, unit }: SettingProps) {
  const checked = checkMaking(values);
  const faulty = !checked.ok && checked.faults.some((fault) => fault.field?.name === field.name);
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  return (
    <LengthField
      label={field.label}
      value={values[field.name]}
      unit={unit}
      remarks={
        faulty ? [MAKING.form.outside({ least: written(field.least), most: written(field.most) })] : []
      }
      onShow={(mm) => changeMaking(unit, { [field.name]: mm ?? 0 })}
      onKeep={() => undefined}
      onDrop={dropTyped}
    />
  );
}

/** A count or a share that is chosen from a list. */
function ChosenSetting({ field, values, unit }: SettingProps) {
  const share = field.kind === 'share';
  const present = Math.round(values[field.name] * (share ? 100 : 1));
  const step = share ? SHARE_STEP : 1;
  const most = field.most * (share ? 100 : 1);
  const choices = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
  return (
    <label className="choice">
      <span>{field.label}</span>
      <select
        value={present}
        onChange={(event) =>
          changeMaking(unit, { [field.name]: Number(event.target.value) / (share ? 100 : 1) })
        }
      >
        {choices.map((value) => (
          <option key={value} value={value}>
            {share ? MAKING.form.share({ percent: value }) : value}
          </option>
        ))}
      </select>
    </label>
  );
}
