// The panels as they will be printed, with the sheets over them; a sheet is left out, or taken in again, by a press or a key.

import { type KeyboardEvent, useRef, useState } from 'react';
import { type Layout, ownPartOf, sheetName, windowOf } from '../../../paper';
import { PanelInk } from './PanelStrokes';

interface SheetsDrawingProps {
  readonly layout: Layout;
  readonly leftOut: readonly string[];
  readonly onToggle: (sheet: string) => void;
}

export function SheetsDrawing({ layout, leftOut, onToggle }: SheetsDrawingProps) {
  const { grid, panels, sheets } = layout;
  const drawing = useRef<SVGSVGElement>(null);
  // One sheet is in the way of Tab; the arrow keys go on to the others.
  const [reached, setReached] = useState('');
  const windows = sheets.map((place) => ({
    place,
    name: sheetName(place),
    box: windowOf(grid, place),
    own: ownPartOf(grid, place),
  }));
  const right = Math.max(...windows.map(({ box }) => box.right));
  const foot = Math.max(...windows.map(({ box }) => box.bottom));
  const stop = windows.find(({ name }) => name === reached)?.name ?? windows[0]?.name;

  const go = (from: number, event: KeyboardEvent): void => {
    const next = NEXT[event.key]?.(sheets, from);
    if (next === undefined) return;
    event.preventDefault();
    const name = sheets[next] && sheetName(sheets[next]);
    if (!name) return;
    setReached(name);
    drawing.current?.querySelector<SVGGElement>(`[data-sheet="${name}"]`)?.focus();
  };
  return (
    <svg
      ref={drawing}
      className="plan-drawing"
      role="group"
      aria-label={`${panels.length} panels on ${sheets.length} sheets`}
      viewBox={`-6 -6 ${right + 12} ${foot + 12}`}
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
      {/* What is printed on the panels is read in the lists beside the drawing; here it would bury the sheets. */}
      <svg aria-hidden="true" overflow="visible">
        {panels.map((panel) => (
          <PanelInk key={panel.piece.id} panel={panel} />
        ))}
      </svg>
      {windows.map(({ name, own }, i) => (
        <g
          key={name}
          className={leftOut.includes(name) ? 'sheet left-out' : 'sheet'}
          data-sheet={name}
          role="checkbox"
          aria-checked={!leftOut.includes(name)}
          aria-label={`Sheet ${name}`}
          tabIndex={name === stop ? 0 : -1}
          onClick={() => {
            setReached(name);
            onToggle(name);
          }}
          onKeyDown={(event) => {
            if (event.key === ' ' || event.key === 'Enter') {
              event.preventDefault();
              onToggle(name);
            } else go(i, event);
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

/** Where a key leads from one sheet of the list, by its index. */
const NEXT: Readonly<Record<string, (sheets: Places, from: number) => number>> = {
  ArrowRight: (sheets, from) => Math.min(sheets.length - 1, from + 1),
  ArrowLeft: (_, from) => Math.max(0, from - 1),
  ArrowDown: (sheets, from) => nextRow(sheets, from, 1),
  ArrowUp: (sheets, from) => nextRow(sheets, from, -1),
  Home: () => 0,
  End: (sheets) => sheets.length - 1,
};

/** The sheet nearest to the same column in the next row that has any. */
function nextRow(sheets: Places, from: number, way: 1 | -1): number {
  const here = sheets[from];
  if (!here) return from;
  const beyond = sheets.filter(({ row }) => (row - here.row) * way > 0);
  const row = Math.min(...beyond.map((each) => (each.row - here.row) * way)) * way + here.row;
  const [nearest] = beyond
    .filter((each) => each.row === row)
    .sort((a, b) => Math.abs(a.column - here.column) - Math.abs(b.column - here.column));
  return nearest ? sheets.indexOf(nearest) : from;
}
