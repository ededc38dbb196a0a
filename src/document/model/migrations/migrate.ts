// Bringing stored data of an earlier version up to this one, a version at a time.

/** Takes the data of one version and gives that of the next; may throw on data that is not of its version. */
type Migration = (old: unknown) => unknown;

/** A migration for each version before the present one, under the version it starts from. */
export type Migrations = Readonly<Record<number, Migration>>;

/** The data as of version `to`, or null where a step of the way is missing or fails. */
export function migrate(data: unknown, from: number, to: number, steps: Migrations): unknown {
  let current = data;
  for (let version = from; version < to; version += 1) {
    const step = steps[version];
    if (!step) return null;
    try {
      current = step(current);
    } catch {
      // Data that calls itself of a version need not be of it: the caller says that it cannot be read.
      return null;
    }
  }
  return current;
}
