// Lays outlines out in rows, grain upright, with a gap between them.

import type { Point } from '../../engine';
import { type Box, boxAround } from '../geometry/box';

/** Gap between two panels, for the shears and for texts beside an edge. mm */
export const GAP_MM = 10;

export interface Arrangement {
  /** Offset of each outline, in the order of the outlines. */
  readonly offsets: readonly Point[];
  /** Size of the box around all outlines, mm. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly rows: number;
}

/**
 * Outlines in rows no wider than `mostWidthMm`, from the top left corner; a wider outline gets a row of its own, and each row is
 * as high as its highest outline. They keep their order, so that neighbours on the body lie side by side, or are sorted by height
 * with `byHeight`, the highest first.
 */
export function arrange(
  outlines: readonly (readonly Point[])[],
  mostWidthMm: number,
  byHeight = false,
): Arrangement {
  return arrangeBoxes(boxesOf(outlines), mostWidthMm, byHeight);
}

/** The boxes around outlines, to be arranged more than once. */
export const boxesOf = (outlines: readonly (readonly Point[])[]): Box[] =>
  outlines.map((ring) => boxAround(ring) ?? NOWHERE);

/** Outlines in rows, as {@link arrange} lays them, by the boxes around them. */
export function arrangeBoxes(boxes: readonly Box[], mostWidthMm: number, byHeight = false): Arrangement {
  const order = boxes.map((_, i) => i);
  if (byHeight) order.sort((a, b) => heightOf(boxes, b) - heightOf(boxes, a) || a - b);
  const offsets: Point[] = boxes.map(() => ({ x: 0, y: 0 }));
  let [x, y, rowHeight, widthMm] = [0, 0, 0, 0];
  let rows = Math.min(1, boxes.length);
  for (const i of order) {
    const box = boxes[i] as Box;
    const width = box.right - box.left;
    if (x > 0 && x + width > mostWidthMm) {
      [x, y] = [0, y + rowHeight + GAP_MM];
      rowHeight = 0;
      rows += 1;
    }
    offsets[i] = { x: x - box.left, y: y - box.top };
    widthMm = Math.max(widthMm, x + width);
    rowHeight = Math.max(rowHeight, box.bottom - box.top);
    x += width + GAP_MM;
  }
  return { offsets, widthMm, heightMm: y + rowHeight, rows };
}

const NOWHERE: Box = { left: 0, top: 0, right: 0, bottom: 0 };

const heightOf = (boxes: readonly Box[], i: number): number => {
  const box = boxes[i] ?? NOWHERE;
  return box.bottom - box.top;
};
