// How a wedge ends: through both edges, open at one of them, or closed; and where the points of a dart lie.

import {
  changeStyle,
  dartSpace,
  LEVEL_WORDS,
  pointX,
  setDartPoint,
  setEnds,
  slantDart,
  WEDGE_CARDS,
  WEDGE_KIND_WORDS,
  WEDGE_KINDS,
  wedgePlaceOf,
} from '../../../document';
import {
  DART_LEVELS,
  type DartEnd,
  type DartPoint,
  type Draft,
  type DraftedWedge,
  isDart,
  type Style,
  type Wedge,
  wedgeSpan,
} from '../../../engine';
import { askedExtent, isSideDart } from '../../../table';
import { LengthField } from '../../components/fields/LengthField';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import { useSide } from '../../store/sideContext';
import { draftOfSide, useDraft, useKeptStyle, useOpen, useStore } from '../../store/storeContext';

const TEXTS = WEDGE_CARDS.ends;

/** Each way to end, drawn between a top edge and a hem. */
const ENDS: Readonly<Record<Wedge['kind'], string>> = {
  through: 'M8 2Q12 6 4 14Q8 22 9 26M12 2Q8 6 16 14Q12 22 11 26',
  openAtHem: 'M10 4Q8 16 3 26M10 4Q12 16 17 26',
  openAtTop: 'M3 2Q8 12 10 24M17 2Q12 12 10 24',
  closed: 'M10 4Q8 10 5 14Q8 18 10 24Q12 18 15 14Q12 10 10 4Z',
};

interface DartFieldsProps {
  readonly wedge: Wedge;
  readonly drafted: DraftedWedge;
}

export function DartFields({ wedge, drafted }: DartFieldsProps) {
  const draft = useDraft();
  const kept = useKeptStyle();
  const change = useStore((state) => state.change);
  const { savedDraft } = useOpen();
  const isFromSide = isSideDart(wedge, savedDraft.style);
  const place = wedgePlaceOf(wedge.id, kept);
  if (drafted.onCentre) return <p className="hint dart-fields">{TEXTS.onCentre}</p>;
  const told = isFromSide ? [] : shutSooner(wedge, drafted, draft);
  return (
    <div className="dart-fields">
      <fieldset className="sizing ends">
        <legend className="unseen">{TEXTS.legend}</legend>
        {WEDGE_KINDS.map((each) => (
          <label key={each}>
            <input
              type="radio"
              name="ends"
              checked={wedge.kind === each}
              onChange={() => {
                const space = dartSpace(draft, wedge.block, wedge.id);
                if (!space) return;
                change({ code: 'wedgeEndsSet', wedge: place, ends: each }, (book) =>
                  changeStyle(book, (style) => setEnds(style, wedge.id, each, space)),
                );
              }}
            />
            <span>
              <svg viewBox="0 0 20 28" aria-hidden="true">
                <path d={ENDS[each]} />
              </svg>
              {WEDGE_KIND_WORDS[each]}
            </span>
          </label>
        ))}
      </fieldset>
      {(['upper', 'lower'] as const).map((end) => {
        const point = wedge[end];
        // The point of a dart from the side seam is told from the bust point, beside where it opens.
        if (!point || isFromSide) return null;
        return (
          <div key={end} className="dart-point">
            <PointFields wedge={wedge} end={end} point={point} place={place} />
            {wedge.kind === 'closed' ? <PointAcross drafted={drafted} end={end} place={place} /> : null}
          </div>
        );
      })}
      <p className="hint" aria-live="polite">
        {told.join(' ')}
      </p>
    </div>
  );
}

interface PointFieldsProps {
  readonly wedge: Wedge;
  readonly end: DartEnd;
  readonly point: DartPoint;
  readonly place: ReturnType<typeof wedgePlaceOf>;
}

/** One point: so far below a level. */
function PointFields({ wedge, end, point, place }: PointFieldsProps) {
  const { client } = useOpen();
  const { levels } = useDraft();
  const edit = useStyleNumber();
  const change = useStore((state) => state.change);
  const height = (from: DartPoint['from']): number => levels.find((level) => level.name === from)?.y ?? 0;
  return (
    <>
      <span className="dart-point-name">{TEXTS[end].point}</span>
      <LengthField
        compact={true}
        signed={true}
        span={wedgeSpan(wedge.kind, `${end}.below`)}
        label={TEXTS[end].below({ level: point.from })}
        value={point.below}
        unit={client.unit}
        {...edit({ code: 'dartPointSet', wedge: place, end }, (style, below) =>
          setDartPoint(style, wedge.id, end, { ...point, below }),
        )}
      />
      <label>
        <span className="hint">{TEXTS.belowThe}</span>{' '}
        <select
          aria-label={TEXTS[end].from}
          value={point.from}
          onChange={(event) => {
            const from = DART_LEVELS.find((each) => each === event.target.value);
            if (!from) return;
            // The point stays where it lies on this body; only what it is measured from changes.
            const below = point.below + height(point.from) - height(from);
            change({ code: 'dartPointSet', wedge: place, end }, (book) =>
              changeStyle(book, (style) => setDartPoint(style, wedge.id, end, { from, below })),
            );
          }}
        >
          {DART_LEVELS.map((level) => (
            <option key={level} value={level}>
              {LEVEL_WORDS[level]}
            </option>
          ))}
        </select>
      </label>
    </>
  );
}

interface PointAcrossProps {
  readonly drafted: DraftedWedge;
  readonly end: DartEnd;
  readonly place: ReturnType<typeof wedgePlaceOf>;
}

/** How far a point of a closed dart stands from the centre line: its axis is straight, so both points slant it. */
function PointAcross({ drafted, end, place }: PointAcrossProps) {
  const { client, savedDraft } = useOpen();
  const draft = useDraft();
  const edit = useStyleNumber();
  const side = useSide();
  const redraft = (style: Style): Draft => draftOfSide(client, { ...savedDraft, style }, side);
  return (
    <div className="dart-across">
      <LengthField
        compact={true}
        label={TEXTS[end].across}
        span={ACROSS_SPAN}
        value={pointX(draft, drafted.id, end)}
        unit={client.unit}
        {...edit({ code: 'dartPointSet', wedge: place, end }, (style, mm) =>
          slantDart(style, drafted.id, end, mm, redraft),
        )}
      />
      <span className="hint">{TEXTS.fromCentreLine}</span>
    </div>
  );
}

/** Where a dart's point may stand on a half block, mm. */
const ACROSS_SPAN = [15, 600] as const;

/** Where the draft ends a dart otherwise than it was asked to, and why. */
function shutSooner(wedge: Wedge, drafted: DraftedWedge, draft: Draft): string[] {
  const { levels, pieces } = draft;
  if (!isDart(wedge)) return [];
  if ([...drafted.intake.values()].every((taken) => taken === 0)) return [TEXTS.takesNothing];
  const asked = askedExtent(wedge, levels);
  const said = (['upper', 'lower'] as const).flatMap((end) => {
    const at = drafted.extent[end];
    if (at === null || (asked[end] !== null && Math.abs(at - asked[end]) < 1)) return [];
    const level = levels.find(({ y }) => Math.abs(y - at) < 1);
    return level ? [TEXTS.endsAt({ level: level.name })] : [];
  });
  const sewn = pieces.flatMap(({ darts }) => darts).find((lines) => lines.wedge === wedge.id);
  if (sewn?.open && drafted.extent.upper !== null && drafted.extent.lower !== null)
    said.push(TEXTS.beyondEdge);
  return said;
}
