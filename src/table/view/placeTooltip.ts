// Places the tooltip during a pull: near the handle, but not over the handle, nor over the level line or the wedge that the user
// watches.

import type { ScreenPoint, Size } from '../layout/viewport';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** All in px of the screen, from the canvas's top-left corner. */
export interface TooltipRequest {
  /** The handle. */
  readonly at: ScreenPoint;
  readonly tooltip: Size;
  /** The visible part of the canvas. */
  readonly room: Box;
  /** The pulled wedge at the height of its handle. */
  readonly wedge: { readonly left: number; readonly right: number };
  /** Heights of the level lines; `watched`: the one at which the value or the widths beside it are measured. */
  readonly lines: readonly { readonly y: number; readonly watched: boolean }[];
  readonly finger: boolean;
  /** The preferred side; the same for a whole pull, so that the tooltip does not jump. */
  readonly side: 'left' | 'right';
}

/** What a pointer hides round a handle: a mouse pointer points up at it, a finger comes from below. px */
const HIDDEN: Readonly<Record<'mouse' | 'finger', Box>> = {
  mouse: { left: 18, top: 18, right: 18, bottom: 24 },
  finger: { left: 34, top: 34, right: 34, bottom: 66 },
};
/** Space kept free on both sides of a level line, px. */
const OFF_LINE_PX = 8;
/** A line nearer to the handle than this counts as watched, px. */
const NEAR_PX = 40;
/** Space kept to the rim of the visible part, px. */
const RIM_PX = 4;

/** The cost of covering each thing, in px of distance from the handle. */
const COST = {
  place: 4000,
  watchedLine: 1000,
  belowFinger: 150,
  line: 60,
  wedge: 80,
  otherSide: 20,
} as const;

/** The top-left corner of the tooltip: of the candidates beside, above and below the handle, the one of least cost. */
export function placeTooltip(request: TooltipRequest): ScreenPoint {
  const { at, tooltip, room, wedge, lines } = request;
  const hidden = HIDDEN[request.finger ? 'finger' : 'mouse'];
  const aside = request.finger ? hidden.right : RIM_PX * 3;
  const lefts = [wedge.right + aside, wedge.left - aside - tooltip.width, at.x - tooltip.width / 2];
  const tops = [
    at.y - tooltip.height / 2,
    at.y - hidden.top - tooltip.height,
    at.y + hidden.bottom,
    ...lines.flatMap(({ y }) => [y - OFF_LINE_PX - tooltip.height, y + OFF_LINE_PX]),
  ];
  let best: ScreenPoint = { x: room.left, y: room.top };
  let least = Number.POSITIVE_INFINITY;
  for (const left of lefts)
    for (const top of tops) {
      const spot = {
        x: clamp(left, room.left + RIM_PX, room.right - RIM_PX - tooltip.width),
        y: clamp(top, room.top + RIM_PX, room.bottom - RIM_PX - tooltip.height),
      };
      const cost = costOf(spot, request, hidden);
      if (cost >= least) continue;
      best = spot;
      least = cost;
    }
  return best;
}

function costOf(
  spot: ScreenPoint,
  { at, tooltip, wedge, lines, finger, side }: TooltipRequest,
  hidden: Box,
): number {
  const box = { left: spot.x, top: spot.y, right: spot.x + tooltip.width, bottom: spot.y + tooltip.height };
  const place = {
    left: at.x - hidden.left,
    top: at.y - hidden.top,
    right: at.x + hidden.right,
    bottom: at.y + hidden.bottom,
  };
  const away = Math.hypot(
    Math.max(0, box.left - at.x, at.x - box.right),
    Math.max(0, box.top - at.y, at.y - box.bottom),
  );
  const overLines = lines
    .filter(({ y }) => y > box.top - OFF_LINE_PX / 2 && y < box.bottom + OFF_LINE_PX / 2)
    .map(({ y, watched }) => (watched || Math.abs(y - at.y) < NEAR_PX ? COST.watchedLine : COST.line));
  const middle = spot.x + tooltip.width / 2;
  return (
    away +
    (meet(box, place) ? COST.place : 0) +
    overLines.reduce((sum: number, each) => sum + each, 0) +
    (box.left < wedge.right && box.right > wedge.left ? COST.wedge : 0) +
    (finger && box.bottom > at.y + hidden.top ? COST.belowFinger : 0) +
    (side === 'left' ? (middle > at.x ? COST.otherSide : 0) : middle < at.x ? COST.otherSide : 0)
  );
}

const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && a.right > b.left && a.top < b.bottom && a.bottom > b.top;

const clamp = (value: number, least: number, most: number): number =>
  Math.max(least, Math.min(value, Math.max(least, most)));
