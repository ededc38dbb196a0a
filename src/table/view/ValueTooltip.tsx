// What a pull says beside the grip: the number, what it rests on, and how wide the panels on both sides are.

import { type RefObject, useState } from 'react';
import { type Draft, xAt } from '../../engine';
import type { Handle } from '../handles/handle';
import { type CanvasLayout, onCanvas } from '../layout/layout';
import type { PanelBeside } from '../layout/panelsBeside';
import type { Size, Viewport } from '../layout/viewport';
import { type Box, placeTooltip } from './tooltipPlace';

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
  /** Pulled by a finger, which hides more than a mouse. */
  readonly finger: boolean;
}

/** Generous for any face the text may be set in, px for a letter of 13 px; the parts of a fraction are small. */
const LETTER_PX = 7.6;
const SMALL_PX = 4.6;
const LINE_PX = 19;

export function ValueTooltip(props: ValueTooltipProps) {
  const { handle, text, beside, nameOf, draft, layout, view, size, canvas, finger } = props;
  // It is there for one pull, in which the page stands still and the bubble keeps to its side.
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
    <g className="bubble" transform={`translate(${view.left + x * px} ${view.top + y * px}) scale(${px})`}>
      <rect width={tooltip.width} height={tooltip.height} rx={5} />
      {lines.map((line, i) => (
        <text
          key={line}
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

/** The number, and the panels on one line below it, or where there is no room for that, under each other. */
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

/** The level lines, and the edge itself where that is pulled. Table mm. */
function watchedLines({ kind, level, at }: Handle, { levels }: Draft) {
  const lines = levels.map(({ name, y }) => ({ x: 0, y, watched: name === level }));
  return kind === 'edge' || kind === 'node' ? [...lines, { x: 0, y: at.y, watched: true }] : lines;
}

/** From leg to leg of the wedge in hand at the height of its handle, table mm; nothing for a handle of the edges. */
function wedgeAcross({ block, wedge, at }: Handle, draft: Draft, layout: CanvasLayout): number[] {
  const drafted = block ? draft.blocks?.[block].wedges.find(({ id }) => id === wedge) : undefined;
  if (!block || !drafted) return [];
  return [drafted.innerLeg, drafted.outerLeg].map(
    (leg) => onCanvas(layout, block, { x: xAt(leg, at.y), y: at.y }).x,
  );
}

/** How much of the table a look from the top meets at least, px. */
const LOOK_PX = 8;

/** What of the table is not beyond the window or under what lies over it. */
function inView(canvas: SVGSVGElement | null, { width, height }: Size): Box {
  const whole = { left: 0, top: 0, right: width, bottom: height };
  if (!canvas) return whole;
  const box = canvas.getBoundingClientRect();
  const bottom = Math.min(height, window.innerHeight - box.top);
  let top = Math.max(0, -box.top);
  while (top < bottom && !canvas.contains(document.elementFromPoint(box.left + width / 2, box.top + top + 1)))
    top += LOOK_PX;
  return {
    left: Math.max(0, -box.left),
    top: top < bottom ? top : 0,
    right: Math.min(width, window.innerWidth - box.left),
    bottom,
  };
}
