// Turns a panel by quarter turns. Nothing is mirrored.

/** Quarter turns counter-clockwise as seen on paper: 2 is upside down, 1 has the head to the left. */
export type Turns = 0 | 1 | 2 | 3;

/** A copy of plain data with every point in it, at any depth, turned about 0, 0. */
export function turnedBy<T>(data: T, turns: Turns): T {
  return (turns === 0 ? data : turned(data, turns)) as T;
}

function turned(data: unknown, turns: Turns): unknown {
  if (Array.isArray(data)) return data.map((part) => turned(part, turns));
  if (typeof data !== 'object' || data === null) return data;
  const { x, y } = data as { readonly x?: unknown; readonly y?: unknown };
  const parts = Object.entries(data).map(([name, part]: [string, unknown]) => [name, turned(part, turns)]);
  if (typeof x !== 'number' || typeof y !== 'number') return Object.fromEntries(parts);
  const [turnedX, turnedY] = POINTS[turns](x, y);
  return { ...Object.fromEntries(parts), x: turnedX, y: turnedY };
}

/** Zero less a number is never −0. */
const POINTS: Readonly<Record<Turns, (x: number, y: number) => readonly [number, number]>> = {
  0: (x, y) => [x, y],
  1: (x, y) => [y, 0 - x],
  2: (x, y) => [0 - x, 0 - y],
  3: (x, y) => [0 - y, x],
};
