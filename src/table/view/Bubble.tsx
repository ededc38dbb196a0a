// What a pull says beside the grip: the number, what it rests on, and how wide the panels on both sides are.

import type { Handle } from '../handle';
import type { PanelBeside } from '../panelsBeside';
import type { Size, Viewport } from './viewport';

interface BubbleProps {
  readonly handle: Handle;
  readonly text: string;
  readonly beside: readonly [PanelBeside | null, PanelBeside | null];
  readonly nameOf: (panel: PanelBeside) => string;
  readonly view: Viewport;
  readonly size: Size;
}

/** Generous for any face the text may be set in, px for a letter of 13 px. */
const LETTER_PX = 7.6;
const LINE_PX = 19;
/** Above the grip, out from under a finger, px. */
const RISE_PX = 34;

export function Bubble({ handle, text, beside, nameOf, view, size }: BubbleProps) {
  const px = 1 / view.pxPerMm;
  const [left, right] = beside;
  const sides = [left ? `◂ ${nameOf(left)}` : '', right ? `${nameOf(right)} ▸` : ''].filter(
    (each) => each !== '',
  );
  const lines = sides.length > 0 ? [text, sides.join(' · ')] : [text];
  const width = Math.max(...lines.map((line) => line.length)) * LETTER_PX + 20;
  const height = lines.length * LINE_PX + 10;
  const at = { x: (handle.at.x - view.left) / px, y: (handle.at.y - view.top) / px };
  const x = Math.min(Math.max(4, at.x - width / 2), Math.max(4, size.width - width - 4));
  const above = at.y - RISE_PX - height;
  const y = above > 4 ? above : at.y + RISE_PX;
  return (
    <g className="bubble" transform={`translate(${view.left + x * px} ${view.top + y * px}) scale(${px})`}>
      <rect width={width} height={height} rx={5} />
      {lines.map((line, i) => (
        <text
          key={i === 0 ? 'number' : 'beside'}
          className={i === 0 ? 'number' : 'beside'}
          x={width / 2}
          y={LINE_PX * (i + 1)}
          fontSize={13}
        >
          {line}
        </text>
      ))}
    </g>
  );
}
