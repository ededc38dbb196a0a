// Calibration squares, which show whether a printer kept the scale.

import type { Point } from '../../../engine';
import { textWidth } from '../../text/textWidth';
import type { PdfCanvas } from '../file/pdfCanvas';

/** Draws a square with its top left corner at `corner` and the length along two sides. */
export function drawSquare(canvas: PdfCanvas, corner: Point, sideMm: number, length: string): void {
  const { x, y } = corner;
  canvas.line('calibration', [
    { x, y },
    { x: x + sideMm, y },
    { x: x + sideMm, y: y + sideMm },
    { x, y: y + sideMm },
    { x, y },
  ]);
  const half = textWidth(length, 12, true) / 2;
  const away = 7;
  canvas.text({
    text: length,
    start: { x: x + sideMm / 2 - half, y: y + away + 1.5 },
    turnRad: 0,
    sizePt: 12,
    bold: true,
  });
  canvas.text({
    text: length,
    start: { x: x + away + 1.5, y: y + sideMm / 2 + half },
    turnRad: -Math.PI / 2,
    sizePt: 12,
    bold: true,
  });
  arrows(canvas, { x: x + sideMm / 2, y: y + away }, sideMm / 2, half + 2.5, false);
  arrows(canvas, { x: x + away, y: y + sideMm / 2 }, sideMm / 2, half + 2.5, true);
}

/** Draws two arrows from the length out to two opposite sides of the square. */
function arrows(canvas: PdfCanvas, middle: Point, reach: number, gap: number, upright: boolean): void {
  const at = (along: number, sideways: number): Point =>
    upright
      ? { x: middle.x + sideways, y: middle.y + along }
      : { x: middle.x + along, y: middle.y + sideways };
  for (const sign of [-1, 1]) {
    const tip = sign * (reach - 0.6);
    canvas.line('rule', [at(sign * gap, 0), at(tip, 0)]);
    canvas.line('rule', [at(tip - sign * 2.4, -0.9), at(tip, 0), at(tip - sign * 2.4, 0.9)]);
  }
}
