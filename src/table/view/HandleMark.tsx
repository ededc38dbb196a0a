// One handle of the drawing: a slider to the keyboard and the screen reader, and a hit area round a mark to the pointer.

import type { ComponentProps } from 'react';
import type { Handle } from '../handles/handle';
import { hitAreaOffset } from '../handles/nearestHandle';

interface HandleMarkProps {
  readonly handle: Handle;
  readonly label: string;
  /** The value in the user's unit, for the screen reader. */
  readonly shown: string;
  readonly dragging: boolean;
  /** A finger drags a selected handle; on any other it scrolls. */
  readonly isSelected: boolean;
  /** The one of all handles that Tab comes to. */
  readonly isStop: boolean;
  readonly pxPerMm: number;
  /** Radius of the hit area, px. */
  readonly hitAreaPx: number;
  readonly events: Pick<
    ComponentProps<'g'>,
    'onPointerDown' | 'onPointerMove' | 'onPointerUp' | 'onPointerCancel' | 'onKeyDown' | 'onKeyUp' | 'onBlur'
  >;
  /** `byKey`: the focus is visible, so it came from the keyboard. */
  readonly onFocus: (byKey: boolean) => void;
}

export function HandleMark({
  handle,
  label,
  shown,
  dragging,
  isSelected,
  isStop,
  pxPerMm,
  hitAreaPx,
  events,
  onFocus,
}: HandleMarkProps) {
  const px = 1 / pxPerMm;
  const offset = hitAreaOffset(handle) * px;
  return (
    <g
      className={`handle handle-${handle.kind}${dragging ? ' dragging' : ''}${isSelected ? ' held' : ''}`}
      data-handle={handle.id}
      role="slider"
      tabIndex={isStop ? 0 : -1}
      aria-label={label}
      aria-valuenow={Math.round(handle.value * 10) / 10}
      aria-valuemin={handle.least}
      aria-valuemax={Math.round(handle.most)}
      aria-valuetext={shown}
      aria-orientation={handle.gain.y !== 0 ? 'vertical' : 'horizontal'}
      transform={`translate(${handle.at.x} ${handle.at.y})`}
      onFocus={(event) => onFocus(event.currentTarget.matches(':focus-visible'))}
      {...events}
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
