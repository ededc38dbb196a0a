// The key of a nested print: the line and the number of each size, with its name and girths.

import { formatLength, NESTED } from '../../../document';
import type { Point } from '../../../engine';
import type { NestedInput } from '../../nested/nestedInput';
import { dashOfSize, numbersOfSizes } from '../../nested/sizeLines';
import { shortened } from '../../text/textWidth';
import { settable } from '../../text/writable';
import type { PdfCanvas } from '../file/pdfCanvas';

const ROW_MM = 4.6;
const LINE_MM = 26;
const NUMBER_MM = 9;
const TEXT_PT = 7.5;
const HEADING_PT = 10;

/** Height of the key with its heading, mm, in so many columns. */
export const keyHeight = ({ sizes }: NestedInput, columns: number): number =>
  6 + Math.ceil(sizes.length / columns) * ROW_MM;

/** Draws the key with its top left corner at `at`, in columns of `widthMm`. */
export function drawKey(
  canvas: PdfCanvas,
  { sizes, unit }: NestedInput,
  at: Point,
  widthMm: number,
  columns: number,
): void {
  const write = (text: string, x: number, y: number, sizePt: number, bold: boolean): void =>
    canvas.text({ text, start: { x, y }, turnRad: 0, sizePt, bold });
  write(NESTED.key, at.x, at.y + 3.4, HEADING_PT, true);
  const numbers = numbersOfSizes(sizes.map(({ name }) => name));
  const rows = Math.ceil(sizes.length / columns);
  for (const [i, { name, measurements }] of sizes.entries()) {
    const x = at.x + Math.floor(i / rows) * widthMm;
    const y = at.y + 6 + ((i % rows) + 0.7) * ROW_MM;
    const line = [
      { x, y: y - 1 },
      { x: x + LINE_MM, y: y - 1 },
    ];
    canvas.line('cut', line, 0, dashOfSize(i));
    write(settable(numbers[i] ?? ''), x + LINE_MM + 2, y, TEXT_PT, true);
    const text = NESTED.size({
      name: numbers[i] === name ? null : settable(name),
      girths: [measurements.bust, measurements.waist, measurements.hip].map((mm) =>
        formatLength(mm ?? Number.NaN, unit),
      ),
      unit,
    });
    const left = x + LINE_MM + 2 + NUMBER_MM;
    write(shortened(text, TEXT_PT, false, x + widthMm - 2 - left), left, y, TEXT_PT, false);
  }
}
