// For a projector over the cutting table: how heavy its lines, how wide its picture.

import type { Unit } from '../../../document';
import { formatLength } from '../../../document';
import { gridSideMm, isProjectorChoice, LEAST_LINE_MM, MOST_LINE_MM } from '../../../paper';
import { LengthField } from '../../components/LengthField';
import { choose, useCutChoices } from '../choices/cutChoices';
import { NapChoice } from '../choices/NapChoice';

export function ProjectorForm({ unit }: { unit: Unit }) {
  const { projector } = useCutChoices();
  return (
    <>
      <label className="choice">
        <span>Line weight</span>
        <span className="range">
          <input
            type="range"
            min={LEAST_LINE_MM}
            max={MOST_LINE_MM}
            step={0.1}
            value={projector.lineMm}
            onChange={(event) => choose({ projector: { ...projector, lineMm: Number(event.target.value) } })}
          />
          <output>{projector.lineMm.toFixed(1)} mm</output>
        </span>
      </label>
      <LengthField
        label="Width of the picture"
        value={projector.widthMm}
        unit={unit}
        onShow={(mm) => choose({ projector: { ...projector, widthMm: mm ?? 0 } })}
        onKeep={() => undefined}
        onDrop={() => undefined}
      />
      <NapChoice />
      {isProjectorChoice(projector) ? null : (
        <p className="said">The picture must be from 30 cm (12 in) to 508 cm (200 in) wide.</p>
      )}
      <p className="count">
        Light lines on a dark ground. Move the projector until the squares of the grid measure{' '}
        <b>{formatLength(gridSideMm(unit), unit, { withUnit: true })}</b> on the table, across and down.
      </p>
    </>
  );
}
