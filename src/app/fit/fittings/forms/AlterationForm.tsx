// Makes or changes one alteration by typing: what is altered, where and by how much. It is shown in passing as it is typed.

import { useEffect, useState } from 'react';
import { type Book, FITTINGS, type Unit } from '../../../../document';
import type { Alteration, AlteredSide, Draft, SeamName, Style } from '../../../../engine';
import { useStore } from '../../../store/storeContext';
import { ChoiceOf } from './ChoiceOf';
import { Consequence } from './Consequence';
import { FittingForm } from './FittingForm';
import { BoundFields, EdgeChoice, PlacedFields, PointFields } from './PlacedFields';
import { SeamFields } from './SeamFields';
import { wantingOf } from './startAlteration';

const TEXTS = FITTINGS.form;
const SIDES: readonly AlteredSide[] = ['both', 'left', 'right'];

export interface AlterationFormProps {
  readonly start: Alteration;
  /** It stands in the list already. */
  readonly isKept: boolean;
  /** Where it stands, or will stand, in the list of fittings. */
  readonly place: { readonly fitting: number; readonly alteration: number };
  readonly draft: Draft;
  /** The draft without its alterations. */
  readonly unaltered: Draft;
  readonly style: Style;
  readonly unit: Unit;
  /** The book with the alteration in it. */
  readonly withIt: (book: Book, alteration: Alteration) => Book;
  readonly onMake: (alteration: Alteration) => void;
  /** The seam that it alters; null where it alters none, and when the form is left. */
  readonly onSeam: (seam: SeamName | null, side: AlteredSide) => void;
  readonly onCancel: () => void;
}

export function AlterationForm(props: AlterationFormProps) {
  const { start, isKept, place, draft, unaltered, style, unit, withIt, onMake, onSeam, onCancel } = props;
  const [alteration, setAlteration] = useState(start);
  const [isAsked, setAsked] = useState(false);
  const show = useStore((state) => state.show);
  const drop = useStore((state) => state.drop);
  const keep = useStore((state) => state.keep);
  const wanting = wantingOf(alteration, draft);
  // What is begun with amounts, as by what was seen, is shown at once; a form that is left shows nothing any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: on the form's opening and closing only
  useEffect(() => {
    if (!wantingOf(start, draft)) show((book) => withIt(book, start));
    return drop;
  }, []);
  const { kind, side } = alteration;
  // Going on to another step keeps what was typed, as closing the page does.
  useEffect(() => {
    const leave = (): void => {
      keep({ code: isKept ? 'alterationSet' : 'alterationAdded', kind });
      onCancel();
    };
    // The step itself hears of it after this, and takes the form away.
    window.addEventListener('hashchange', leave, { capture: true });
    return () => window.removeEventListener('hashchange', leave, { capture: true });
  }, [kind, isKept, keep, onCancel]);
  const seam = alteration.kind === 'seam' ? alteration.seam : null;
  useEffect(() => {
    onSeam(seam, side);
    return () => onSeam(null, 'both');
  }, [seam, side, onSeam]);
  const set = (next: Alteration): void => {
    setAlteration(next);
    if (wantingOf(next, draft)) drop();
    else show((book) => withIt(book, next));
  };
  const fields = { draft, style, unit };
  return (
    <FittingForm
      title={isKept ? TEXTS.changeTitle : TEXTS.newTitle}
      wanting={isAsked ? wanting : null}
      make={isKept ? TEXTS.keep : TEXTS.make}
      onMake={() => {
        setAsked(true);
        if (!wanting) onMake(alteration);
      }}
      onCancel={onCancel}
    >
      {alteration.kind === 'seam' ? (
        <SeamFields {...fields} unaltered={unaltered} alteration={alteration} onSet={set} />
      ) : null}
      {alteration.kind === 'length' ? <BoundFields {...fields} alteration={alteration} onSet={set} /> : null}
      {alteration.kind === 'edge' ? <EdgeChoice {...fields} alteration={alteration} onSet={set} /> : null}
      {alteration.kind === 'length' || alteration.kind === 'edge' ? (
        <PlacedFields
          {...fields}
          kind={alteration.kind}
          at={alteration.at}
          onSet={(at) => set({ ...alteration, at })}
        />
      ) : null}
      {alteration.kind === 'bustPoint' ? (
        <PointFields unit={unit} alteration={alteration} onSet={set} />
      ) : null}
      <ChoiceOf
        label={TEXTS.side}
        choices={SIDES.map((side) => ({ value: side, label: TEXTS.sides[side] }))}
        value={alteration.side}
        onChoose={(side) => set({ ...alteration, side })}
      />
      <Consequence kept={draft} place={place} unit={unit} />
    </FittingForm>
  );
}
