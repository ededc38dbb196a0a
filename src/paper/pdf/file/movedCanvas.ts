// A part of a page as a canvas of its own.

import type { Point } from '../../../engine';
import type { PdfCanvas } from './pdfCanvas';

/** Draws on a canvas with 0, 0 moved to a corner of its page, mm. */
export function movedCanvas(canvas: PdfCanvas, corner: Point): PdfCanvas {
  const onPage = ({ x, y }: Point): Point => ({ x: x + corner.x, y: y + corner.y });
  return {
    line: (kind, points, from, dash) => canvas.line(kind, points.map(onPage), from, dash),
    text: (placed, grey) => canvas.text({ ...placed, start: onPage(placed.start) }, grey),
    blank: (left, top, width, height) => canvas.blank(left + corner.x, top + corner.y, width, height),
    cover: (points) => canvas.cover(points.map(onPage)),
    within: (left, top, width, height, draw) =>
      canvas.within(left + corner.x, top + corner.y, width, height, draw),
  };
}
