// Strapless, on the shoulders, or with an off-shoulder band: the choice and its numbers.

import {
  changeStyle,
  SHOULDER_CARD,
  SHOULDER_KIND_WORDS,
  SHOULDER_KINDS,
  type ShoulderKind,
  type ShoulderNumber,
  setShoulderKind,
  setShoulderNumber,
  shoulderKind,
  shoulderNumber,
  wedgeRunsUp,
} from '../../document';
import { type BlockName, type Side, type Style, styleSpan } from '../../engine';
import { LengthField } from '../components/fields/LengthField';
import { useOptionalStyleNumber } from '../components/fields/useNumberEdit';
import { useSide } from '../store/sideContext';
import { useDraft, useOpen, useStore } from '../store/storeContext';

interface NumberPlace {
  readonly name: ShoulderNumber;
  /** Where the draft complains of it, besides its own place. */
  readonly also?: string;
}

const NUMBERS: readonly NumberPlace[] = [
  { name: 'drop', also: 'topShape.underarm' },
  { name: 'armholeIn' },
  { name: 'ease' },
  { name: 'rise' },
  { name: 'intake.front' },
  { name: 'intake.back' },
  { name: 'bandAbove', also: 'topShape.centreFront' },
];

export function ShouldersCard() {
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const { style } = savedDraft;
  const side = useSide();
  const kind = shoulderKind(style);
  const numbers = NUMBERS.filter(({ name }) => asked(style, side, kind, name));
  return (
    <section className="shoulders-card" aria-label={SHOULDER_CARD.title}>
      <div className="edge-head">
        <h3>{SHOULDER_CARD.title}</h3>
        <fieldset className="sizing">
          <legend className="unseen">{SHOULDER_CARD.legend}</legend>
          {SHOULDER_KINDS.map((each) => (
            <label key={each}>
              <input
                type="radio"
                name="shoulders"
                checked={kind === each}
                onChange={() =>
                  change({ code: 'shouldersSet', kind: each }, (book) =>
                    changeStyle(book, (before) => setShoulderKind(before, each)),
                  )
                }
              />
              <span>{SHOULDER_KIND_WORDS[each]}</span>
            </label>
          ))}
        </fieldset>
        <p className="hint">{SHOULDER_CARD.hints[kind]}</p>
      </div>
      {numbers.length > 0 ? (
        <div className="shoulder-numbers">
          {numbers.map((number) => (
            <NumberField key={number.name} number={number} />
          ))}
        </div>
      ) : null}
    </section>
  );
}

/** Whether a number means anything as the style is: a band has no wedges, and a wedge that ends below takes nothing here. */
function asked(style: Style, side: Side, kind: ShoulderKind, name: ShoulderNumber): boolean {
  if (kind === 'strapless') return false;
  if (name === 'bandAbove') return kind === 'band';
  if (name === 'rise') return kind === 'shoulders';
  const block: BlockName | null = name === 'intake.front' ? 'front' : name === 'intake.back' ? 'back' : null;
  return block === null || (kind === 'shoulders' && wedgeRunsUp(style, side, block));
}

const placesOf = ({ name, also }: NumberPlace): string[] => [`shoulders.${name}`, ...(also ? [also] : [])];

function NumberField({ number }: { number: NumberPlace }) {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const edit = useOptionalStyleNumber();
  const { style } = savedDraft;
  const { name } = number;
  const { label, full, hint } = SHOULDER_CARD.numbers[name];
  const places = placesOf(number);
  const refused = issues.some(({ severity, at }) => severity === 'error' && places.includes(at.field ?? ''));
  return (
    <div className="edge-node">
      <span className="edge-node-name">{label}</span>
      <LengthField
        compact={true}
        optional={name !== 'bandAbove'}
        span={styleSpan(`shoulders.${name}`)}
        label={full}
        value={style.shoulders ? shoulderNumber(style.shoulders, name) : null}
        unit={client.unit}
        refused={refused}
        {...edit({ code: 'shoulderNumberSet', number: name }, (before, mm) =>
          setShoulderNumber(before, name, mm),
        )}
      />
      <span className="hint">{hint}</span>
    </div>
  );
}
