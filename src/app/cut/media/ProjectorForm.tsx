// The form for a projector over the cutting table: the weight of its lines and the width of its picture.

import { CUT, formatLength, type Unit } from '../../../document';
import { gridSideMm, isProjectorChoice, LEAST_LINE_MM, MOST_LINE_MM } from '../../../paper';
import { LengthField } from '../../components/fields/LengthField';
import { choose, useCutChoices } from '../choices/cutChoices';
import { NapChoice } from '../choices/NapChoice';

export function ProjectorForm({ unit }: { unit: Unit }) {
  const { projector } = useCutChoices();
  return (
    <>
      <label className="choice">
        <span>{CUT.projector.lineWeight}</span>
        <span className="range">
          <input
            type="range"
            min={LEAST_LINE_MM}
            max={MOST_LINE_MM}
            step={0.1}
            value={projector.lineMm}
            onChange={(event) => choose({ projector: { ...projector, lineMm: Number(event.target.value) } })}
          />
          <output>{CUT.projector.lineWeightWritten({ mm: projector.lineMm.toFixed(1) })}</output>
        </span>
      </label>
      <LengthField
        label={CUT.projector.width}
        value={projector.widthMm}
        unit={unit}
        onShow={(mm) => choose({ projector: { ...projector, widthMm: mm ?? 0 } })}
        onKeep={() => undefined}
        onDrop={() => undefined}
      />
      <NapChoice />
      {isProjectorChoice(projector) ? null : <p className="said">{CUT.projector.widthOutside}</p>}
      <p className="count">
        {CUT.projector.moveUntil}
        <b>{formatLength(gridSideMm(unit), unit, { withUnit: true })}</b>
        {CUT.projector.onTable}
      </p>
    </>
  );
}
