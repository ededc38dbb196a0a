// The form of a cloth: its width, how it lies, and what is asked of the lay.

import { LAY, type Unit } from '../../../document';
import { Checkbox } from '../../components/fields/Checkbox';
import { LengthField } from '../../components/fields/LengthField';
import { changeCloth, chooseLayer, LAYERS, type LayerCloth, type LayerName, outsideSpan } from './layChoices';

interface LayFormProps {
  readonly layer: LayerName;
  readonly cloth: LayerCloth;
  readonly unit: Unit;
  readonly hasStraps: boolean;
}

/** Degrees that the grain may be off. */
const GRAINS = [0, 1, 2, 3, 5] as const;

export function LayForm({ layer, cloth, unit, hasStraps }: LayFormProps) {
  const outside = outsideSpan(cloth);
  const length = (label: string, field: 'widthMm' | 'gapMm') => (
    <LengthField
      label={label}
      value={cloth[field]}
      unit={unit}
      onShow={(mm) => changeCloth({ [field]: mm ?? 0 })}
      onKeep={() => undefined}
      onDrop={() => undefined}
    />
  );
  return (
    <div className="lay-form">
      <label className="choice">
        <span>{LAY.layer}</span>
        <select value={layer} onChange={({ target }) => chooseLayer(target.value as LayerName)}>
          {LAYERS.map((each) => (
            <option key={each} value={each}>
              {LAY.layers[each]}
            </option>
          ))}
        </select>
      </label>
      {length(LAY.width, 'widthMm')}
      <label className="choice">
        <span>{LAY.fold.label}</span>
        <select
          value={cloth.folded ? 'folded' : 'open'}
          onChange={({ target }) => changeCloth({ folded: target.value === 'folded' })}
        >
          <option value="open">{LAY.fold.open}</option>
          <option value="folded">{LAY.fold.folded}</option>
        </select>
      </label>
      <label className="choice">
        <span>{LAY.grain.label}</span>
        <select
          value={cloth.grainDegrees}
          onChange={({ target }) => changeCloth({ grainDegrees: Number(target.value) })}
        >
          {GRAINS.map((degrees) => (
            <option key={degrees} value={degrees}>
              {degrees === 0 ? LAY.grain.strict : LAY.grain.within({ degrees })}
            </option>
          ))}
        </select>
      </label>
      {length(LAY.gap, 'gapMm')}
      <Checkbox on={cloth.nap} onSet={(nap) => changeCloth({ nap })}>
        {LAY.nap}
      </Checkbox>
      {hasStraps ? (
        <Checkbox on={cloth.biasStraps} onSet={(biasStraps) => changeCloth({ biasStraps })}>
          {LAY.bias}
        </Checkbox>
      ) : null}
      <details>
        <summary>{LAY.more}</summary>
        <NumberField
          key={`along ${layer}`}
          label={LAY.shrinkAlong}
          value={100 * cloth.shrinkAlong}
          onSet={(percent) => changeCloth({ shrinkAlong: (percent ?? 0) / 100 })}
        />
        <NumberField
          key={`across ${layer}`}
          label={LAY.shrinkAcross}
          value={100 * cloth.shrinkAcross}
          onSet={(percent) => changeCloth({ shrinkAcross: (percent ?? 0) / 100 })}
        />
        <NumberField
          key={`price ${layer}`}
          label={LAY.price[unit]}
          value={cloth.price}
          onSet={(price) => changeCloth({ price })}
        />
      </details>
      <p className="said" aria-live="polite">
        {outside === null ? '' : LAY.outside[outside]}
      </p>
    </div>
  );
}

/** A number that may be left empty; what is typed stays in the field. */
function NumberField({
  label,
  value,
  onSet,
}: {
  label: string;
  value: number | null;
  onSet: (value: number | null) => void;
}) {
  return (
    <label className="choice">
      <span>{label}</span>
      <input
        type="number"
        inputMode="decimal"
        min={0}
        step="any"
        defaultValue={value === null || value === 0 ? '' : String(Math.round(value * 100) / 100)}
        onChange={({ target }) =>
          onSet(Number.isFinite(target.valueAsNumber) ? Math.max(0, target.valueAsNumber) : null)
        }
      />
    </label>
  );
}
