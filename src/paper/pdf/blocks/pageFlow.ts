// Sets texts and figures below each other over as many pages as they take.

import { PATTERN } from '../../../document';
import type { Point } from '../../../engine';
import { MM_PER_POINT, wrapped } from '../../text/textWidth';
import { settable } from '../../text/writable';
import type { PdfCanvas } from '../file/pdfCanvas';

/** An upright page. */
export interface FlowPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
}

export interface TextStyle {
  readonly sizePt: number;
  readonly bold?: boolean;
  readonly grey?: number;
  /** Gap above it, mm. */
  readonly before?: number;
  /** Kept free at the right for a figure, mm. */
  readonly right?: number;
}

export interface Flow {
  /** Counted from 1. */
  readonly page: number;
  /** Top of the next line, mm from the top of the page. */
  readonly y: number;
  readonly leftMm: number;
  readonly widthMm: number;
  /** Begins a page unless this height is left or the page has just been begun. */
  need(heightMm: number): void;
  /** Height of a text, mm. */
  heightOf(text: string, textStyle: TextStyle): number;
  text(text: string, textStyle: TextStyle): void;
  /** Writes a row of a table; each cell wraps within its column. Columns are shares of the width. */
  row(cells: readonly string[], columns: readonly number[], textStyle: TextStyle): void;
  heightOfRow(cells: readonly string[], columns: readonly number[], textStyle: TextStyle): number;
  rule(): void;
  space(heightMm: number): void;
  /** Draws at the present height and leaves it as it is. */
  draw(drawing: (canvas: PdfCanvas, corner: Point) => void): void;
}

const LINE = 1.32;
const CELL_GAP_MM = 2;
const FOOT_MM = 6;

/** Makes a flow that begins with a page from `newPage`; `foot` is written on each page with its number. */
export function flowOver(newPage: () => PdfCanvas, page: FlowPage, foot: string): Flow {
  const { marginMm } = page;
  const leftMm = marginMm;
  const widthMm = page.widthMm - 2 * marginMm;
  const bottom = page.heightMm - marginMm - FOOT_MM;
  let canvas: PdfCanvas;
  let y = 0;
  let number = 0;
  const begin = (): void => {
    canvas = newPage();
    number += 1;
    y = marginMm;
    const footText = PATTERN.page({ foot: settable(foot), number });
    canvas.text(
      {
        text: footText,
        start: { x: leftMm, y: page.heightMm - marginMm },
        turnRad: 0,
        sizePt: 7,
        bold: false,
      },
      0.35,
    );
  };
  begin();
  const lineMm = ({ sizePt }: TextStyle): number => sizePt * MM_PER_POINT * LINE;
  const write = (
    text: string,
    x: number,
    top: number,
    { sizePt, bold = false, grey = 0 }: TextStyle,
  ): void => {
    const start = { x, y: top + sizePt * MM_PER_POINT };
    canvas.text({ text, start, turnRad: 0, sizePt, bold }, grey);
  };
  const linesOf = (text: string, { sizePt, bold = false }: TextStyle, most: number): string[] =>
    wrapped(settable(text), sizePt, bold, most);
  const flow: Flow = {
    get page() {
      return number;
    },
    get y() {
      return y;
    },
    leftMm,
    widthMm,
    need(heightMm) {
      if (y + heightMm > bottom && y > marginMm) begin();
    },
    heightOf(text, textStyle) {
      return (
        (textStyle.before ?? 0) +
        linesOf(text, textStyle, widthMm - (textStyle.right ?? 0)).length * lineMm(textStyle)
      );
    },
    text(text, textStyle) {
      y += textStyle.before ?? 0;
      for (const line of linesOf(text, textStyle, widthMm - (textStyle.right ?? 0))) {
        flow.need(lineMm(textStyle));
        write(line, leftMm, y, textStyle);
        y += lineMm(textStyle);
      }
    },
    row(cells, columns, textStyle) {
      const height = flow.heightOfRow(cells, columns, textStyle);
      flow.need(height);
      y += textStyle.before ?? 0;
      let x = leftMm;
      for (const [i, share] of columns.entries()) {
        const width = share * (widthMm - (textStyle.right ?? 0));
        for (const [n, line] of linesOf(cells[i] ?? '', textStyle, width - CELL_GAP_MM).entries())
          write(line, x, y + n * lineMm(textStyle), textStyle);
        x += width;
      }
      y += height - (textStyle.before ?? 0);
    },
    heightOfRow(cells, columns, textStyle) {
      const most = Math.max(
        1,
        ...columns.map((share, i) => {
          const width = share * (widthMm - (textStyle.right ?? 0)) - CELL_GAP_MM;
          return linesOf(cells[i] ?? '', textStyle, width).length;
        }),
      );
      return (textStyle.before ?? 0) + most * lineMm(textStyle);
    },
    rule() {
      canvas.line('rule', [
        { x: leftMm, y },
        { x: leftMm + widthMm, y },
      ]);
    },
    space(heightMm) {
      y += heightMm;
    },
    draw(drawing) {
      drawing(canvas, { x: leftMm, y });
    },
  };
  return flow;
}
