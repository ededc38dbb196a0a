// The fields of a seam's alteration: which seam or dart, and at each height how much on each of its edges.

import { useState } from 'react';
import {
  FITTINGS,
  formatLength,
  LEVEL_WORDS,
  seamEdgeTitles,
  seamTitle,
  type Unit,
} from '../../../../document';
import {
  type Draft,
  keyOfSeam,
  MOST_ALTERED_MM,
  MOST_FROM_WAIST_MM,
  SEAM_ENDS,
  type SeamAlteration,
  type SeamEnd,
  type SeamHeight,
  type SeamName,
  type Style,
  seamEnd,
} from '../../../../engine';
import { Checkbox } from '../../../components/fields/Checkbox';
import { AmountField } from './AmountField';
import { alterableSeams, levelNames } from './alterable';
import { ChoiceOf } from './ChoiceOf';

const TEXTS = FITTINGS.form;
const OWN = 'own';

interface SeamFieldsProps {
  readonly alteration: SeamAlteration;
  readonly draft: Draft;
  /** The draft without its alterations. */
  readonly unaltered: Draft;
  readonly style: Style;
  readonly unit: Unit;
  readonly onSet: (alteration: SeamAlteration) => void;
}

export function SeamFields({ alteration, draft, unaltered, style, unit, onSet }: SeamFieldsProps) {
  const { seam, at } = alteration;
  const [isAlike, setAlike] = useState(at.every(({ a, b }) => a === b));
  const standing = alterableSeams(draft, style);
  const isGone = !standing.some((each) => keyOfSeam(each) === keyOfSeam(seam));
  const choices = [
    ...(isGone
      ? [{ seam, value: keyOfSeam(seam), label: TEXTS.gone({ seam: seamTitle(seam, style) }) }]
      : []),
    ...standing.map((each) => ({ seam: each, value: keyOfSeam(each), label: seamTitle(each, style) })),
  ];
  const setAt = (index: number, change: Partial<SeamAlteration['at'][number]>): void =>
    onSet({ ...alteration, at: at.map((each, i) => (i === index ? { ...each, ...change } : each)) });
  const [first, second] = seamEdgeTitles(seam);
  const last = at.at(-1);
  return (
    <>
      <ChoiceOf
        label={TEXTS.seam}
        choices={choices}
        value={keyOfSeam(seam)}
        onChoose={(key) => {
          const chosen = choices.find(({ value }) => value === key)?.seam ?? seam;
          onSet({ ...alteration, seam: chosen });
        }}
      />
      {at.map(({ height, a, b }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: heights are told by their place in the list
        <fieldset key={i} className="alteration-row">
          <legend className={at.length === 1 ? 'unseen' : undefined}>
            {TEXTS.heightNumber({ number: i + 1 })}
          </legend>
          <HeightFields
            height={height}
            seam={seam}
            draft={draft}
            unaltered={unaltered}
            unit={unit}
            onSet={(next) => setAt(i, { height: next })}
          />
          {isAlike ? (
            <AmountField
              label={TEXTS.onEach}
              hint={TEXTS.seamHint}
              value={a}
              unit={unit}
              most={MOST_ALTERED_MM}
              onSet={(mm) => setAt(i, { a: mm, b: mm })}
            />
          ) : (
            <>
              <AmountField
                label={first}
                hint={TEXTS.seamHint}
                value={a}
                unit={unit}
                most={MOST_ALTERED_MM}
                onSet={(mm) => setAt(i, { a: mm })}
              />
              <AmountField
                label={second}
                value={b}
                unit={unit}
                most={MOST_ALTERED_MM}
                onSet={(mm) => setAt(i, { b: mm })}
              />
            </>
          )}
          <BothEdges mm={a + b} unit={unit} />
          {at.length > 1 ? (
            <button type="button" onClick={() => onSet({ ...alteration, at: at.filter((_, k) => k !== i) })}>
              {TEXTS.removeHeight}
            </button>
          ) : null}
        </fieldset>
      ))}
      <Checkbox
        on={isAlike}
        onSet={(on) => {
          setAlike(on);
          if (on) onSet({ ...alteration, at: at.map((each) => ({ ...each, b: each.a })) });
        }}
      >
        {TEXTS.alike}
      </Checkbox>
      <button
        type="button"
        onClick={() =>
          onSet({ ...alteration, at: [...at, { height: nextHeight(last?.height, draft), a: 0, b: 0 }] })
        }
      >
        {TEXTS.anotherHeight}
      </button>
    </>
  );
}

/** What both edges come to, as it was pinned; nothing while that is nothing. */
function BothEdges({ mm, unit }: { readonly mm: number; readonly unit: Unit }) {
  if (Number.isNaN(mm) || mm === 0) return null;
  const length = formatLength(Math.abs(mm), unit, { withUnit: true });
  return <p className="hint">{TEXTS.bothEdges({ length, isIn: mm > 0 })}</p>;
}

/** The level below the last one, else a height of its own. */
function nextHeight(last: SeamHeight | undefined, draft: Draft): SeamHeight {
  const levels = levelNames(draft);
  const next = last?.kind === 'level' ? levels[levels.indexOf(last.level) + 1] : undefined;
  return next ? { kind: 'level', level: next } : { kind: 'belowWaist', mm: 0 };
}

interface HeightFieldsProps {
  readonly height: SeamHeight;
  readonly seam: SeamName;
  readonly draft: Draft;
  readonly unaltered: Draft;
  readonly unit: Unit;
  readonly onSet: (height: SeamHeight) => void;
}

function HeightFields({ height, seam, draft, unaltered, unit, onSet }: HeightFieldsProps) {
  const levels = levelNames(draft);
  const shown =
    height.kind === 'level' && !levels.includes(height.level) ? [height.level, ...levels] : levels;
  const end = height.kind === 'end' ? height.end : null;
  const choiceOfEnd = (each: SeamEnd): { value: string; label: string }[] =>
    each === end || seamEnd(unaltered, seam, each) !== null ? [{ value: each, label: TEXTS.ends[each] }] : [];
  return (
    <>
      <ChoiceOf
        label={TEXTS.height}
        choices={[
          ...choiceOfEnd('top'),
          ...shown.map((level) => ({ value: level as string, label: LEVEL_WORDS[level] })),
          ...choiceOfEnd('hem'),
          { value: OWN, label: TEXTS.ownHeight },
        ]}
        value={end ?? (height.kind === 'level' ? height.level : OWN)}
        onChoose={(value) => {
          const level = shown.find((each) => each === value);
          const chosen = SEAM_ENDS.find((each) => each === value);
          if (level) onSet({ kind: 'level', level });
          else onSet(chosen ? { kind: 'end', end: chosen } : { kind: 'belowWaist', mm: 0 });
        }}
      />
      {height.kind === 'belowWaist' ? (
        <AmountField
          label={TEXTS.belowWaist}
          value={height.mm}
          unit={unit}
          most={MOST_FROM_WAIST_MM}
          onSet={(mm) => onSet({ kind: 'belowWaist', mm })}
        />
      ) : null}
    </>
  );
}
