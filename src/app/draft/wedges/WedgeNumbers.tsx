// What a wedge takes and where its axis stands, level by level; a dart has numbers only at the levels it crosses.

import {
  changeStyle,
  formatLength,
  keepAxis,
  LEVEL_TITLES,
  setIntake,
  setStation,
  setStationAt,
  straighten,
  WEDGE_CARDS,
} from '../../../document';
import {
  type Block,
  type DraftedWedge,
  inches,
  isDart,
  type LevelName,
  reaches,
  type Style,
  stationOf,
  type Wedge,
  wedgeSpan,
  xAt,
} from '../../../engine';
import { askedExtent, intakeNow } from '../../../table';
import { LengthField } from '../../components/fields/LengthField';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import { useDraft, useOpen, useStore } from '../../store/storeContext';

const TEXTS = WEDGE_CARDS.numbers;

interface WedgeNumbersProps {
  readonly wedge: Wedge;
  readonly drafted: DraftedWedge;
  readonly block: Block;
  /** The level in hand, whose row is marked. */
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

export function WedgeNumbers({ wedge, drafted, block, level, onLevel }: WedgeNumbersProps) {
  const { client } = useOpen();
  const { levels } = useDraft();
  const edit = useStyleNumber();
  const bent = Object.keys(wedge.stationAt).length > 0;
  const extent = askedExtent(wedge, levels);
  const setAxis = (before: Style, name: LevelName, mm: number): Style => {
    const by = mm - xAt(drafted.axis, levels.find((level) => level.name === name)?.y ?? 0);
    const station = stationOf(mm, block.bustLine, block.width.get(name) ?? 0);
    if (by === 0) return before;
    const isWhole = name === 'waist' && !bent;
    const there = isWhole
      ? setStation(before, wedge.id, station)
      : setStationAt(before, wedge.id, name, station);
    return keepAxis(there, { wedge: drafted, block, levels }, by, isWhole ? null : name);
  };
  const change = useStore((state) => state.change);
  return (
    <>
      <table>
        <thead>
          <tr>
            <th scope="col">{TEXTS.lengths[client.unit]}</th>
            <th scope="col">{TEXTS.intake}</th>
            <th scope="col">{TEXTS.fromCentre}</th>
          </tr>
        </thead>
        <tbody>
          {levels.map(({ name, y }) => (
            <tr key={name} className={name === level ? 'in-hand' : undefined} onFocus={() => onLevel(name)}>
              <th scope="row">{LEVEL_TITLES[name]}</th>
              <td>
                {reaches(extent, y) ? (
                  <IntakeField wedge={wedge} drafted={drafted} level={name} />
                ) : (
                  <NotCrossed />
                )}
              </td>
              <td>
                {drafted.onCentre ? (
                  <span className="fixed">{formatLength(0, client.unit)}</span>
                ) : !reaches(extent, y) ? (
                  <NotCrossed />
                ) : wedge.kind === 'closed' ? (
                  <span className="fixed">{formatLength(xAt(drafted.axis, y), client.unit)}</span>
                ) : (
                  <LengthField
                    compact={true}
                    label={TEXTS.axisAt({ level: name })}
                    value={xAt(drafted.axis, y)}
                    unit={client.unit}
                    {...edit({ code: 'axisSet', level: name }, (before, mm) => setAxis(before, name, mm))}
                  />
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {bent ? (
        <button
          type="button"
          className="quiet"
          onClick={() =>
            change({ code: 'axisStraightened' }, (book) =>
              changeStyle(book, (style) => straighten(style, wedge.id)),
            )
          }
        >
          {TEXTS.straighten}
        </button>
      ) : null}
    </>
  );
}

/** So much one press of − or + takes less or more: a line of the tape. mm */
const PRESS = { in: inches(1 / 16), cm: 1 } as const;

interface IntakeFieldProps {
  readonly wedge: Wedge;
  readonly drafted: DraftedWedge;
  readonly level: LevelName;
}

/** What the wedge takes at one level; under a finger with a press for less and one for more. */
function IntakeField({ wedge, drafted, level }: IntakeFieldProps) {
  const { client } = useOpen();
  const edit = useStyleNumber();
  const change = useStore((state) => state.change);
  const value = drafted.intake.get(level) ?? 0;
  const span = wedgeSpan(wedge.kind, 'intake');
  const set = (before: Style, mm: number): Style =>
    setIntake(before, wedge.id, level, mm, intakeNow(drafted));
  const press = (by: number): void => {
    const line = PRESS[client.unit];
    const next = Math.min(span[1], Math.max(span[0], (Math.round(value / line) + by) * line));
    change({ code: 'intakeSet', level }, (book) => changeStyle(book, (style) => set(style, next)));
  };
  return (
    <span className="stepped">
      <button type="button" aria-label={TEXTS.less({ level })} onClick={() => press(-1)}>
        −
      </button>
      <LengthField
        compact={true}
        signed={!isDart(wedge)}
        span={span}
        label={TEXTS.intakeAt({ level })}
        value={value}
        unit={client.unit}
        {...edit({ code: 'intakeSet', level }, set)}
      />
      <button type="button" aria-label={TEXTS.more({ level })} onClick={() => press(1)}>
        +
      </button>
    </span>
  );
}

function NotCrossed() {
  return (
    <span className="fixed">
      <span aria-hidden="true">–</span>
      <span className="unseen">{TEXTS.notCrossed}</span>
    </span>
  );
}
