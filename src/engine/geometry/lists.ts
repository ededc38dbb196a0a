// Elements of lists that must be there, so that no caller needs a cast.

/**
 * The element at an index.
 *
 * @param i from 0 to the list's length less 1
 * @throws RangeError where the list has no such element
 */
export function at<T>(list: readonly T[], i: number): T {
  const element = list[i];
  if (element === undefined) missing(list, i);
  return element;
}

// Apart from its callers, which are then short enough to be compiled into the loops that call them.
function missing(list: readonly unknown[], i: number): never {
  throw new RangeError(`no element ${i} in a list of ${list.length}`);
}

/**
 * The number at an index that is known to be inside the list: it is not checked, because the inner loops of the smooth lines
 * consist of little else.
 *
 * @param i from 0 to the list's length less 1
 */
export const numberAt = (numbers: readonly number[], i: number): number => numbers[i] as number;

/** The first element of a list. Throws a RangeError where it is empty. */
export const first = <T>(list: readonly T[]): T => at(list, 0);

/** The last element of a list. Throws a RangeError where it is empty. */
export const last = <T>(list: readonly T[]): T => at(list, list.length - 1);

/**
 * Each two neighbours of a list, one pair fewer than it has elements; none for fewer than two elements. It allocates a tuple for
 * each pair, so loops that run many times for each draft use indices and {@link at} instead.
 */
export const pairs = <T>(list: readonly T[]): [T, T][] =>
  list.slice(1).map((element, i) => [at(list, i), element]);

/** The same of a ring, with the pair of its last element and its first as the last one: as many pairs as elements. */
export const ringPairs = <T>(ring: readonly T[]): [T, T][] =>
  ring.map((element, i) => [element, at(ring, (i + 1) % ring.length)]);
