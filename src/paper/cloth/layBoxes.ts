// Where outlines lie at once, before any search: their boxes in columns across the cloth.

import type { Point } from '../../engine';

/** The box of an outline. */
export interface BoxToLay {
  /** Along the cloth, mm. */
  readonly length: number;
  /** Across the cloth, mm. */
  readonly width: number;
  /** It lies with its edge on the fold, which is the start across the cloth. */
  readonly onFold: boolean;
}

/** A column that is wider than the cloth by less lies on it. mm */
const EVEN_MM = 1e-9;

/**
 * Where the least of each box lies, x along the cloth and y across it, mm; any two are `gap` apart. The longest come first, each in
 * the first column that has room (first fit by decreasing height: Coffman, Garey, Johnson and Tarjan, SIAM Journal on Computing 9,
 * 1980); each on the fold begins a column.
 *
 * @param across the cloth, mm; no box is wider
 */
export function layBoxes(boxes: readonly BoxToLay[], across: number, gap: number): Point[] {
  const order = boxes
    .map((box, i) => ({ box, i }))
    .sort((a, b) => Number(b.box.onFold) - Number(a.box.onFold) || b.box.length - a.box.length || a.i - b.i);
  const columns: {
    readonly length: number;
    readonly boxes: { readonly i: number; readonly y: number }[];
    next: number;
  }[] = [];
  for (const { box, i } of order) {
    const found = box.onFold
      ? undefined
      : columns.find(({ length, next }) => box.length <= length && next + box.width <= across + EVEN_MM);
    const column = found ?? { length: box.length, boxes: [], next: 0 };
    if (!found) columns.push(column);
    column.boxes.push({ i, y: column.next });
    column.next += box.width + gap;
  }
  const places: Point[] = [];
  let x = 0;
  for (const column of columns) {
    for (const { i, y } of column.boxes) places[i] = { x, y };
    x += column.length + gap;
  }
  return places;
}
