// The tooltip during a pull: the value, what it has snapped to, and the widths of the panels on both sides.

import { type RefObject, useState } from 'react';
import { type Draft, xAt } from '../../engine';
import type { Handle } from '../handles/handle';
import type { PanelBeside } from '../handles/panelsBeside';
import { type CanvasLayout, onCanvas } from '../layout/layOut';
import type { Size, Viewport } from '../layout/viewport';
import { type Box, placeTooltip } from './placeTooltip';

interface ValueTooltipProps {
  readonly handle: Handle;
  readonly text: string;
  readonly beside: readonly [PanelBeside | null, PanelBeside | null];
  readonly nameOf: (panel: PanelBeside) => string;
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  readonly view: Viewport;
  readonly size: Size;
  readonly canvas: RefObject<SVGSVGElement | null>;
  /** True for a pull by a finger, which hides more than a mouse pointer. */
  readonly finger: boolean;
}

/** Width of a letter and of a part of a fraction, px, at a font size of 13 px: upper bounds for any font. */
const LETTER_PX = 7.6;
const SMALL_PX = 4.6;
const LINE_PX = 19;

export function ValueTooltip(props: ValueTooltipProps) {
  const { handle, text, beside, nameOf, draft, layout, view, size, canvas, finger } = props;
  // The tooltip exists for one pull, in which the page does not scroll and the tooltip keeps to its side.
  const [room] = useState(() => inView(canvas.current, size));
  const toPx = ({ x, y }: { x: number; y: number }) => ({
    x: (x - view.left) * view.pxPerMm,
    y: (y - view.top) * view.pxPerMm,
  });
  const at = toPx(handle.at);
  const [side] = useState<'left' | 'right'>(() => (at.x < (room.left + room.right) / 2 ? 'right' : 'left'));
  const lines = linesOf(text, beside, nameOf, size.width - 8);
  const tooltip = { width: widthOf(lines), height: lines.length * LINE_PX + 10 };
  const wedge = wedgeAcross(handle, draft, layout).map((x) => toPx({ x, y: 0 }).x);
  const { x, y } = placeTooltip({
    at,
    tooltip,
    room,
    wedge: { left: Math.min(at.x, ...wedge), right: Math.max(at.x, ...wedge) },
    lines: watchedLines(handle, draft).map((line) => ({ ...line, y: toPx(line).y })),
    finger,
    side,
  });
  const px = 1 / view.pxPerMm;
  return (
    <g
      className="value-tooltip"
      transform={`translate(${view.left + x * px} ${view.top + y * px}) scale(${px})`}
    >
      <rect width={tooltip.width} height={tooltip.height} rx={5} />
      {lines.map((line, i) => (
        <text
          // biome-ignore lint/suspicious/noArrayIndexKey: the lines keep their places, and a text that stays is only written anew
          key={i}
          className={i === 0 ? 'number' : 'beside'}
          x={tooltip.width / 2}
          y={LINE_PX * (i + 1)}
          fontSize={13}
        >
          {line}
        </text>
      ))}
    </g>
  );
}

/** The value, and the panels on one line below it, or on two where one is too wide. */
function linesOf(
  text: string,
  [left, right]: ValueTooltipProps['beside'],
  nameOf: ValueTooltipProps['nameOf'],
  room: number,
): string[] {
  const sides = [left ? `◂ ${nameOf(left)}` : '', right ? `${nameOf(right)} ▸` : ''].filter(
    (each) => each !== '',
  );
  if (sides.length === 0) return [text];
  const beside = sides.join(' · ');
  return widthOf([beside]) <= room ? [text, beside] : [text, ...sides];
}

const widthOf = (lines: readonly string[]): number =>
  20 +
  Math.max(
    ...lines.map((line) => {
      const small = line.match(/[ ·⁄⁰¹²³⁴-⁹₀-₉]/g)?.length ?? 0;
      return small * SMALL_PX + (line.length - small) * LETTER_PX;
    }),
  );

/** The level lines, and the edge itself where that is pulled. Canvas mm. */
function watchedLines({ kind, level, at }: Handle, { levels }: Draft) {
  const lines = levels.map(({ name, y }) => ({ x: 0, y, watched: name === level }));
  return kind === 'edge' || kind === 'node' ? [...lines, { x: 0, y: at.y, watched: true }] : lines;
}

/** The x of both legs of the pulled wedge at the height of its handle, canvas mm; none for a handle of the edges. */
function wedgeAcross({ block, wedge, at }: Handle, draft: Draft, layout: CanvasLayout): number[] {
  const drafted = block ? draft.blocks?.[block].wedges.find(({ id }) => id === wedge) : undefined;
  if (!block || !drafted) return [];
  return [drafted.innerLeg, drafted.outerLeg].map(
    (leg) => onCanvas(layout, block, { x: xAt(leg, at.y), y: at.y }).x,
  );
}

/** Step of the search for the top of what is visible, px. */
const SEARCH_STEP_PX = 8;

/** The part of the canvas that is within the window and not covered at its top, px. */
function inView(canvas: SVGSVGElement | null, { width, height }: Size): Box {
  const whole = { left: 0, top: 0, right: width, bottom: height };
  if (!canvas) return whole;
  const box = canvas.getBoundingClientRect();
  const bottom = Math.min(height, window.innerHeight - box.top);
  let top = Math.max(0, -box.top);
  while (top < bottom && !canvas.contains(document.elementFromPoint(box.left + width / 2, box.top + top + 1)))
    top += SEARCH_STEP_PX;
  return {
    left: Math.max(0, -box.left),
    top: top < bottom ? top : 0,
    right: Math.min(width, window.innerWidth - box.left),
    bottom,
  };
}
