// The form of a cloth: its width, how it lies, and what is asked of the lay.

import { LAY, LAY_LAYERS, type LayCloth, type LayLayer, type Unit } from '../../../document';
import { Checkbox } from '../../components/fields/Checkbox';
import { LengthField } from '../../components/fields/LengthField';
import { BiasField } from './BiasField';
import { chooseLayer, outsideSpan } from './layChoices';
import { OthersField } from './OthersField';
import type { ClothDraft } from './piecesOnCloth';
import type { OtherDraft } from './useOthers';

interface LayFormProps {
  readonly layer: LayLayer;
  readonly cloth: LayCloth;
  readonly unit: Unit;
  /** The draft the plan is kept with. */
  readonly own: ClothDraft;
  readonly others: readonly OtherDraft[];
  readonly onSet: (cloth: LayCloth) => void;
}

/** Degrees that the grain may be off. */
const GRAINS = [0, 1, 2, 3, 5] as const;
const LAYER_COUNTS = [1, 2, 3, 4, 5, 6] as const;

export function LayForm({ layer, cloth, unit, own, others, onSet }: LayFormProps) {
  const outside = outsideSpan(cloth);
  const changeCloth = (change: Partial<LayCloth>): void => onSet({ ...cloth, ...change });
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
        <select value={layer} onChange={({ target }) => chooseLayer(target.value as LayLayer)}>
          {LAY_LAYERS.map((each) => (
            <option key={each} value={each}>
              {LAY.layers[each]}
            </option>
          ))}
        </select>
      </label>
      <label className="choice">
        <span>{LAY.layersCut}</span>
        <select value={cloth.layers} onChange={({ target }) => changeCloth({ layers: Number(target.value) })}>
          {LAYER_COUNTS.map((count) => (
            <option key={count} value={count}>
              {count}
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
      <OthersField cloth={cloth} others={others} onSet={onSet} />
      <BiasField cloth={cloth} layer={layer} drafts={[own, ...others]} onSet={changeCloth} />
      <details className="lay-more">
        <summary>{LAY.more}</summary>
        <div>
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
        </div>
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
