// From the gaps of the lacing, read level by level, to what each seam takes in or lets out.

import { useState } from 'react';
import { FITTINGS, formatLength, LEVEL_WORDS, type Unit } from '../../../../document';
import {
  type Alteration,
  type Draft,
  type LevelName,
  openWidth,
  type Style,
  shareOverSeams,
} from '../../../../engine';
import { LengthField } from '../../../components/fields/LengthField';
import { FittingForm } from './FittingForm';

const TEXTS = FITTINGS.gaps;

/** The widest gap that is taken; our own bound. mm */
const MOST_MM = 500;

interface GapFormProps {
  readonly draft: Draft;
  readonly style: Style;
  readonly unit: Unit;
  readonly onMake: (alterations: readonly Alteration[]) => void;
  readonly onCancel: () => void;
}

export function GapForm({ draft, style, unit, onMake, onCancel }: GapFormProps) {
  const [gaps, setGaps] = useState<Partial<Record<LevelName, number>>>({});
  const [wanting, setWanting] = useState<string | null>(null);
  const { blocks, levels } = draft;
  const gap = openWidth(style.closure);
  if (!blocks || gap === 0)
    return (
      <FittingForm title={TEXTS.title} wanting={null} make={null} onMake={onCancel} onCancel={onCancel}>
        <p>{blocks ? TEXTS.notLaced : TEXTS.halves}</p>
      </FittingForm>
    );
  const make = (): void => {
    const unread = Object.values(gaps).some((mm) => Number.isNaN(mm));
    const alterations = unread ? [] : shareOverSeams({ blocks, levels, style, gaps });
    if (alterations.length > 0) onMake(alterations);
    else setWanting(unread ? FITTINGS.form.unread : TEXTS.nothing);
  };
  const set = (level: LevelName, mm: number | null): void =>
    setGaps(({ [level]: _, ...others }) => (mm === null ? others : { ...others, [level]: mm }));
  return (
    <FittingForm title={TEXTS.title} wanting={wanting} make={TEXTS.make} onMake={make} onCancel={onCancel}>
      <p className="hint">{TEXTS.hint({ gap: formatLength(gap, unit, { withUnit: true }) })}</p>
      <div className="alteration-row">
        {levels.map(({ name }) => (
          <LengthField
            key={name}
            label={TEXTS.at({ level: LEVEL_WORDS[name] })}
            optional={true}
            span={[0, MOST_MM]}
            value={gaps[name] === undefined || Number.isNaN(gaps[name]) ? null : gaps[name]}
            unit={unit}
            onShow={(mm) => set(name, mm)}
            onKeep={() => undefined}
            onDrop={() => set(name, Number.NaN)}
          />
        ))}
      </div>
    </FittingForm>
  );
}
