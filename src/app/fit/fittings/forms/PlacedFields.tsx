// The fields of lengths, edges and the bust point: between what, which edge, and how much at which places.

import { ALTERED_EDGES, BOUND_TITLES, FITTINGS, placeWords, type Unit } from '../../../../document';
import {
  type Alteration,
  type AlteredPlace,
  type Draft,
  type LengthBound,
  MOST_ALTERED_MM,
  type Style,
} from '../../../../engine';
import { AmountField } from './AmountField';
import { boundsOf, edgesOf, placesOf } from './alterable';
import { ChoiceOf } from './ChoiceOf';

const TEXTS = FITTINGS.form;

type Of<Kind extends Alteration['kind']> = Extract<Alteration, { readonly kind: Kind }>;

interface FieldsProps<Kind extends Alteration['kind']> {
  readonly alteration: Of<Kind>;
  readonly draft: Draft;
  readonly style: Style;
  readonly unit: Unit;
  readonly onSet: (alteration: Of<Kind>) => void;
}

export function BoundFields({ alteration, draft, onSet }: FieldsProps<'length'>) {
  const bounds = boundsOf(draft).map((value) => ({ value, label: BOUND_TITLES[value] }));
  const [upper, lower] = alteration.between;
  const set = (between: readonly [LengthBound, LengthBound]): void => onSet({ ...alteration, between });
  return (
    <div className="alteration-row">
      <ChoiceOf label={TEXTS.upper} choices={bounds} value={upper} onChoose={(next) => set([next, lower])} />
      <ChoiceOf label={TEXTS.lower} choices={bounds} value={lower} onChoose={(next) => set([upper, next])} />
    </div>
  );
}

export function EdgeChoice({ alteration, draft, onSet }: FieldsProps<'edge'>) {
  const edges = edgesOf(draft);
  const shown = edges.includes(alteration.edge) ? edges : [alteration.edge, ...edges];
  return (
    <ChoiceOf
      label={TEXTS.edge}
      choices={shown.map((value) => ({ value, label: ALTERED_EDGES[value] }))}
      value={alteration.edge}
      onChoose={(edge) => onSet({ ...alteration, edge })}
    />
  );
}

const keyOf = (place: AlteredPlace): string => JSON.stringify(place);

const ALL = 'all';
const landmark = (name: 'centreFront' | 'centreBack' | 'side'): AlteredPlace => ({ kind: 'landmark', name });
/** By the same at both ends, a length changes alike all round. */
const ROUND: readonly AlteredPlace[] = [landmark('centreFront'), landmark('centreBack')];
const SIDE_PLACES: readonly AlteredPlace[] = [landmark('side'), landmark('centreBack')];

const isRound = (at: readonly { readonly place: AlteredPlace; readonly by: number }[]): boolean =>
  at.length === ROUND.length &&
  at.every(
    ({ place, by }, i) => keyOf(place) === keyOf(ROUND[i] as AlteredPlace) && Object.is(by, at[0]?.by),
  );

interface PlacedFieldsProps extends Pick<FieldsProps<'edge'>, 'draft' | 'style' | 'unit'> {
  readonly kind: 'length' | 'edge';
  readonly at: Of<'length' | 'edge'>['at'];
  readonly onSet: (at: Of<'length' | 'edge'>['at']) => void;
}

export function PlacedFields({ kind, at, draft, style, unit, onSet }: PlacedFieldsProps) {
  const standing = placesOf(draft, style);
  const least = kind === 'length' ? 2 : 1;
  const round = kind === 'length' && isRound(at) ? at[0] : undefined;
  const roundBy = (by: number): void => onSet(ROUND.map((place) => ({ place, by })));
  const roundChoice = kind === 'length' && at.length === least ? [{ value: ALL, label: TEXTS.allRound }] : [];
  if (round)
    return (
      <div className="alteration-row">
        <ChoiceOf
          label={TEXTS.place}
          choices={[
            { value: ALL, label: TEXTS.allRound },
            ...standing.map((each) => ({ value: keyOf(each), label: placeWords(each, style) })),
          ]}
          value={ALL}
          onChoose={(key) => {
            const place = standing.find((each) => keyOf(each) === key);
            const other = SIDE_PLACES.find((each) => keyOf(each) !== key);
            if (place && other)
              onSet([
                { place, by: round.by },
                { place: other, by: 0 },
              ]);
          }}
        />
        <AmountField
          label={TEXTS.by}
          hint={TEXTS.roundHint}
          value={round.by}
          unit={unit}
          most={MOST_ALTERED_MM}
          onSet={roundBy}
        />
      </div>
    );
  const setAt = (index: number, change: Partial<(typeof at)[number]>): void =>
    onSet(at.map((each, i) => (i === index ? { ...each, ...change } : each)));
  const free = standing.find((place) => !at.some((each) => keyOf(each.place) === keyOf(place)));
  return (
    <>
      {at.map(({ place, by }, i) => {
        const places = standing.some((each) => keyOf(each) === keyOf(place))
          ? standing
          : [place, ...standing];
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: places are told by their place in the list
          <fieldset key={i} className="alteration-row">
            <legend className="unseen">{TEXTS.placeNumber({ number: i + 1 })}</legend>
            <ChoiceOf
              label={TEXTS.place}
              choices={[
                ...roundChoice,
                ...places.map((each) => ({ value: keyOf(each), label: placeWords(each, style) })),
              ]}
              value={keyOf(place)}
              onChoose={(key) =>
                key === ALL
                  ? roundBy(by)
                  : setAt(i, { place: places.find((each) => keyOf(each) === key) ?? place })
              }
            />
            <AmountField
              label={TEXTS.by}
              {...(i === 0 ? { hint: kind === 'length' ? TEXTS.lengthHint : TEXTS.edgeHint } : {})}
              value={by}
              unit={unit}
              most={MOST_ALTERED_MM}
              onSet={(mm) => setAt(i, { by: mm })}
            />
            {at.length > least ? (
              <button type="button" onClick={() => onSet(at.filter((_, k) => k !== i))}>
                {TEXTS.removePlace}
              </button>
            ) : null}
          </fieldset>
        );
      })}
      {free ? (
        <button type="button" onClick={() => onSet([...at, { place: free, by: 0 }])}>
          {TEXTS.anotherPlace}
        </button>
      ) : null}
    </>
  );
}

export function PointFields({ alteration, unit, onSet }: Omit<FieldsProps<'bustPoint'>, 'draft' | 'style'>) {
  return (
    <div className="alteration-row">
      <AmountField
        label={TEXTS.out}
        hint={TEXTS.pointHint}
        value={alteration.out}
        unit={unit}
        most={MOST_ALTERED_MM}
        onSet={(out) => onSet({ ...alteration, out })}
      />
      <AmountField
        label={TEXTS.down}
        value={alteration.down}
        unit={unit}
        most={MOST_ALTERED_MM}
        onSet={(down) => onSet({ ...alteration, down })}
      />
    </div>
  );
}
