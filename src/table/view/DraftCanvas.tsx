// The cutting table: dotted pattern paper, both half blocks, the level lines through them, and every handle.

import { type PointerEvent, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { TABLE } from '../../document';
import type { Draft, LevelName, Piece, Style } from '../../engine';
import { type RestingPlace, snapPointsOf } from '../gestures/snap';
import { type CanvasView, usePointers } from '../gestures/useCanvasView';
import { type HandleActions, type Steps, useHandleDrag } from '../gestures/useHandleDrag';
import type { Redraft } from '../handles/bendHandles';
import { nearestHandle } from '../handles/grips';
import type { Handle } from '../handles/handle';
import { handlesOf } from '../handles/handles';
import type { CanvasLayout } from '../layout/layout';
import { type PanelBeside, panelsBeside } from '../layout/panelsBeside';
import { AddGuide, type NewWedge, newWedgeAt } from './AddGuide';
import { BandDrawing } from './BandDrawing';
import { BlockDrawing } from './BlockDrawing';
import { GhostLines } from './GhostLines';
import { HandleMark } from './HandleMark';
import { JoinedSide } from './JoinedSide';
import { ValueTooltip } from './ValueTooltip';
import { WedgeSigns } from './WedgeSigns';

export interface DraftCanvasProps {
  readonly draft: Draft;
  readonly style: Style;
  readonly layout: CanvasLayout;
  /** What part of the table is on the screen, and how to change that. */
  readonly shown: CanvasView;
  /** A finger needs larger grips than a mouse. */
  readonly coarse: boolean;
  readonly selected: string | null;
  readonly onSelect: (wedge: string) => void;
  readonly actions: HandleActions;
  readonly steps: Steps;
  /** Spacing of the paper's dots, mm. */
  readonly dotsMm: number;
  /** An earlier draft, drawn under this one. */
  readonly ghost: Draft | null;
  /** Takes a new wedge where the next click falls; null when none is being added. */
  readonly onAdd: ((wedge: NewWedge) => void) | null;
  /** Drafts a style for the same body, while the axis of the wedge in hand is to be bent; null while it is not. */
  readonly bending: Redraft | null;
  readonly words: {
    readonly level: (name: LevelName) => string;
    readonly piece: (piece: Piece) => string;
    readonly handle: (handle: Handle) => string;
    readonly length: (mm: number) => string;
    /** The number of a handle as it is read. */
    readonly value: (handle: Handle) => string;
    /** Along the side line where there is no side seam. */
    readonly joinedSide: string;
    readonly place: (place: RestingPlace) => string;
  };
}

/** Handles that are there for the wedge in hand only. */
const OF_SELECTED: readonly Handle['kind'][] = ['leg', 'point', 'bend'];

export function DraftCanvas(props: DraftCanvasProps) {
  const {
    draft,
    style,
    layout,
    shown,
    coarse,
    selected,
    onSelect,
    actions,
    steps,
    dotsMm,
    words,
    onAdd,
    bending,
  } = props;
  const { view, size } = shown;
  const { pxPerMm, left, top } = view;
  const handles = useMemo(() => handlesOf(draft, style, layout, bending), [draft, style, layout, bending]);
  const { eventsFor, pulling } = useHandleDrag(actions, steps, pxPerMm, (handle) =>
    snapPointsOf(handle, draft),
  );
  const canvas = useRef<SVGSVGElement>(null);
  const [adding, setAdding] = useState<NewWedge | null>(null);
  const placeOf = (event: PointerEvent<SVGElement>): { x: number; y: number } => {
    const box = canvas.current?.getBoundingClientRect() ?? { left: 0, top: 0 };
    return { x: left + (event.clientX - box.left) / pxPerMm, y: top + (event.clientY - box.top) / pxPerMm };
  };
  const click = (event: PointerEvent<SVGSVGElement>): void => {
    const wedge = onAdd ? newWedgeAt(placeOf(event), draft, layout) : null;
    if (onAdd && wedge) {
      onAdd(wedge);
      return;
    }
    const hit = event.target instanceof Element ? event.target.closest('[data-wedge]') : null;
    const id = hit?.getAttribute('data-wedge');
    if (id) onSelect(id);
  };
  const pointers = usePointers(canvas, shown.shift, click, pulling !== null);
  useStillUnderFinger(canvas);
  const px = 1 / pxPerMm;
  const [width, height] = [size.width * px, size.height * px];
  const selectedHandles = handles.filter(
    (handle) => !OF_SELECTED.includes(handle.kind) || handle.wedge === selected,
  );
  const press = (event: PointerEvent<SVGElement>): void => {
    const handle = nearestHandle(selectedHandles, placeOf(event), px);
    const own = canvas.current?.querySelector<SVGElement>(`[data-handle="${CSS.escape(handle?.id ?? '')}"]`);
    if (handle && own) eventsFor(handle).onPointerDown(event, own);
  };
  const pulled = selectedHandles.find((handle) => handle.id === pulling?.id);
  // Where all of it is in view from top to bottom, a finger may still scroll the page by it.
  const scrolls = layout.height <= height + 1;
  return (
    <svg
      ref={canvas}
      className={`cutting-table${onAdd ? ' adding' : ''}`}
      role="group"
      aria-label={TABLE.blocks}
      width={size.width}
      height={size.height}
      viewBox={`${left} ${top} ${width} ${height}`}
      style={{ touchAction: scrolls ? 'pan-y' : 'none' }}
      {...pointers}
      onPointerMove={(event) => {
        pointers.onPointerMove(event);
        if (onAdd) setAdding(newWedgeAt(placeOf(event), draft, layout));
      }}
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
        ? (['front', 'back'] as const).map((block) =>
            draft.blocks ? (
              <BlockDrawing
                key={block}
                block={draft.blocks[block]}
                draft={draft}
                layout={layout}
                selected={selected}
                nameOf={words.piece}
                textMm={12 * px}
              />
            ) : null,
          )
        : null}
      <BandDrawing draft={draft} layout={layout} nameOf={words.piece} textMm={12 * px} />
      {props.ghost ? <GhostLines draft={props.ghost} layout={layout} /> : null}
      <JoinedSide draft={draft} layout={layout} words={words.joinedSide} textMm={12 * px} />
      <WedgeSigns draft={draft} layout={layout} px={px} />
      {selectedHandles.map((handle) => (
        <HandleMark
          key={handle.id}
          handle={handle}
          label={words.handle(handle)}
          shown={words.value(handle)}
          pulling={handle.id === pulling?.id}
          pxPerMm={pxPerMm}
          gripPx={coarse ? 22 : 13}
          events={{ ...eventsFor(handle), onPointerDown: press }}
          onFocus={(byKey) => {
            if (handle.wedge) onSelect(handle.wedge);
            if (byKey) shown.show(handle.at);
          }}
        />
      ))}
      {onAdd && adding ? <AddGuide wedge={adding} draft={draft} layout={layout} /> : null}
      {pulled && pulling ? (
        <ValueTooltip
          handle={pulled}
          text={tooltipText(words.value(pulled), words.place(pulling.place))}
          beside={panelsBeside(pulled, draft)}
          nameOf={({ piece, width: wide, part }: PanelBeside) =>
            TABLE[part ? 'partWidth' : 'panelWidth']({ piece: words.piece(piece), width: words.length(wide) })
          }
          draft={draft}
          layout={layout}
          view={view}
          size={size}
          canvas={canvas}
          finger={coarse}
        />
      ) : null}
    </svg>
  );
}

/** A handle's number, with where it has come to rest if that is a place of its own. */
const tooltipText = (value: string, place: string): string =>
  place === '' ? value : TABLE.valueAt({ value, place });

/** Keeps the page from scrolling while a finger pulls a handle. */
function useStillUnderFinger(canvas: RefObject<SVGSVGElement | null>): void {
  useEffect(() => {
    const svg = canvas.current;
    const hold = (event: TouchEvent): void => {
      const onHandle = event.target instanceof Element && event.target.closest('[data-handle]');
      if (onHandle || event.touches.length > 1) event.preventDefault();
    };
    // React listens passively, and touch-action does not reach the inside of an SVG in every browser.
    svg?.addEventListener('touchstart', hold, { passive: false });
    return () => svg?.removeEventListener('touchstart', hold);
  }, [canvas]);
}
