// A grid index of segments, so that those near a place are found without a search through all of them.

import type { Point } from '../../engine';
import type { Box } from './box';

export type Segment = readonly [Point, Point];

/** Side of a cell of the index; about the size of the boxes that are asked for. mm */
const CELL_MM = 40;

/** Makes a function that gives the segments whose cells a box touches, each once: all that reach into the box and some near it. */
export function nearSegments(lines: readonly (readonly Point[])[]): (box: Box) => Segment[] {
  const cells = new Map<number, Segment[]>();
  const key = (column: number, row: number): number => row * 65_536 + column;
  const each = (
    left: number,
    top: number,
    right: number,
    bottom: number,
    visit: (key: number) => void,
  ): void => {
    for (let row = Math.floor(top / CELL_MM); row <= Math.floor(bottom / CELL_MM); row += 1)
      for (let column = Math.floor(left / CELL_MM); column <= Math.floor(right / CELL_MM); column += 1)
        visit(key(column, row));
  };
  for (const line of lines)
    for (let i = 1; i < line.length; i += 1) {
      const segment: Segment = [line[i - 1] as Point, line[i] as Point];
      const [a, b] = segment;
      each(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y), (at) => {
        const there = cells.get(at);
        if (there) there.push(segment);
        else cells.set(at, [segment]);
      });
    }
  return ({ left, top, right, bottom }) => {
    const found = new Set<Segment>();
    each(left, top, right, bottom, (at) => {
      for (const segment of cells.get(at) ?? []) found.add(segment);
    });
    return [...found];
  };
}
