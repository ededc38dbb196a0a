// The fields of lengths, edges and the bust point: between what, which edge, and how much at which places.

import {
  ALTERED_EDGES,
  BOUND_TITLES,
  FITTINGS,
  isAllRound,
  placeWords,
  type Unit,
} from '../../../../document';
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

type PlacedAmounts = Of<'length' | 'edge'>['at'];

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

/** Whether both places are those of {@link ROUND}, in its order, with one amount. */
const isRound = (at: PlacedAmounts): boolean =>
  isAllRound(at) && at.every(({ place }, i) => keyOf(place) === keyOf(ROUND[i] as AlteredPlace));

interface PlaceFieldsProps {
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  readonly value: string;
  readonly onChoose: (key: string) => void;
  readonly hint?: string;
  readonly by: number;
  readonly unit: Unit;
  readonly onBy: (by: number) => void;
}

/** A place, and by how much there. */
function PlaceFields({ choices, value, onChoose, hint, by, unit, onBy }: PlaceFieldsProps) {
  return (
    <>
      <ChoiceOf label={TEXTS.place} choices={choices} value={value} onChoose={onChoose} />
      <AmountField
        label={TEXTS.by}
        {...(hint === undefined ? {} : { hint })}
        value={by}
        unit={unit}
        most={MOST_ALTERED_MM}
        onSet={onBy}
      />
    </>
  );
}

interface PlacedFieldsProps extends Pick<FieldsProps<'edge'>, 'draft' | 'style' | 'unit'> {
  readonly kind: 'length' | 'edge';
  readonly at: PlacedAmounts;
  readonly onSet: (at: PlacedAmounts) => void;
}

export function PlacedFields({ kind, at, draft, style, unit, onSet }: PlacedFieldsProps) {
  const standing = placesOf(draft, style);
  const least = kind === 'length' ? 2 : 1;
  const round = kind === 'length' && isRound(at) ? at[0] : undefined;
  const roundBy = (by: number): void => onSet(ROUND.map((place) => ({ place, by })));
  const roundChoice = kind === 'length' && at.length === least ? [{ value: ALL, label: TEXTS.allRound }] : [];
  const choicesOf = (places: readonly AlteredPlace[]): { value: string; label: string }[] =>
    places.map((each) => ({ value: keyOf(each), label: placeWords(each, style) }));
  if (round)
    return (
      <div className="alteration-row">
        <PlaceFields
          choices={[...roundChoice, ...choicesOf(standing)]}
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
          hint={TEXTS.roundHint}
          by={round.by}
          unit={unit}
          onBy={roundBy}
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
            <PlaceFields
              choices={[...roundChoice, ...choicesOf(places)]}
              value={keyOf(place)}
              onChoose={(key) =>
                key === ALL
                  ? roundBy(by)
                  : setAt(i, { place: places.find((each) => keyOf(each) === key) ?? place })
              }
              {...(i === 0 ? { hint: kind === 'length' ? TEXTS.lengthHint : TEXTS.edgeHint } : {})}
              by={by}
              unit={unit}
              onBy={(mm) => setAt(i, { by: mm })}
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
