// Where a wedge ends on a shouldered block: in neckline, shoulder or armhole, and how far along it; a bust dart in the side seam too.

import {
  type ChangeOf,
  changeStyle,
  setUpperEdge,
  setUpperPart,
  WEDGE_CARDS,
  wedgePlaceOf,
} from '../../../document';
import { isDart, type Opening, type Wedge } from '../../../engine';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import { useKeptStyle, useStore } from '../../store/storeContext';
import { SideDartFields } from './SideDartFields';

const TEXTS = WEDGE_CARDS.upperEnd;

/** First what the draft does by itself, then from the centre towards the side. */
const CHOICES: readonly (Opening | null)[] = [null, 'neckline', 'shoulder', 'armhole'];

const choicesOf = (wedge: Wedge): readonly (Opening | null)[] =>
  wedge.endsAt?.edge === 'side' || (wedge.block === 'front' && isDart(wedge))
    ? [...CHOICES, 'side']
    : CHOICES;

export function UpperEndFields({ wedge }: { wedge: Wedge }) {
  const change = useStore((state) => state.change);
  const kept = useKeptStyle();
  const edit = useStyleNumber();
  const place = wedgePlaceOf(wedge.id, kept);
  const set: ChangeOf<'upperEndSet'> = { code: 'upperEndSet', wedge: place };
  const { endsAt } = wedge;
  const { onShow, onKeep } = edit(set, (style, part) => setUpperPart(style, wedge.id, part));
  return (
    <div className="upper-end">
      <fieldset className="sizing">
        <legend>{isDart(wedge) ? TEXTS.legendOfDart : TEXTS.legend}</legend>
        {choicesOf(wedge).map((edge) => (
          <label key={edge ?? 'usual'}>
            <input
              type="radio"
              name="upper-edge"
              checked={(endsAt?.edge ?? null) === edge}
              onChange={() =>
                change(set, (book) => changeStyle(book, (style) => setUpperEdge(style, wedge.id, edge)))
              }
            />
            <span>{TEXTS.edges[edge ?? 'usual']}</span>
          </label>
        ))}
      </fieldset>
      {endsAt?.edge === 'side' ? (
        <SideDartFields wedge={wedge} />
      ) : endsAt ? (
        <label className="upper-part">
          {TEXTS.along}
          <input
            type="range"
            min={0}
            max={100}
            step={1}
            value={Math.round(100 * endsAt.part)}
            aria-valuetext={TEXTS.part({ percent: Math.round(100 * endsAt.part) })}
            onChange={({ target }) => onShow(Number(target.value) / 100)}
            onPointerUp={onKeep}
            onKeyUp={onKeep}
            onBlur={onKeep}
          />
        </label>
      ) : null}
    </div>
  );
}
