// Fullness of the cup: where below the bust point a wedge's shaping begins, and what it takes there.

import { changeStyle, setCup } from '../../../document';
import { USUAL_CUP, type Wedge, wedgeSpan } from '../../../engine';
import { Checkbox } from '../../components/Checkbox';
import { LengthField } from '../../components/LengthField';
import { useOpen, useStore } from '../../store/storeContext';

export function CupFields({ wedge }: { wedge: Wedge }) {
  const { client } = useOpen();
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
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
        onShow={(mm) =>
          show((book) => changeStyle(book, (style) => setCup(style, wedge.id, { ...cup, [part]: mm ?? 0 })))
        }
        onKeep={() => keep({ code: 'cupSet' })}
        onDrop={drop}
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
        Fuller cup
      </Checkbox>
      {cup ? (
        <>
          <span className="hint">takes</span>
          {field('Intake of the fuller cup', 'intake')}
          <span className="hint">at</span>
          {field('Fuller cup below the bust line', 'below')}
          <span className="hint">below the bust line</span>
        </>
      ) : null}
    </div>
  );
}
