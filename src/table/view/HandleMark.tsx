// One handle of the drawing: a slider to the keyboard and the screen reader, and a hit area round a mark to the pointer.

import { memo } from 'react';
import type { Point } from '../../engine';
import type { Handle } from '../handles/handle';
import { hitAreaOffset } from '../handles/nearestHandle';
import type { MarkEventsOf } from './handleSet';

interface HandleMarkProps {
  readonly handle: Handle;
  readonly label: string;
  /** The value in the user's unit, for the screen reader. */
  readonly shown: string;
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

function isDrawnAlike(before: HandleMarkProps, after: HandleMarkProps): boolean {
  const { handle: a, ...restBefore } = before;
  const { handle: b, ...restAfter } = after;
  return (
    a.id === b.id &&
    a.kind === b.kind &&
    a.which === b.which &&
    a.value === b.value &&
    a.least === b.least &&
    a.most === b.most &&
    samePlace(a.at, b.at) &&
    samePlace(a.tip, b.tip) &&
    samePlace(a.gain, b.gain) &&
    (Object.keys(restAfter) as (keyof typeof restAfter)[]).every((key) => restBefore[key] === restAfter[key])
  );
}

const samePlace = (a: Point | undefined, b: Point | undefined): boolean => a?.x === b?.x && a?.y === b?.y;

function Mark({
  handle,
  label,
  shown,
  pulling,
  isSelected,
  isStop,
  pxPerMm,
  hitAreaPx,
  eventsOf,
}: HandleMarkProps) {
  const { id } = handle;
  const px = 1 / pxPerMm;
  const offset = hitAreaOffset(handle) * px;
  return (
    <g
      className={`handle handle-${handle.kind}${pulling ? ' pulling' : ''}${isSelected ? ' held' : ''}`}
      data-handle={id}
      role="slider"
      tabIndex={isStop ? 0 : -1}
      aria-label={label}
      aria-valuenow={Math.round(handle.value * 10) / 10}
      aria-valuemin={handle.least}
      aria-valuemax={Math.round(handle.most)}
      aria-valuetext={shown}
      aria-orientation={handle.gain.y !== 0 ? 'vertical' : 'horizontal'}
      transform={`translate(${handle.at.x} ${handle.at.y})`}
      onFocus={(event) => eventsOf(id)?.onFocus(event.currentTarget.matches(':focus-visible'))}
      onPointerDown={(event) => eventsOf(id)?.onPointerDown(event)}
      onPointerMove={(event) => eventsOf(id)?.onPointerMove(event)}
      onPointerUp={(event) => eventsOf(id)?.onPointerUp(event)}
      onPointerCancel={(event) => eventsOf(id)?.onPointerCancel(event)}
      onKeyDown={(event) => eventsOf(id)?.onKeyDown(event)}
      onKeyUp={(event) => eventsOf(id)?.onKeyUp(event)}
      onBlur={(event) => eventsOf(id)?.onBlur(event)}
    >
      <circle className="hit-area" cx={offset} r={hitAreaPx * px} />
      {handle.tip ? (
        <path className="short-of" d={`M0 0L${handle.tip.x - handle.at.x} ${handle.tip.y - handle.at.y}`} />
      ) : null}
      {handle.kind === 'point' ? (
        <path className="mark" d={arrowhead((handle.which === 'upper' ? -1 : 1) * 7 * px)} />
      ) : null}
      {handle.kind === 'axis' || handle.kind === 'bend' ? (
        <path className="mark" d={diamond(7 * px)} />
      ) : null}
      {handle.kind === 'leg' ? <path className="mark" d={triangle(offset, 6 * px)} /> : null}
      {handle.kind === 'node' ? <circle className="mark" r={4.5 * px} /> : null}
      {handle.kind === 'edge' ? (
        <rect className="mark" x={-9 * px} y={-4 * px} width={18 * px} height={8 * px} rx={4 * px} />
      ) : null}
    </g>
  );
}

/** An arrowhead with its tip on the point of the dart and its body within the dart. */
const arrowhead = (r: number): string => `M0 ${0.2 * r}L${0.75 * r} ${-1.3 * r}L${-0.75 * r} ${-1.3 * r}Z`;

const diamond = (r: number): string => `M0 ${-r}L${r} 0L0 ${r}L${-r} 0Z`;

/** A small triangle pointing away from the leg. */
const triangle = (offset: number, r: number): string => {
  const sign = Math.sign(offset) || 1;
  return `M${sign * 0.35 * r} ${-r}L${sign * 2 * r} 0L${sign * 0.35 * r} ${r}Z`;
};
