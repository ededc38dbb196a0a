// Outlines of letters.

/** A step of an outline as in SVG: M, L, Q, C with absolute places, x to the right, y up from the baseline; Z closes. */
export interface OutlineStep {
  readonly type: 'M' | 'L' | 'Q' | 'C' | 'Z';
  readonly values: readonly number[];
}

/** A line, or a run of one, in outlines; places and advance in thousandths of the size, from its start. */
export interface SetLine {
  readonly outline: readonly OutlineStep[];
  readonly advance: number;
}
