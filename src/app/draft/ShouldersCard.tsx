// Strapless, on the shoulders, or with an off-shoulder band: the choice, its numbers, and what stands against it with its cure.

import {
  type Change,
  changeStyle,
  dartsBelowShoulders,
  ISSUES,
  MEASUREMENT_WORDS,
  SHOULDER_CARD,
  SHOULDER_KIND_WORDS,
  SHOULDER_KINDS,
  type ShoulderKind,
  type ShoulderNumber,
  setJoinedSide,
  setShoulderKind,
  setShoulderNumber,
  shoulderKind,
  shoulderNumber,
  topFromOverBust,
  wedgeRunsUp,
} from '../../document';
import { type BlockName, type Draft, type Issue, type Side, type Style, styleSpan } from '../../engine';
import { LengthField } from '../components/fields/LengthField';
import { useOptionalStyleNumber } from '../components/fields/useNumberEdit';
import { useIssueSentence } from '../components/useIssueSentence';
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
  const { issues } = useDraft();
  const change = useStore((state) => state.change);
  const { style } = savedDraft;
  const side = useSide();
  const kind = shoulderKind(style);
  const numbers = NUMBERS.filter(({ name }) => asked(style, side, kind, name));
  const places = new Set(numbers.flatMap((number) => placesOf(number)));
  const against = issues.filter((issue) => isOfShoulders(issue, kind) && !places.has(issue.at.field ?? ''));
  return (
    <section className="card shoulders-card" aria-label={SHOULDER_CARD.title}>
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
      <div className="shoulders-against" aria-live="polite">
        {CAUSES.map((cause) => (
          <Against key={cause.code} cause={cause} issues={against} />
        ))}
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

const isOfShoulders = ({ code, at }: Issue, kind: ShoulderKind): boolean =>
  kind !== 'strapless' &&
  (code.startsWith('shoulder') || (code === 'measurementMissing' && at.field === 'acrossShoulder'));

interface Cause {
  readonly code: Issue['code'];
  /** What takes it away, where a step of the style does; else the tape is to be looked at. */
  readonly cure: {
    /** What the press is called that takes away so many causes. */
    readonly label: (found: { readonly count: number }) => string;
    readonly change: Change;
    readonly set: (style: Style, draft: Draft) => Style;
  } | null;
}

const CAUSES: readonly Cause[] = [
  { code: 'measurementMissing', cure: null },
  {
    code: 'shoulderNeedsTop',
    cure: {
      label: () => SHOULDER_CARD.measureFromOverBust,
      change: { code: 'topLineSet' },
      set: topFromOverBust,
    },
  },
  {
    code: 'shoulderNeedsSideSeam',
    cure: {
      label: () => SHOULDER_CARD.keepSideSeam,
      change: { code: 'sidePanelSet', joined: false },
      set: (style) => setJoinedSide(style, false),
    },
  },
  {
    code: 'shoulderWedges',
    cure: {
      label: SHOULDER_CARD.makeDarts,
      change: { code: 'dartsBelowShoulders' },
      set: dartsBelowShoulders,
    },
  },
  { code: 'shoulderOffBlock', cure: null },
];

/** What the draft says of one cause, and the press that takes all of it away. */
function Against({ cause: { code, cure }, issues }: { cause: Cause; issues: readonly Issue[] }) {
  const draft = useDraft();
  const sentence = useIssueSentence();
  const change = useStore((state) => state.change);
  const found = issues.filter((issue) => issue.code === code);
  const sentences = new Set(found.map(sentence));
  if (found.length === 0) return null;
  return (
    <>
      {[...sentences].map((sentence) => (
        <p key={sentence} className="said">
          {sentence}
        </p>
      ))}
      {cure ? (
        <button
          type="button"
          onClick={() =>
            change(cure.change, (book) => changeStyle(book, (before) => cure.set(before, draft)))
          }
        >
          {cure.label({ count: found.length })}
        </button>
      ) : null}
      {found.some(({ at }) => Object.hasOwn(MEASUREMENT_WORDS, at.field ?? '')) ? (
        <a href="#measure">{ISSUES.goToMeasurements}</a>
      ) : null}
    </>
  );
}

function NumberField({ number }: { number: NumberPlace }) {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const sentence = useIssueSentence();
  const edit = useOptionalStyleNumber();
  const { style } = savedDraft;
  const { name } = number;
  const { label, full, hint } = SHOULDER_CARD.numbers[name];
  const places = placesOf(number);
  const remarks = issues
    .filter(({ severity, at }) => severity === 'error' && places.includes(at.field ?? ''))
    .map(sentence);
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
        remarks={remarks}
        {...edit({ code: 'shoulderNumberSet', number: name }, (before, mm) =>
          setShoulderNumber(before, name, mm),
        )}
      />
      <span className="hint">{hint}</span>
    </div>
  );
}
