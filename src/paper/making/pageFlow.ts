// Words and figures set below each other over as many pages as they take.

import type { Point } from '../../engine';
import type { Pen } from '../pdf/pen';
import { MM_PER_POINT, wrapped } from '../text/textWidth';
import { settable } from '../text/writable';

/** An upright page. */
export interface FlowPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
}

export interface FlowText {
  readonly sizePt: number;
  readonly bold?: boolean;
  readonly grey?: number;
  /** Room above it, mm. */
  readonly before?: number;
  /** Kept free at the right for a figure, mm. */
  readonly right?: number;
}

export interface Flow {
  /** Counted from 1. */
  readonly page: number;
  /** Height of the next line's upper edge, mm from the top of the page. */
  readonly y: number;
  readonly leftMm: number;
  readonly widthMm: number;
  /** Begins a page unless this much room is left below; a page just begun is taken as it is. */
  need(heightMm: number): void;
  /** Height that a text takes, mm. */
  heightOf(text: string, look: FlowText): number;
  text(text: string, look: FlowText): void;
  /** One row of a table; each cell wraps within its column. Columns are parts of the width. */
  row(cells: readonly string[], columns: readonly number[], look: FlowText): void;
  heightOfRow(cells: readonly string[], columns: readonly number[], look: FlowText): number;
  rule(): void;
  space(heightMm: number): void;
  /** Draws at the present height without moving it. */
  draw(drawing: (pen: Pen, corner: Point) => void): void;
}

const LINE = 1.32;
const CELL_GAP_MM = 2;
const FOOT_MM = 6;

/** Begins with a page from `newPage`; `foot` stands on each page with its number. */
export function flowOver(newPage: () => Pen, page: FlowPage, foot: string): Flow {
  const { marginMm } = page;
  const leftMm = marginMm;
  const widthMm = page.widthMm - 2 * marginMm;
  const bottom = page.heightMm - marginMm - FOOT_MM;
  let pen: Pen;
  let y = 0;
  let number = 0;
  const begin = (): void => {
    pen = newPage();
    number += 1;
    y = marginMm;
    const words = `${settable(foot)} · page ${number}`;
    pen.text(
      { text: words, start: { x: leftMm, y: page.heightMm - marginMm }, turnRad: 0, sizePt: 7, bold: false },
      0.35,
    );
  };
  begin();
  const lineMm = ({ sizePt }: FlowText): number => sizePt * MM_PER_POINT * LINE;
  const put = (text: string, x: number, top: number, { sizePt, bold = false, grey = 0 }: FlowText): void => {
    const start = { x, y: top + sizePt * MM_PER_POINT };
    pen.text({ text, start, turnRad: 0, sizePt, bold }, grey);
  };
  const linesOf = (text: string, { sizePt, bold = false }: FlowText, most: number): string[] =>
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
    heightOf(text, look) {
      return (look.before ?? 0) + linesOf(text, look, widthMm - (look.right ?? 0)).length * lineMm(look);
    },
    text(text, look) {
      y += look.before ?? 0;
      for (const line of linesOf(text, look, widthMm - (look.right ?? 0))) {
        flow.need(lineMm(look));
        put(line, leftMm, y, look);
        y += lineMm(look);
      }
    },
    row(cells, columns, look) {
      const height = flow.heightOfRow(cells, columns, look);
      flow.need(height);
      y += look.before ?? 0;
      let x = leftMm;
      for (const [i, share] of columns.entries()) {
        const width = share * (widthMm - (look.right ?? 0));
        for (const [n, line] of linesOf(cells[i] ?? '', look, width - CELL_GAP_MM).entries())
          put(line, x, y + n * lineMm(look), look);
        x += width;
      }
      y += height - (look.before ?? 0);
    },
    heightOfRow(cells, columns, look) {
      const most = Math.max(
        1,
        ...columns.map((share, i) => {
          const width = share * (widthMm - (look.right ?? 0)) - CELL_GAP_MM;
          return linesOf(cells[i] ?? '', look, width).length;
        }),
      );
      return (look.before ?? 0) + most * lineMm(look);
    },
    rule() {
      pen.line('rule', [
        { x: leftMm, y },
        { x: leftMm + widthMm, y },
      ]);
    },
    space(heightMm) {
      y += heightMm;
    },
    draw(drawing) {
      drawing(pen, { x: leftMm, y });
    },
  };
  return flow;
}
