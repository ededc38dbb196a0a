// The panels as they will be printed, with the sheets over them.

import { memo } from 'react';
import { type InkLine, type Layout, sheetName, windowOf } from '../../paper';
import { pathThrough } from '../../table';

/** Points of print per mm, for texts: 1 pt = 1/72 in. */
const MM_PER_POINT = 25.4 / 72;

const STROKES: readonly InkLine['stroke'][] = ['cut', 'sew', 'fold', 'grain', 'mark', 'leader'];

export const PlanDrawing = memo(function PlanDrawing({ layout }: { layout: Layout }) {
  const { grid, panels, sheets } = layout;
  const windows = sheets.map((place) => ({ place, box: windowOf(grid, place) }));
  const right = Math.max(...windows.map(({ box }) => box.right));
  const foot = Math.max(...windows.map(({ box }) => box.bottom));
  return (
    <svg
      className="plan-drawing"
      role="img"
      aria-label={`${panels.length} panels on ${sheets.length} sheets`}
      viewBox={`-6 -6 ${right + 12} ${foot + 12}`}
    >
      {windows.map(({ place, box }) => (
        <g key={sheetName(place)} className="sheet">
          <rect x={box.left} y={box.top} width={box.right - box.left} height={box.bottom - box.top} />
          <text x={box.left + 14} y={box.top + 24}>
            {sheetName(place)}
          </text>
        </g>
      ))}
      {panels.map((panel) => (
        <g key={panel.piece.id} className="printed-panel" data-piece={panel.piece.id}>
          {STROKES.map((stroke) => (
            <path
              key={stroke}
              className={`ink-${stroke}`}
              d={panel.lines
                .filter((line) => line.stroke === stroke)
                .map((line) => pathThrough(line.points))
                .join('')}
            />
          ))}
          {panel.texts.map((text) => (
            <text
              key={`${text.text} ${text.start.x} ${text.start.y}`}
              className="ink-text"
              fontSize={text.sizePt * MM_PER_POINT}
              fontWeight={text.bold ? 700 : 400}
              transform={`translate(${text.start.x} ${text.start.y}) rotate(${(text.turnRad * 180) / Math.PI})`}
            >
              {text.text}
            </text>
          ))}
        </g>
      ))}
    </svg>
  );
});
