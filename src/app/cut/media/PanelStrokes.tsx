// The lines and texts of a panel, as they are printed.

import { memo } from 'react';
import { MM_PER_POINT, type PlacedPanel, type Stroke } from '../../../paper';
import { pathThrough } from '../../../table';

const STROKES: readonly Stroke['kind'][] = ['cut', 'sew', 'fold', 'grain', 'mark', 'bone', 'level', 'leader'];

/** One panel: one path for each kind of line, and its texts. Coordinates in mm. */
export const PanelStrokes = memo(function PanelStrokes({ panel }: { panel: PlacedPanel }) {
  return (
    <g className="printed-panel" data-piece={panel.piece.id}>
      {STROKES.map((kind) => (
        <path
          key={kind}
          className={`stroke-${kind}`}
          d={panel.lines
            .filter((line) => line.kind === kind)
            .map((line) => pathThrough(line.points))
            .join('')}
        />
      ))}
      {panel.texts.map((text) => (
        <text
          key={`${text.text} ${text.start.x} ${text.start.y}`}
          className="panel-text"
          fontSize={text.sizePt * MM_PER_POINT}
          fontWeight={text.bold ? 700 : 400}
          transform={`translate(${text.start.x} ${text.start.y}) rotate(${(text.turnRad * 180) / Math.PI})`}
        >
          {text.text}
        </text>
      ))}
    </g>
  );
});
