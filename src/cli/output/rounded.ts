// Numbers as the files for other programs have them.

/** A number to the nearest millionth, in its own unit; never −0. */
export const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
