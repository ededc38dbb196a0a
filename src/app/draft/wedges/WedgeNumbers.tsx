// What a wedge takes and where its axis stands, level by level; a dart has numbers only at the levels it crosses.

import type { CSSProperties } from 'react';
import {
  changeStyle,
  formatLength,
  keepAxis,
  LEVEL_WORDS,
  setIntake,
  setStation,
  setStationAt,
  straighten,
  WEDGE_CARDS,
} from '../../../document';
import {
  type Block,
  type DraftedWedge,
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
}

export function WedgeNumbers({ wedge, drafted, block }: WedgeNumbersProps) {
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
      <table style={{ '--rows': levels.length + 1 } as CSSProperties}>
        <thead>
          <tr>
            <td />
            {levels.map(({ name }) => (
              <th key={name} scope="col" className={`level-${name}`}>
                {LEVEL_WORDS[name]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{TEXTS.intake}</th>
            {levels.map(({ name, y }) => (
              <td key={name}>
                {reaches(extent, y) ? (
                  <LengthField
                    compact={true}
                    signed={!isDart(wedge)}
                    span={wedgeSpan(wedge.kind, 'intake')}
                    label={TEXTS.intakeAt({ level: name })}
                    value={drafted.intake.get(name) ?? 0}
                    unit={client.unit}
                    {...edit({ code: 'intakeSet', level: name }, (before, mm) =>
                      setIntake(before, wedge.id, name, mm, intakeNow(drafted)),
                    )}
                  />
                ) : (
                  <NotCrossed />
                )}
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">{TEXTS.fromCentre}</th>
            {levels.map(({ name, y }) => (
              <td key={name}>
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
            ))}
          </tr>
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

function NotCrossed() {
  return (
    <span className="fixed">
      <span aria-hidden="true">–</span>
      <span className="unseen">{TEXTS.notCrossed}</span>
    </span>
  );
}
