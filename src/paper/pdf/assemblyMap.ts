// How the sheets go together, drawn small: their names over the outlines of the panels.

import { pieceLabel } from '../../document';
import type { Point } from '../../engine';
import { type Box, boxAround } from '../ink';
import type { Layout } from '../layOut';
import { ownPartOf, sheetName, stepAcross, stepDown } from '../sheets/grid';
import { textWidth } from '../text/textWidth';
import type { Pen } from './pen';

/** Draws the map as large as it fits, in the top left of a box of the page; gives back the height it took, mm. */
export function drawMap(pen: Pen, { grid, panels, sheets }: Layout, box: Box): number {
  if (sheets.length === 0) return 0;
  const width = grid.columns * stepAcross(grid) + grid.overlapMm;
  const height = grid.rows * stepDown(grid) + grid.overlapMm;
  const scale = Math.min((box.right - box.left) / width, (box.bottom - box.top) / height);
  const onMap = ({ x, y }: Point): Point => ({ x: box.left + x * scale, y: box.top + y * scale });
  const frame = ({ left, top, right, bottom }: Box): Point[] =>
    [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
      { x: left, y: top },
    ].map(onMap);

  const printed = new Set(sheets.map(sheetName));
  for (let row = 0; row < grid.rows; row += 1)
    for (let column = 0; column < grid.columns; column += 1)
      if (!printed.has(sheetName({ row, column })))
        pen.line('mapBlank', frame(ownPartOf(grid, { row, column })));
  for (const { piece, offset } of panels) {
    const points = piece.cutLine.map(({ x, y }) => onMap({ x: x + offset.x, y: y + offset.y }));
    if (points[0]) pen.line('mapPanel', [...points, points[0]]);
    writeLabel(pen, pieceLabel(piece), boxAround(points));
  }
  const nameSize = Math.min(16, 0.3 * Math.min(stepAcross(grid), stepDown(grid)) * scale * 2.83);
  for (const place of sheets) {
    const own = ownPartOf(grid, place);
    pen.line('mapSheet', frame(own));
    const { x, y } = onMap({ x: own.left, y: own.top });
    const start = { x: x + 0.12 * nameSize, y: y + 0.34 * nameSize };
    pen.text({ text: sheetName(place), start, turnRad: 0, sizePt: nameSize, bold: true });
  }
  return height * scale;
}

/** The panel's name upright in its middle, as large as its width allows. */
function writeLabel(pen: Pen, label: string, box: Box | null): void {
  if (!box) return;
  const most = box.right - box.left;
  const sizePt = Math.min(7, (7 * 0.7 * most) / textWidth(label, 7, false));
  const width = textWidth(label, sizePt, false);
  const start = { x: (box.left + box.right - width) / 2, y: box.top + 0.42 * (box.bottom - box.top) };
  pen.text({ text: label, start, turnRad: 0, sizePt, bold: false }, 0.35);
}
