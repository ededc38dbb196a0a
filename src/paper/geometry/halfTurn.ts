// Turns a panel upside down. The grain stays upright and nothing is mirrored.

/** A copy of plain data with every point in it, at any depth, turned about 0, 0 by π. */
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
