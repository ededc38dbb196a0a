// The assembly map: the sheets with their names over the outlines of the panels, drawn small.

import { pieceLabel } from '../../document';
import type { Point } from '../../engine';
import { type Box, boxAround } from '../geometry/box';
import type { Layout } from '../layout/layOut';
import type { PlacedPanel } from '../layout/placePanels';
import { ownPartOf, sheetName, stepAcross, stepDown } from '../sheets/grid';
import { MM_PER_POINT, textWidth } from '../text/textWidth';
import type { PdfCanvas } from './file/pdfCanvas';

/** Scale at which the sheets fit into a box of the page; 0 or less where they do not. */
export function mapScale({ grid }: Layout, box: Box): number {
  const width = grid.columns * stepAcross(grid) + grid.overlapMm;
  const height = grid.rows * stepDown(grid) + grid.overlapMm;
  return Math.min((box.right - box.left) / width, (box.bottom - box.top) / height);
}

/** Draws the map as large as it fits at the top left of a box of the page. */
export function drawMap(canvas: PdfCanvas, layout: Layout, box: Box): void {
  const { grid, panels, sheets } = layout;
  const scale = mapScale(layout, box);
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
        canvas.line('mapBlank', frame(ownPartOf(grid, { row, column })));
  const columnAt = (x: number): number => Math.floor((x - box.left) / (stepAcross(grid) * scale));
  for (const panel of panels) {
    const points = panel.piece.cutLine.map(({ x, y }) =>
      onMap({ x: x + panel.offset.x, y: y + panel.offset.y }),
    );
    if (points[0]) canvas.line('mapPanel', [...points, points[0]]);
    writeLabel(canvas, panel, boxAround(points), onMap, columnAt);
  }
  const nameSize = Math.min(13, (0.3 * Math.min(stepAcross(grid), stepDown(grid)) * scale) / MM_PER_POINT);
  for (const position of sheets) {
    const own = ownPartOf(grid, position);
    canvas.line('mapSheet', frame(own));
    const { x, y } = onMap({ x: own.left, y: own.top });
    const name = sheetName(position);
    const [width, height] = [textWidth(name, nameSize, true), nameSize * MM_PER_POINT];
    // A white patch keeps outlines out of the name.
    canvas.blank(x + 0.3, y + 0.3, width + 1.4, height + 0.2);
    canvas.text({
      text: name,
      start: { x: x + 1, y: y + 0.9 * height },
      turnRad: 0,
      sizePt: nameSize,
      bold: true,
    });
  }
}

/**
 * Writes the panel's name, sized to the panel's width, at the height of its title, which is clear of the joints. It is turned
 * upright where a joint would cross it.
 */
function writeLabel(
  canvas: PdfCanvas,
  { piece, texts }: PlacedPanel,
  box: Box | null,
  onMap: (point: Point) => Point,
  columnAt: (x: number) => number,
): void {
  const title = texts[0];
  if (!box || !title) return;
  const label = pieceLabel(piece);
  const sizePt = Math.min(7, (7 * 0.75 * (box.right - box.left)) / textWidth(label, 7, false));
  const width = textWidth(label, sizePt, false);
  const left = (box.left + box.right - width) / 2;
  const at = onMap(title.start);
  const whole = columnAt(left - 0.5) === columnAt(left + width + 0.5);
  const start = whole ? { x: left, y: at.y } : { x: at.x + 0.7 * sizePt * MM_PER_POINT, y: at.y + width / 2 };
  canvas.text({ text: label, start, turnRad: whole ? 0 : -Math.PI / 2, sizePt, bold: false }, 0.3);
}
