// One handle of the drawing: a slider to the keyboard and the screen reader, and a hit area round a mark to the pointer.

import { memo } from 'react';
import type { Point } from '../../engine';
import type { Handle } from '../handles/handle';
import { hitAreaOffset } from '../handles/nearestHandle';
import type { MarkEventsOf } from './handleSet';
import { closedPath } from './lines/paths';

/** What is said of a handle: the same functions from drawing to drawing. */
export interface HandleTexts {
  readonly labelText: (handle: Handle) => string;
  /** The value in the user's unit, for the screen reader. */
  readonly valueText: (handle: Handle) => string;
}

interface HandleMarkProps extends HandleTexts {
  readonly handle: Handle;
  readonly pulling: boolean;
  /** A finger pulls a selected handle; on any other it scrolls. */
  readonly isSelected: boolean;
  /** The one of all handles that Tab comes to. */
  readonly isStop: boolean;
  readonly pxPerMm: number;
  /** Radius of the hit area, px. */
  readonly hitAreaPx: number;
  readonly eventsOf: MarkEventsOf;
}

/** Drawn again only where it looks otherwise: most handles keep their places under a pull. */
export const HandleMark = memo(Mark, isDrawnAlike);

/** A mark that would move by less is not drawn again. px */
const UNSEEN_PX = 0.05;

function isDrawnAlike(before: HandleMarkProps, after: HandleMarkProps): boolean {
  const { handle: a, ...restBefore } = before;
  const { handle: b, ...restAfter } = after;
  const unseen = UNSEEN_PX / after.pxPerMm;
  return (
    a.id === b.id &&
    a.kind === b.kind &&
    a.which === b.which &&
    a.value === b.value &&
    a.least === b.least &&
    a.most === b.most &&
    isNear(a.at, b.at, unseen) &&
    isNear(a.tip, b.tip, unseen) &&
    isNear(a.gain, b.gain, 0) &&
    (Object.keys(restAfter) as (keyof typeof restAfter)[]).every((key) => restBefore[key] === restAfter[key])
  );
}

/** Whether both are missing, or neither coordinate differs by more than `by`. */
const isNear = (a: Point | undefined, b: Point | undefined, by: number): boolean =>
  a === b || (a !== undefined && b !== undefined && Math.abs(a.x - b.x) <= by && Math.abs(a.y - b.y) <= by);

function Mark({
  handle,
  labelText,
  valueText,
  pulling,
  isSelected,
  isStop,
  pxPerMm,
  hitAreaPx,
  eventsOf,
}: HandleMarkProps) {
  // Each place is written out: a browser lays what has a transform of its own apart from the rest, in every frame.
  const { id, kind, which, at, tip } = handle;
  const px = 1 / pxPerMm;
  const offset = hitAreaOffset(handle) * px;
  return (
    <g
      className={`handle handle-${handle.kind}${pulling ? ' pulling' : ''}${isSelected ? ' held' : ''}`}
      data-handle={id}
      role="slider"
      tabIndex={isStop ? 0 : -1}
      aria-label={labelText(handle)}
      aria-valuenow={Math.round(handle.value * 10) / 10}
      aria-valuemin={handle.least}
      aria-valuemax={Math.round(handle.most)}
      aria-valuetext={valueText(handle)}
      aria-orientation={handle.gain.y !== 0 ? 'vertical' : 'horizontal'}
      onFocus={(event) => eventsOf(id)?.onFocus(event.currentTarget.matches(':focus-visible'))}
      onPointerDown={(event) => eventsOf(id)?.onPointerDown(event)}
      onPointerMove={(event) => eventsOf(id)?.onPointerMove(event)}
      onPointerUp={(event) => eventsOf(id)?.onPointerUp(event)}
      onPointerCancel={(event) => eventsOf(id)?.onPointerCancel(event)}
      onKeyDown={(event) => eventsOf(id)?.onKeyDown(event)}
      onKeyUp={(event) => eventsOf(id)?.onKeyUp(event)}
      onBlur={(event) => eventsOf(id)?.onBlur(event)}
    >
      <circle className="hit-area" cx={at.x + offset} cy={at.y} r={hitAreaPx * px} />
      {tip ? <path className="short-of" d={`M${at.x} ${at.y}L${tip.x} ${tip.y}`} /> : null}
      {kind === 'point' ? (
        <path className="mark" d={arrowhead(at, (which === 'upper' ? -1 : 1) * 7 * px)} />
      ) : null}
      {kind === 'axis' || kind === 'bend' || kind === 'opening' ? (
        <path className="mark" d={diamond(at, 7 * px)} />
      ) : null}
      {kind === 'leg' ? <path className="mark" d={triangle(at, offset, 6 * px)} /> : null}
      {kind === 'node' || kind === 'short' ? (
        <circle className="mark" cx={at.x} cy={at.y} r={4.5 * px} />
      ) : null}
      {kind === 'edge' ? (
        <rect
          className="mark"
          x={at.x - 9 * px}
          y={at.y - 4 * px}
          width={18 * px}
          height={8 * px}
          rx={4 * px}
        />
      ) : null}
    </g>
  );
}

/** An arrowhead with its tip on the point of the dart and its body within the dart. */
const arrowhead = ({ x, y }: Point, r: number): string =>
  closedPath([
    { x, y: y + 0.2 * r },
    { x: x + 0.75 * r, y: y - 1.3 * r },
    { x: x - 0.75 * r, y: y - 1.3 * r },
  ]);

const diamond = ({ x, y }: Point, r: number): string =>
  closedPath([
    { x, y: y - r },
    { x: x + r, y },
    { x, y: y + r },
    { x: x - r, y },
  ]);

/** A small triangle pointing away from the leg. */
const triangle = ({ x, y }: Point, offset: number, r: number): string => {
  const sign = Math.sign(offset) || 1;
  return closedPath([
    { x: x + sign * 0.35 * r, y: y - r },
    { x: x + sign * 2 * r, y },
    { x: x + sign * 0.35 * r, y: y + r },
  ]);
};
