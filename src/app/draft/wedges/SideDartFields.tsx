// A bust dart that opens in the side seam: where it opens, how far its point ends short of the bust point, and how wide it came out.

import { formatLength, setDartPoint, setSideBelow, WEDGE_CARDS, wedgePlaceOf } from '../../../document';
import { distance, USUAL_SIDE_BELOW, type Wedge, wedgeSpan } from '../../../engine';
import { LengthField } from '../../components/fields/LengthField';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import { useDraft, useKeptStyle, useOpen } from '../../store/storeContext';

const TEXTS = WEDGE_CARDS.upperEnd.side;

/** A dart that ends farther from the bust point no longer points at it. mm */
const SHORT_SPAN = [0, 100] as const;

export function SideDartFields({ wedge }: { wedge: Wedge }) {
  const { client } = useOpen();
  const { turnedDart, issues } = useDraft();
  const kept = useKeptStyle();
  const edit = useStyleNumber();
  const place = wedgePlaceOf(wedge.id, kept);
  const isRefused = issues.some(
    ({ code, at }) => (code === 'sideDartOffSeam' || code === 'sideDartMeets') && at.wedge === wedge.id,
  );
  const short = wedge.lower?.from === 'bust' ? Math.abs(wedge.lower.below) : null;
  return (
    <div className="side-dart">
      <div className="side-dart-length">
        <LengthField
          compact={true}
          label={TEXTS.belowFull}
          span={wedgeSpan(wedge.kind, 'endsAt.below')}
          value={wedge.endsAt?.below ?? turnedDart?.below ?? USUAL_SIDE_BELOW}
          unit={client.unit}
          refused={isRefused}
          {...edit({ code: 'upperEndSet', wedge: place }, (style, mm) => setSideBelow(style, wedge.id, mm))}
        />
        <span className="hint">{TEXTS.below}</span>
      </div>
      <div className="side-dart-length">
        <LengthField
          compact={true}
          label={TEXTS.shortFull}
          span={SHORT_SPAN}
          value={short}
          unit={client.unit}
          {...edit({ code: 'dartPointSet', wedge: place, end: 'lower' }, (style, mm) =>
            setDartPoint(style, wedge.id, 'lower', { from: 'bust', below: -mm }),
          )}
        />
        <span className="hint">{TEXTS.short}</span>
      </div>
      {turnedDart?.wedge === wedge.id ? (
        <p className="hint">
          {TEXTS.opens({
            length: formatLength(distance(turnedDart.lower, turnedDart.upper), client.unit, {
              withUnit: true,
            }),
            degrees: Math.round((1800 * Math.abs(turnedDart.turnRad)) / Math.PI) / 10,
          })}{' '}
          {TEXTS.width}
        </p>
      ) : null}
    </div>
  );
}
