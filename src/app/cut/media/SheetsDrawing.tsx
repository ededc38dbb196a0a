// The drawing of the panels as they are printed, with the sheets over them. A press or a key leaves a sheet out of the print or
// takes it in again.

import { type KeyboardEvent, useRef, useState } from 'react';
import { CUT } from '../../../document';
import { type Layout, ownPartOf, sheetName, windowOf } from '../../../paper';
import { PanelStrokes } from './PanelStrokes';
import { usePxPerMm } from './usePxPerMm';

interface SheetsDrawingProps {
  readonly layout: Layout;
  /** Names of the sheets that are not printed. */
  readonly leftOut: readonly string[];
  readonly onToggle: (sheet: string) => void;
}

export function SheetsDrawing({ layout, leftOut, onToggle }: SheetsDrawingProps) {
  const { grid, panels, sheets } = layout;
  const drawing = useRef<SVGSVGElement>(null);
  // Tab reaches one sheet; the arrow keys go on to the others.
  const [current, setCurrent] = useState('');
  const windows = sheets.map((place) => ({
    place,
    name: sheetName(place),
    box: windowOf(grid, place),
    own: ownPartOf(grid, place),
  }));
  const right = Math.max(...windows.map(({ box }) => box.right));
  const bottom = Math.max(...windows.map(({ box }) => box.bottom));
  const pxPerMm = usePxPerMm(drawing, right + 12, bottom + 12);
  const tabStop = windows.find(({ name }) => name === current)?.name ?? windows[0]?.name;

  const moveFocus = (from: number, event: KeyboardEvent): void => {
    const next = NEXT[event.key]?.(sheets, from);
    if (next === undefined) return;
    event.preventDefault();
    const name = sheets[next] && sheetName(sheets[next]);
    if (!name) return;
    setCurrent(name);
    drawing.current?.querySelector<SVGGElement>(`[data-sheet="${name}"]`)?.focus();
  };
  return (
    <svg
      ref={drawing}
      className="plan-drawing"
      role="group"
      aria-label={CUT.plan.panelsOnSheets({ panels: panels.length, sheets: sheets.length })}
      viewBox={`-6 -6 ${right + 12} ${bottom + 12}`}
    >
      {windows.map(({ name, box }) => (
        <rect
          key={name}
          className="window"
          x={box.left}
          y={box.top}
          width={box.right - box.left}
          height={box.bottom - box.top}
        />
      ))}
      {/* A screen reader finds the texts of the panels in the lists beside the drawing; read here, they would hide the sheets. */}
      <svg aria-hidden="true" overflow="visible">
        {panels.map((panel) => (
          <PanelStrokes key={panel.piece.id} panel={panel} pxPerMm={pxPerMm} />
        ))}
      </svg>
      {windows.map(({ name, own }, i) => (
        <g
          key={name}
          className={leftOut.includes(name) ? 'sheet left-out' : 'sheet'}
          data-sheet={name}
          role="checkbox"
          aria-checked={!leftOut.includes(name)}
          aria-label={CUT.plan.sheet({ name })}
          tabIndex={name === tabStop ? 0 : -1}
          onClick={() => {
            setCurrent(name);
            onToggle(name);
          }}
          onKeyDown={(event) => {
            if (event.key === ' ' || event.key === 'Enter') {
              event.preventDefault();
              onToggle(name);
            } else moveFocus(i, event);
          }}
        >
          <rect x={own.left} y={own.top} width={own.right - own.left} height={own.bottom - own.top} />
          <text x={own.left + 8} y={own.top + 17}>
            {name}
          </text>
          {leftOut.includes(name) ? (
            <path
              className="strike"
              d={`M${own.left} ${own.top}L${own.right} ${own.bottom}M${own.right} ${own.top}L${own.left} ${own.bottom}`}
            />
          ) : null}
        </g>
      ))}
    </svg>
  );
}

type Places = Layout['sheets'];

/** The index of the sheet a key leads to from the one at an index. */
const NEXT: Readonly<Record<string, (sheets: Places, from: number) => number>> = {
  ArrowRight: (sheets, from) => Math.min(sheets.length - 1, from + 1),
  ArrowLeft: (_, from) => Math.max(0, from - 1),
  ArrowDown: (sheets, from) => nextRow(sheets, from, 1),
  ArrowUp: (sheets, from) => nextRow(sheets, from, -1),
  Home: () => 0,
  End: (sheets) => sheets.length - 1,
};

/** The index of the sheet nearest to the same column in the next row that has any; `from` where there is none. */
function nextRow(sheets: Places, from: number, direction: 1 | -1): number {
  const here = sheets[from];
  if (!here) return from;
  const beyond = sheets.filter(({ row }) => (row - here.row) * direction > 0);
  const row = Math.min(...beyond.map((each) => (each.row - here.row) * direction)) * direction + here.row;
  const [nearest] = beyond
    .filter((each) => each.row === row)
    .sort((a, b) => Math.abs(a.column - here.column) - Math.abs(b.column - here.column));
  return nearest ? sheets.indexOf(nearest) : from;
}
