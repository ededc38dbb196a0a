// One handle on the table: a slider to keyboard and screen reader, a grip to finger and mouse.

import type { ComponentProps } from 'react';
import { leanOf } from '../handles/grips';
import type { Handle } from '../handles/handle';

interface HandleMarkProps {
  readonly handle: Handle;
  readonly label: string;
  /** The value in the maker's unit, for the screen reader and the bubble. */
  readonly shown: string;
  readonly pulling: boolean;
  readonly pxPerMm: number;
  /** Reach of a grip, px. */
  readonly gripPx: number;
  readonly events: Pick<
    ComponentProps<'g'>,
    'onPointerDown' | 'onPointerMove' | 'onPointerUp' | 'onPointerCancel' | 'onKeyDown' | 'onKeyUp' | 'onBlur'
  >;
  /** `byKey`: the focus is seen, so it was not a press that brought it. */
  readonly onFocus: (byKey: boolean) => void;
}

export function HandleMark({
  handle,
  label,
  shown,
  pulling,
  pxPerMm,
  gripPx,
  events,
  onFocus,
}: HandleMarkProps) {
  const px = 1 / pxPerMm;
  const lean = leanOf(handle) * px;
  return (
    <g
      className={`handle handle-${handle.kind}${pulling ? ' pulling' : ''}`}
      data-handle={handle.id}
      role="slider"
      tabIndex={0}
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
      <circle className="grip" cx={lean} r={gripPx * px} />
      {handle.tip ? (
        <path className="short-of" d={`M0 0L${handle.tip.x - handle.at.x} ${handle.tip.y - handle.at.y}`} />
      ) : null}
      {handle.kind === 'point' ? (
        <path className="mark" d={arrowhead((handle.which === 'upper' ? -1 : 1) * 7 * px)} />
      ) : null}
      {handle.kind === 'axis' || handle.kind === 'bend' ? (
        <path className="mark" d={diamond(7 * px)} />
      ) : null}
      {handle.kind === 'leg' ? <path className="mark" d={tick(lean, 6 * px)} /> : null}
      {handle.kind === 'node' ? <circle className="mark" r={4.5 * px} /> : null}
      {handle.kind === 'edge' ? (
        <rect className="mark" x={-9 * px} y={-4 * px} width={18 * px} height={8 * px} rx={4 * px} />
      ) : null}
    </g>
  );
}

/** Its tip on the point, its body within the dart. */
const arrowhead = (r: number): string => `M0 ${0.2 * r}L${0.75 * r} ${-1.3 * r}L${-0.75 * r} ${-1.3 * r}Z`;

const diamond = (r: number): string => `M0 ${-r}L${r} 0L0 ${r}L${-r} 0Z`;

/** A small wedge pointing away from the leg. */
const tick = (lean: number, r: number): string => {
  const way = Math.sign(lean) || 1;
  return `M${way * 0.35 * r} ${-r}L${way * 2 * r} 0L${way * 0.35 * r} ${r}Z`;
};
