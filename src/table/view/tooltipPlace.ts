// Where the number stands while a handle is pulled: near it, and off the place, the line and the wedge that are watched.

import type { Size } from '../layout/viewport';

interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** All in px of the screen, from the table's top-left corner on it. */
export interface TooltipRequest {
  /** Where the handle is. */
  readonly at: Spot;
  readonly tooltip: Size;
  /** What of the table is in view. */
  readonly room: Box;
  /** The wedge in hand at the height of its handle. */
  readonly wedge: { readonly left: number; readonly right: number };
  /** Heights of the level lines; `watched`: the one the number or the panels beside it are read at. */
  readonly lines: readonly { readonly y: number; readonly watched: boolean }[];
  readonly finger: boolean;
  /** The side it is on where both would do; the same for a whole pull, so that it does not go to and fro. */
  readonly side: 'left' | 'right';
}

/** What a hand hides round a handle: a mouse's arrow points up at it, a finger comes from below. px */
const HIDDEN: Readonly<Record<'mouse' | 'finger', Box>> = {
  mouse: { left: 18, top: 18, right: 18, bottom: 24 },
  finger: { left: 34, top: 34, right: 34, bottom: 66 },
};
/** Free on both sides of a level line, px. A line so near a handle is watched with it. */
const OFF_LINE_PX = 8;
const NEAR_PX = 40;
/** From the rim of what is in view, px. */
const RIM_PX = 4;

/** What it is worth to keep clear of, in px of being farther away from the handle. */
const WORTH = {
  place: 4000,
  watchedLine: 1000,
  belowFinger: 150,
  line: 60,
  wedge: 80,
  otherSide: 20,
} as const;

/** The top-left corner of the bubble: of all places beside, above and below, the one that hides least and is nearest. */
export function placeTooltip(asked: TooltipRequest): Spot {
  const { at, tooltip, room, wedge, lines } = asked;
  const hidden = HIDDEN[asked.finger ? 'finger' : 'mouse'];
  const aside = asked.finger ? hidden.right : RIM_PX * 3;
  const lefts = [wedge.right + aside, wedge.left - aside - tooltip.width, at.x - tooltip.width / 2];
  const tops = [
    at.y - tooltip.height / 2,
    at.y - hidden.top - tooltip.height,
    at.y + hidden.bottom,
    ...lines.flatMap(({ y }) => [y - OFF_LINE_PX - tooltip.height, y + OFF_LINE_PX]),
  ];
  let best: Spot = { x: room.left, y: room.top };
  let least = Number.POSITIVE_INFINITY;
  for (const left of lefts)
    for (const top of tops) {
      const spot = {
        x: clamp(left, room.left + RIM_PX, room.right - RIM_PX - tooltip.width),
        y: clamp(top, room.top + RIM_PX, room.bottom - RIM_PX - tooltip.height),
      };
      const cost = costOf(spot, asked, hidden);
      if (cost >= least) continue;
      best = spot;
      least = cost;
    }
  return best;
}

function costOf(
  spot: Spot,
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
    .map(({ y, watched }) => (watched || Math.abs(y - at.y) < NEAR_PX ? WORTH.watchedLine : WORTH.line));
  const middle = spot.x + tooltip.width / 2;
  return (
    away +
    (meet(box, place) ? WORTH.place : 0) +
    overLines.reduce((sum: number, each) => sum + each, 0) +
    (box.left < wedge.right && box.right > wedge.left ? WORTH.wedge : 0) +
    (finger && box.bottom > at.y + hidden.top ? WORTH.belowFinger : 0) +
    (side === 'left' ? (middle > at.x ? WORTH.otherSide : 0) : middle < at.x ? WORTH.otherSide : 0)
  );
}

const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && a.right > b.left && a.top < b.bottom && a.bottom > b.top;

const clamp = (value: number, least: number, most: number): number =>
  Math.max(least, Math.min(value, Math.max(least, most)));
