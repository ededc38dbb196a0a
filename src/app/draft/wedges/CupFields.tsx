// Fullness of the cup: where below the bust point a wedge's shaping begins, and what it takes there.

import { changeStyle, setCup, WEDGE_CARDS } from '../../../document';
import { USUAL_CUP, type Wedge, wedgeSpan } from '../../../engine';
import { Checkbox } from '../../components/fields/Checkbox';
import { LengthField } from '../../components/fields/LengthField';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import { useOpen, useStore } from '../../store/storeContext';

const TEXTS = WEDGE_CARDS.cup;

export function CupFields({ wedge }: { wedge: Wedge }) {
  const { client } = useOpen();
  const edit = useStyleNumber();
  const change = useStore((state) => state.change);
  const { cup } = wedge;
  const field = (label: string, part: 'below' | 'intake') =>
    cup ? (
      <LengthField
        compact={true}
        label={label}
        span={wedgeSpan(wedge.kind, `cup.${part}`)}
        value={cup[part]}
        unit={client.unit}
        {...edit({ code: 'cupSet' }, (style, mm) => setCup(style, wedge.id, { ...cup, [part]: mm }))}
      />
    ) : null;
  return (
    <div className="cup-fields">
      <Checkbox
        small={true}
        on={cup !== undefined}
        onSet={(full) =>
          change({ code: 'cupSet' }, (book) =>
            changeStyle(book, (style) => setCup(style, wedge.id, full ? USUAL_CUP : null)),
          )
        }
      >
        {TEXTS.title}
      </Checkbox>
      {cup ? (
        <>
          <span className="hint">{TEXTS.takes}</span>
          {field(TEXTS.intake, 'intake')}
          <span className="hint">{TEXTS.at}</span>
          {field(TEXTS.below, 'below')}
          <span className="hint">{TEXTS.belowBustLine}</span>
        </>
      ) : null}
    </div>
  );
}
