// Places the text of an edge that is too short or too crowded for it inside the panel, with a leader to the edge.

import { isInside, type Point } from '../../engine';
import { boxAround } from '../geometry/box';
import { isClear, type Room } from './room';
import type { Stroke } from './strokes';
import { boxOf, cornersOf, setBlock, type TextBlock, type TextLine, type TurnedBox } from './textBlock';

export interface LeaderText {
  readonly block: TextBlock;
  readonly box: TurnedBox;
  readonly points: readonly [Point, Point];
  readonly leader: Stroke;
}

const STEP_MM = 3;
const CLEAR_MM = 0.7;

/**
 * The place nearest to `target` where the text lies inside the ring clear of every line and text, and its leader clear of every
 * text; null where there is none. Larger sizes are tried first.
 *
 * @param sidewaysRad the direction of a text that is set at a right angle
 */
export function leaderTextInside(
  line: Omit<TextLine, 'sizePt'>,
  sizesPt: readonly number[],
  sidewaysRad: number,
  target: Point,
  ring: readonly Point[],
  room: Room,
): LeaderText | null {
  const around = boxAround(ring);
  if (!around) return null;
  for (const sizePt of sizesPt) {
    const block = setBlock([{ ...line, sizePt }]);
    const found: { box: TurnedBox; away: number }[] = [];
    for (const turnRad of [0, sidewaysRad])
      for (let y = around.top; y <= around.bottom; y += STEP_MM)
        for (let x = around.left; x <= around.right; x += STEP_MM) {
          const box = boxOf(block, { x, y }, turnRad);
          const near = nearest(box, target);
          found.push({ box, away: Math.hypot(near.x - target.x, near.y - target.y) });
        }
    found.sort((a, b) => a.away - b.away);
    for (const { box } of found) {
      if (!isInside(ring, box.centre) || !isClear(room, box, CLEAR_MM)) continue;
      const points = [nearest(box, target), target] as const;
      const line: Room = { segments: [points], taken: [] };
      if (room.taken.every((other) => isClear(line, other, CLEAR_MM / 2)))
        return { block, box, points, leader: { kind: 'leader', points } };
    }
  }
  return null;
}

/** The point nearest to another, 0.4 mm outside a level or upright box. */
function nearest(box: TurnedBox, { x, y }: Point): Point {
  const around = boxAround(cornersOf(box)) ?? { left: x, right: x, top: y, bottom: y };
  return {
    x: Math.min(around.right + 0.4, Math.max(around.left - 0.4, x)),
    y: Math.min(around.bottom + 0.4, Math.max(around.top - 0.4, y)),
  };
}
