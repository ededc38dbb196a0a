// The cutting table: dotted pattern paper, both half blocks, the level lines through them, and every handle.

import { type PointerEvent, type ReactNode, type RefObject, useEffect, useMemo, useRef } from 'react';
import type { Draft, LevelName, Piece, Style } from '../../engine';
import { type HandleActions, type Steps, useHandleDrag } from '../gestures/useHandleDrag';
import { type Handle, handlesOf } from '../handles';
import type { TableLayout } from '../layout';
import { BlockDrawing } from './BlockDrawing';
import { HandleMark } from './HandleMark';

export interface CuttingTableProps {
  readonly draft: Draft;
  readonly style: Style;
  readonly layout: TableLayout;
  /** Scale on the screen, px for a mm. */
  readonly pxPerMm: number;
  /** A finger needs larger grips than a mouse. */
  readonly coarse: boolean;
  readonly selected: string | null;
  readonly onSelect: (wedge: string) => void;
  readonly actions: HandleActions;
  readonly steps: Steps;
  /** Spacing of the paper's dots, mm. */
  readonly dotsMm: number;
  readonly words: {
    readonly level: (name: LevelName) => string;
    readonly piece: (piece: Piece) => string;
    readonly handle: (handle: Handle) => string;
    readonly length: (mm: number) => string;
  };
  readonly children?: ReactNode;
}

export function CuttingTable(props: CuttingTableProps) {
  const { draft, style, layout, pxPerMm, coarse, selected, onSelect, actions, steps, dotsMm, words } = props;
  const handles = useMemo(() => handlesOf(draft, style, layout), [draft, style, layout]);
  const { eventsFor, pulling } = useHandleDrag(actions, steps, pxPerMm);
  const table = useRef<SVGSVGElement>(null);
  useStillUnderFinger(table);
  const px = 1 / pxPerMm;
  const { left, top, width, height } = layout;
  const shown = handles.filter((handle) => handle.kind !== 'leg' || handle.wedge === selected);
  const pulled = shown.find((handle) => handle.id === pulling);
  const select = (event: PointerEvent<SVGSVGElement>): void => {
    const wedge =
      event.target instanceof Element
        ? event.target.closest('[data-wedge]')?.getAttribute('data-wedge')
        : null;
    if (wedge) onSelect(wedge);
  };
  return (
    <svg
      ref={table}
      className="cutting-table"
      role="group"
      aria-label="Front and back half blocks"
      width={width * pxPerMm}
      height={height * pxPerMm}
      viewBox={`${left} ${top} ${width} ${height}`}
      onPointerDown={select}
    >
      <defs>
        <pattern id="dots" width={dotsMm} height={dotsMm} patternUnits="userSpaceOnUse">
          <circle className="dot" cx={dotsMm / 2} cy={dotsMm / 2} r={0.8 * px} />
        </pattern>
      </defs>
      <rect className="paper" x={left} y={top} width={width} height={height} fill="url(#dots)" />
      {draft.levels.map((level) => (
        <line
          key={level.name}
          className={`level level-${level.name}`}
          x1={left}
          x2={left + width}
          y1={level.y}
          y2={level.y}
        />
      ))}
      {draft.blocks
        ? (['front', 'back'] as const).map((side) =>
            draft.blocks ? (
              <BlockDrawing
                key={side}
                block={draft.blocks[side]}
                draft={draft}
                layout={layout}
                selected={selected}
                nameOf={words.piece}
                textMm={12 * px}
              />
            ) : null,
          )
        : null}
      {shown.map((handle) => (
        <HandleMark
          key={handle.id}
          handle={handle}
          label={words.handle(handle)}
          shown={words.length(handle.value)}
          pulling={handle.id === pulling}
          pxPerMm={pxPerMm}
          gripPx={coarse ? 22 : 13}
          events={eventsFor(handle)}
          onFocus={() => {
            if (handle.wedge && handle.wedge !== selected) onSelect(handle.wedge);
          }}
        />
      ))}
      {pulled ? <Bubble handle={pulled} text={words.length(pulled.value)} px={px} /> : null}
      {props.children}
    </svg>
  );
}

/** Keeps the page from scrolling while a finger pulls a handle; elsewhere on the table it scrolls as usual. */
function useStillUnderFinger(table: RefObject<SVGSVGElement | null>): void {
  useEffect(() => {
    const svg = table.current;
    const hold = (event: TouchEvent): void => {
      if (event.target instanceof Element && event.target.closest('[data-handle]')) event.preventDefault();
    };
    // React listens passively, and touch-action does not reach the inside of an SVG in every browser.
    svg?.addEventListener('touchstart', hold, { passive: false });
    return () => svg?.removeEventListener('touchstart', hold);
  }, [table]);
}

/** The number being changed, beside the grip. */
function Bubble({ handle, text, px }: { handle: Handle; text: string; px: number }) {
  const width = (text.length * 8 + 18) * px;
  return (
    <g className="bubble" transform={`translate(${handle.at.x - width / 2} ${handle.at.y - 46 * px})`}>
      <rect width={width} height={26 * px} rx={5 * px} />
      <text x={width / 2} y={17.5 * px} fontSize={13 * px}>
        {text}
      </text>
    </g>
  );
}
