// From the gaps of the lacing, read level by level, to what each seam takes in or lets out.

import { useState } from 'react';
import { FITTINGS, formatLength, LEVEL_WORDS, type Unit } from '../../../../document';
import {
  type Alteration,
  type BlockName,
  centreSeam,
  type Draft,
  type LevelName,
  openWidth,
  SEAM_ENDS,
  type SeamEnd,
  SIDES,
  type Style,
  seamEnd,
  shareOverSeams,
  styleOfSide,
} from '../../../../engine';
import { LengthField } from '../../../components/fields/LengthField';
import { levelNames } from './alterable';
import { FittingForm } from './FittingForm';

const TEXTS = FITTINGS.gaps;

/** The widest gap that is taken; our own bound. mm */
const MOST_MM = 500;

type GapPlace = LevelName | SeamEnd;

interface GapFormProps {
  /** The draft without its alterations. */
  readonly draft: Draft;
  readonly style: Style;
  readonly unit: Unit;
  readonly onMake: (alterations: readonly Alteration[]) => void;
  readonly onCancel: () => void;
}

export function GapForm({ draft, style, unit, onMake, onCancel }: GapFormProps) {
  const [gaps, setGaps] = useState<Partial<Record<GapPlace, number>>>({});
  const [wanting, setWanting] = useState<string | null>(null);
  const gap = openWidth(style.closure);
  const laced = draft.laced[0];
  if (!laced || gap === 0)
    return (
      <FittingForm title={TEXTS.title} wanting={null} make={null} onMake={onCancel} onCancel={onCancel}>
        <p>{draft.pieces.length > 0 ? TEXTS.notLaced : TEXTS.notDrafted}</p>
      </FittingForm>
    );
  const make = (): void => {
    const unread = Object.values(gaps).some((mm) => Number.isNaN(mm));
    const alterations = unread ? [] : shared(draft, style, gaps, laced);
    if (alterations.length > 0) onMake(alterations);
    else setWanting(unread ? FITTINGS.form.unread : TEXTS.nothing);
  };
  const set = (level: GapPlace, mm: number | null): void =>
    setGaps(({ [level]: _, ...others }) => (mm === null ? others : { ...others, [level]: mm }));
  return (
    <FittingForm title={TEXTS.title} wanting={wanting} make={TEXTS.make} onMake={make} onCancel={onCancel}>
      <p className="hint">{TEXTS.hint({ gap: formatLength(gap, unit, { withUnit: true }) })}</p>
      <div className="alteration-row">
        {placesOfGaps(draft, laced).map((name) => (
          <LengthField
            key={name}
            label={TEXTS.at({ level: isEnd(name) ? FITTINGS.form.ends[name] : LEVEL_WORDS[name] })}
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

const isEnd = (place: GapPlace): place is SeamEnd => SEAM_ENDS.some((end) => end === place);

/** Where a gap can be read, from the top down. */
function placesOfGaps(draft: Draft, laced: BlockName): readonly GapPlace[] {
  const end = (each: SeamEnd): GapPlace[] => (seamEnd(draft, centreSeam(laced), each) === null ? [] : [each]);
  return [...end('top'), ...levelNames(draft), ...end('hem')];
}

/** The gaps shared over the seams; where left and right are drafted apart, over those of each half. */
function shared(
  draft: Draft,
  style: Style,
  gaps: Readonly<Partial<Record<GapPlace, number>>>,
  laced: BlockName,
): Alteration[] {
  const atEnds = SEAM_ENDS.flatMap((end) => {
    const y = seamEnd(draft, centreSeam(laced), end);
    const gap = gaps[end];
    return y === null || gap === undefined ? [] : [{ end, y, gap }];
  });
  const { blocks, levels, halves } = draft;
  if (blocks) return shareOverSeams({ blocks, levels, style, gaps, atEnds });
  return SIDES.flatMap((side) => {
    const half = halves?.[side];
    if (!half?.blocks) return [];
    const own = { blocks: half.blocks, levels: half.levels, style: styleOfSide(style, side), gaps, atEnds };
    return shareOverSeams(own).map((each) => ({ ...each, side }));
  });
}
