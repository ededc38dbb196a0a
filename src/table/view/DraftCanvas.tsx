// The canvas: dotted pattern paper, both half blocks, the level lines through them, and all handles.

import { type PointerEvent, useMemo, useRef, useState } from 'react';
import { TABLE, type Unit } from '../../document';
import type { BlockName, Draft, Level, LevelName, Piece, Style } from '../../engine';
import { type SnapPlace, snapPointsOf } from '../gestures/snap';
import { type CanvasView, usePointers } from '../gestures/useCanvasView';
import { type HandleActions, type StepSizes, useHandlePull } from '../gestures/useHandlePull';
import { type ClientPoint, usePreventTouchScroll } from '../gestures/usePreventTouchScroll';
import type { Redraft } from '../handles/bendHandles';
import type { Handle } from '../handles/handle';
import { handlesOf } from '../handles/handlesOf';
import { nearestHandle } from '../handles/nearestHandle';
import { type PanelBeside, panelsBeside } from '../handles/panelsBeside';
import type { CanvasLayout, ShownBlocks } from '../layout/layOut';
import { BandDrawing } from './BandDrawing';
import { BlockDrawing } from './BlockDrawing';
import { HandleMarks } from './HandleMarks';
import { focusByKey, handleEvents, selectionId, useHandleSelection, useSteadyEvents } from './handleSet';
import { AddGuide, type NewWedge, newWedgeAt } from './lines/AddGuide';
import { EarlierOutlines } from './lines/EarlierOutlines';
import { JoinedSide } from './lines/JoinedSide';
import { LevelLines } from './lines/LevelLines';
import { TapeAlong } from './lines/TapeAlong';
import { UnalteredLines } from './lines/UnalteredLines';
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
  /** The blocks that are drawn, with their handles. */
  readonly blocks: ShownBlocks;
  /** The selected level. */
  readonly level: LevelName;
  readonly unit: Unit;
  /** There is no room for what is said below the levels' names, nor for a tape beside the drawing. */
  readonly small: boolean;
  /** Id of the text that says how the keys go from handle to handle. */
  readonly describedBy: string;
  readonly actions: HandleActions;
  readonly steps: StepSizes;
  /** Spacing of the paper's dots, mm. */
  readonly dotsMm: number;
  /** An earlier draft to compare with, whose outlines are drawn over this one. */
  readonly earlier: Draft | null;
  /** The draft without what fittings changed, whose lines are drawn where they lie otherwise; null where nothing was changed. */
  readonly unaltered: Draft | null;
  /** Adds a wedge where the next click is; null when none is being added. */
  readonly onAdd: ((wedge: NewWedge) => void) | null;
  /** Drafts another style for the same body, while the axis of the selected wedge can be bent; null while it cannot. */
  readonly bending: Redraft | null;
  readonly messages: {
    readonly level: (name: LevelName) => string;
    readonly levelTitle: (name: LevelName) => string;
    /** What stands below a level's name. */
    readonly levelNote: (level: Level, isBeyond: boolean) => string;
    readonly piece: (piece: Piece) => string;
    /** A length without its unit. */
    readonly width: (mm: number) => string;
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
    level,
    unit,
    small,
    blocks,
  } = props;
  const { view, size } = shown;
  const { pxPerMm, left, top } = view;
  const px = 1 / pxPerMm;
  const handles = useMemo(() => handlesOf(draft, style, layout, bending), [draft, style, layout, bending]);
  const { eventsFor, pulling, breakOff } = useHandlePull(actions, steps, pxPerMm, (handle) =>
    snapPointsOf(handle, draft),
  );
  const canvas = useRef<SVGSVGElement>(null);
  const selection = useHandleSelection(selected);
  /** Selects a wedge, or a handle that belongs to none. */
  const select = (id: string, wedge: string | null): void => {
    selection.select(id);
    if (wedge) onSelect(wedge);
  };
  const [adding, setAdding] = useState<NewWedge | null>(null);
  const placeOf = (event: ClientPoint): { x: number; y: number } => {
    const box = canvas.current?.getBoundingClientRect() ?? { left: 0, top: 0 };
    return { x: left + (event.clientX - box.left) / pxPerMm, y: top + (event.clientY - box.top) / pxPerMm };
  };
  const selectedHandles = useMemo(
    () =>
      handles.filter(
        (handle) =>
          (blocks === 'both' || blocks === (handle.block ?? 'front')) &&
          (!OF_SELECTED.includes(handle.kind) || handle.wedge === selected),
      ),
    [handles, blocks, selected],
  );
  const nearest = (event: ClientPoint): Found | null => {
    const handle = nearestHandle(selectedHandles, placeOf(event), px);
    const own = canvas.current?.querySelector<SVGElement>(`[data-handle="${CSS.escape(handle?.id ?? '')}"]`);
    return handle && own ? { handle, own } : null;
  };
  /** Selects the wedge of a handle: the first touch of a handle selects, the second pulls. */
  const choose = ({ handle, own }: Found): void => {
    own.focus({ preventScroll: true });
    select(selectionId(handle), handle.wedge);
  };
  const click = (event: PointerEvent<SVGSVGElement>): void => {
    const wedge = onAdd ? newWedgeAt(placeOf(event), draft, layout) : null;
    if (onAdd && wedge) {
      onAdd(wedge);
      return;
    }
    const target = event.target instanceof Element ? event.target : null;
    const found = target?.closest('[data-handle]') ? nearest(event) : null;
    const id = target?.closest('[data-wedge]')?.getAttribute('data-wedge');
    if (found) choose(found);
    else if (id) select(id, id);
  };
  const pointers = usePointers(canvas, shown.panZoom, click, pulling !== null, breakOff);
  usePreventTouchScroll(canvas, (at) => {
    const found = nearest(at);
    return found !== null && found.handle.gain.y !== 0 && selection.selectedId === selectionId(found.handle);
  });
  const [width, height] = [size.width * px, size.height * px];
  const shownHandles = selectedHandles.map(({ id }) => id);
  const stop =
    selection.focused !== null && shownHandles.includes(selection.focused)
      ? selection.focused
      : shownHandles[0];
  const press = (event: PointerEvent<SVGElement>): void => {
    const found = nearest(event);
    if (!found) return;
    const { handle, own } = found;
    // A mouse does not scroll by pulling, so it can pull the edges without selecting them first.
    const isSelected =
      event.pointerType === 'touch'
        ? selection.selectedId === selectionId(handle)
        : handle.wedge === null || handle.wedge === selected;
    // A finger that pulls no handle moves the canvas or scrolls.
    if (!isSelected && event.pointerType === 'touch') return;
    event.stopPropagation();
    if (isSelected) eventsFor(handle).onPointerDown(event, own);
    else choose(found);
  };
  const eventsOf = useSteadyEvents((id) => {
    const handle = selectedHandles.find((each) => each.id === id);
    return (
      handle && {
        ...handleEvents(eventsFor(handle), press, (key) => focusByKey(canvas.current, key)),
        onFocus: (byKey) => {
          selection.focus(id);
          if (!byKey) return;
          select(selectionId(handle), handle.wedge);
          shown.show(handle.at);
        },
      }
    );
  });
  const pulled = selectedHandles.find((handle) => handle.id === pulling?.id);
  /** The hand is on a wedge of the other block. */
  const isBesidePull = (block: BlockName): boolean => !!pulled?.wedge && pulled.block !== block;
  // Where the canvas is in view from top to bottom, a finger may still scroll the page on it.
  const scrolls = layout.height <= height + 1;
  return (
    <svg
      ref={canvas}
      className={`draft-canvas${onAdd ? ' adding' : ''}`}
      role="group"
      aria-label={TABLE.blocks}
      aria-describedby={props.describedBy}
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
      {(['front', 'back'] as const).map((block) =>
        blocks === 'both' || blocks === block ? (
          <BlockDrawing
            key={block}
            name={block}
            draft={draft}
            mayLag={isBesidePull(block)}
            layout={layout}
            selected={selected}
            nameOf={messages.piece}
            textMm={13 * px}
            level={level}
            written={messages.width}
          />
        ) : null,
      )}
      <LevelLines
        levels={draft.levels}
        layout={layout}
        left={left}
        width={width}
        px={px}
        selectedLevel={level}
        nameOf={messages.levelTitle}
        noteOf={messages.levelNote}
      />
      {small ? null : <TapeAlong right={left + width} top={top} height={height} px={px} unit={unit} />}
      <BandDrawing draft={draft} layout={layout} nameOf={messages.piece} textMm={13 * px} />
      {props.unaltered ? (
        <UnalteredLines draft={draft} unaltered={props.unaltered} layout={layout} shown={blocks} />
      ) : null}
      {props.earlier ? <EarlierOutlines draft={props.earlier} layout={layout} /> : null}
      <JoinedSide draft={draft} layout={layout} text={messages.joinedSide} textMm={13 * px} />
      <WedgeSigns draft={draft} layout={layout} shown={blocks} px={px} />
      <HandleMarks
        handles={selectedHandles}
        pulled={pulled ?? null}
        selectedId={selection.selectedId}
        stop={stop}
        labelText={messages.handle}
        valueText={messages.value}
        pxPerMm={pxPerMm}
        hitAreaPx={coarse ? 22 : 13}
        eventsOf={eventsOf}
      />
      {onAdd && adding ? <AddGuide wedge={adding} draft={draft} layout={layout} /> : null}
      {pulled && pulling ? (
        <ValueTooltip
          handle={pulled}
          text={tooltipText(messages.value(pulled), messages.place(pulling.place))}
          beside={panelsBeside(pulled, draft)}
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

/** A handle and what is drawn of it. */
interface Found {
  readonly handle: Handle;
  readonly own: SVGElement;
}
