// A panel with its head down: the grain keeps its line, and nothing is mirrored.

/** A copy of plain data in which every point, wherever it stands, is turned about 0, 0 by half a turn. */
export function halfTurned<T>(data: T): T {
  return turned(data) as T;
}

function turned(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(turned);
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(
    Object.entries(data).map(([name, part]: [string, unknown]) => [
      name,
      (name === 'x' || name === 'y') && typeof part === 'number' ? 0 - part : turned(part),
    ]),
  );
}
