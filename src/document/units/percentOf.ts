// What part of a girth a length is, as it is written on the screen.

/**
 * The part in percent, to a tenth: "6.8".
 *
 * @param part mm
 * @param whole mm
 * @returns null of a whole that is not measured, or that is nothing
 */
export const percentOf = (part: number, whole: number | null): string | null =>
  whole ? (Math.round((part / whole) * 1000) / 10).toFixed(1) : null;
