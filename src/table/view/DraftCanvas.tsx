// The canvas: dotted pattern paper, both half blocks, the level lines through them, and all handles.

import { type PointerEvent, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { TABLE } from '../../document';
import type { Draft, LevelName, Piece, Style } from '../../engine';
import { type SnapPlace, snapPointsOf } from '../gestures/snap';
import { type CanvasView, usePointers } from '../gestures/useCanvasView';
import { type HandleActions, type StepSizes, useHandleDrag } from '../gestures/useHandleDrag';
import type { Redraft } from '../handles/bendHandles';
import type { Handle } from '../handles/handle';
import { handlesOf } from '../handles/handlesOf';
import { nearestHandle } from '../handles/nearestHandle';
import { type PanelBeside, panelsBeside } from '../handles/panelsBeside';
import type { CanvasLayout } from '../layout/layOut';
import { AddGuide, type NewWedge, newWedgeAt } from './AddGuide';
import { BandDrawing } from './BandDrawing';
import { BlockDrawing } from './BlockDrawing';
import { EarlierOutlines } from './EarlierOutlines';
import { HandleMark } from './HandleMark';
import { JoinedSide } from './JoinedSide';
import { ValueTooltip } from './ValueTooltip';
import { WedgeSigns } from './WedgeSigns';

export interface DraftCanvasProps {
  readonly draft: Draft;
  readonly style: Style;
  readonly layout: CanvasLayout;
  /** The part of the canvas on the screen, and how to change it. */
  readonly shown: CanvasView;
  /** True for a touch screen, which needs larger hit areas than a mouse. */
  readonly coarse: boolean;
  readonly selected: string | null;
  readonly onSelect: (wedge: string) => void;
  readonly actions: HandleActions;
  readonly steps: StepSizes;
  /** Spacing of the paper's dots, mm. */
  readonly dotsMm: number;
  /** An earlier draft to compare with, whose outlines are drawn over this one. */
  readonly earlier: Draft | null;
  /** Adds a wedge where the next click is; null when none is being added. */
  readonly onAdd: ((wedge: NewWedge) => void) | null;
  /** Drafts another style for the same body, while the axis of the selected wedge can be bent; null while it cannot. */
  readonly bending: Redraft | null;
  readonly messages: {
    readonly level: (name: LevelName) => string;
    readonly piece: (piece: Piece) => string;
    readonly handle: (handle: Handle) => string;
    readonly length: (mm: number) => string;
    /** The value of a handle with its unit. */
    readonly value: (handle: Handle) => string;
    /** The text along the side line where there is no side seam. */
    readonly joinedSide: string;
    readonly place: (place: SnapPlace) => string;
  };
}

/** Kinds of handles that only the selected wedge has. */
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
    messages,
    onAdd,
    bending,
  } = props;
  const { view, size } = shown;
  const { pxPerMm, left, top } = view;
  const handles = useMemo(() => handlesOf(draft, style, layout, bending), [draft, style, layout, bending]);
  const { eventsFor, dragging } = useHandleDrag(actions, steps, pxPerMm, (handle) =>
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
  const pointers = usePointers(canvas, shown.panZoom, click, dragging !== null);
  usePreventTouchScroll(canvas);
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
  const dragged = selectedHandles.find((handle) => handle.id === dragging?.id);
  // Where the canvas is in view from top to bottom, a finger may still scroll the page on it.
  const scrolls = layout.height <= height + 1;
  return (
    <svg
      ref={canvas}
      className={`draft-canvas${onAdd ? ' adding' : ''}`}
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
                nameOf={messages.piece}
                textMm={12 * px}
              />
            ) : null,
          )
        : null}
      <BandDrawing draft={draft} layout={layout} nameOf={messages.piece} textMm={12 * px} />
      {props.earlier ? <EarlierOutlines draft={props.earlier} layout={layout} /> : null}
      <JoinedSide draft={draft} layout={layout} text={messages.joinedSide} textMm={12 * px} />
      <WedgeSigns draft={draft} layout={layout} px={px} />
      {selectedHandles.map((handle) => (
        <HandleMark
          key={handle.id}
          handle={handle}
          label={messages.handle(handle)}
          shown={messages.value(handle)}
          dragging={handle.id === dragging?.id}
          pxPerMm={pxPerMm}
          hitAreaPx={coarse ? 22 : 13}
          events={{ ...eventsFor(handle), onPointerDown: press }}
          onFocus={(byKey) => {
            if (handle.wedge) onSelect(handle.wedge);
            if (byKey) shown.show(handle.at);
          }}
        />
      ))}
      {onAdd && adding ? <AddGuide wedge={adding} draft={draft} layout={layout} /> : null}
      {dragged && dragging ? (
        <ValueTooltip
          handle={dragged}
          text={tooltipText(messages.value(dragged), messages.place(dragging.place))}
          beside={panelsBeside(dragged, draft)}
          nameOf={({ piece, width: wide, part }: PanelBeside) =>
            TABLE[part ? 'partWidth' : 'panelWidth']({
              piece: messages.piece(piece),
              width: messages.length(wide),
            })
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

/** Keeps the page from scrolling while a finger drags a handle. */
function usePreventTouchScroll(canvas: RefObject<SVGSVGElement | null>): void {
  useEffect(() => {
    const svg = canvas.current;
    const hold = (event: TouchEvent): void => {
      const onHandle = event.target instanceof Element && event.target.closest('[data-handle]');
      if (onHandle || event.touches.length > 1) event.preventDefault();
    };
    // React's touch listeners are passive, and not every browser applies touch-action inside an SVG.
    svg?.addEventListener('touchstart', hold, { passive: false });
    return () => svg?.removeEventListener('touchstart', hold);
  }, [canvas]);
}
