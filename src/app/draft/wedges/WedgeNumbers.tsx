// What a wedge takes and where its axis stands, level by level; a dart has numbers only at the levels it crosses.

import type { CSSProperties } from 'react';
import {
  changeStyle,
  formatLength,
  LEVEL_WORDS,
  setIntake,
  setStation,
  setStationAt,
  straighten,
} from '../../../document';
import {
  type Block,
  type DraftedWedge,
  isDart,
  type LevelName,
  type Style,
  stationOf,
  type Wedge,
  wedgeSpan,
  xAt,
} from '../../../engine';
import { askedExtent, crosses, intakeNow } from '../../../table';
import { LengthField } from '../../components/LengthField';
import { useDraft, useOpen, useStore } from '../../store/storeContext';

interface WedgeNumbersProps {
  readonly wedge: Wedge;
  readonly drafted: DraftedWedge;
  readonly block: Block;
}

export function WedgeNumbers({ wedge, drafted, block }: WedgeNumbersProps) {
  const { client } = useOpen();
  const { levels } = useDraft();
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  const edit = (step: (style: Style) => Style): void => show((book) => changeStyle(book, step));
  const bent = Object.keys(wedge.stationAt).length > 0;
  const extent = askedExtent(wedge, levels);
  const setAxis = (name: LevelName, mm: number): void => {
    const station = stationOf(mm, block.bustLine, block.width.get(name) ?? 0);
    edit((before) =>
      name === 'waist' && !bent
        ? setStation(before, wedge.id, station)
        : setStationAt(before, wedge.id, name, station),
    );
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
            <th scope="row">Intake</th>
            {levels.map(({ name, y }) => (
              <td key={name}>
                {crosses(extent, y) ? (
                  <LengthField
                    compact={true}
                    signed={!isDart(wedge)}
                    span={wedgeSpan(wedge.kind, 'intake')}
                    label={`Intake at the ${LEVEL_WORDS[name]}`}
                    value={drafted.intake.get(name) ?? 0}
                    unit={client.unit}
                    onShow={(mm) =>
                      edit((before) => setIntake(before, wedge.id, name, mm ?? 0, intakeNow(drafted)))
                    }
                    onKeep={() => keep({ code: 'intakeSet', level: name })}
                    onDrop={drop}
                  />
                ) : (
                  <NotCrossed />
                )}
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">From centre</th>
            {levels.map(({ name, y }) => (
              <td key={name}>
                {drafted.onCentre ? (
                  <span className="fixed">{formatLength(0, client.unit)}</span>
                ) : !crosses(extent, y) ? (
                  <NotCrossed />
                ) : wedge.kind === 'closed' ? (
                  <span className="fixed">{formatLength(xAt(drafted.axis, y), client.unit)}</span>
                ) : (
                  <LengthField
                    compact={true}
                    label={`Axis from the centre line at the ${LEVEL_WORDS[name]}`}
                    value={xAt(drafted.axis, y)}
                    unit={client.unit}
                    onShow={(mm) => setAxis(name, mm ?? 0)}
                    onKeep={() => keep({ code: 'axisSet', level: name })}
                    onDrop={drop}
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
          Straighten the axis
        </button>
      ) : null}
    </>
  );
}

function NotCrossed() {
  return (
    <span className="fixed">
      <span aria-hidden="true">–</span>
      <span className="unseen">beyond its points</span>
    </span>
  );
}
