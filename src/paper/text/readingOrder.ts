// Parts of a line that are read each in its own direction, from left to right one after the other.

/** Separates the parts of a line. */
export const BETWEEN_PARTS = ' · ';

/** The blocks of Unicode for scripts that are read from right to left. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/**
 * A line for a program that puts letters in their order itself. Where a part is read from right to left each part stands in
 * isolates, Unicode Standard Annex 9; any other line is as it was.
 */
export const isolated = (line: string): string => isolatedParts(line.split(BETWEEN_PARTS), BETWEEN_PARTS);

/** The same of parts that are separated otherwise. */
export const isolatedParts = (parts: readonly string[], between: string): string =>
  (parts.some((part) => RIGHT_TO_LEFT.test(part)) ? parts.map((part) => `\u2068${part}\u2069`) : parts).join(
    between,
  );
