// A cloth that pieces are laid on, and what is asked of the lay.

/** Lengths in mm. */
export interface Cloth {
  /** From selvedge to selvedge, the selvedges left out. */
  readonly widthMm: number;
  /** Folded along its length, selvedge on selvedge: half as wide, and each outline cuts two. */
  readonly folded: boolean;
  /** A nap or a one-way print: all heads lie towards the start of the cloth. */
  readonly nap: boolean;
  /** How far the grain may lie off the length of the cloth, degrees to either side; 0 where it must not. */
  readonly grainDegrees: number;
  /** Between two cut lines. */
  readonly gapMm: number;
  /** What the cloth will shrink by along and across, as parts of it; pieces are laid so much larger. */
  readonly shrinkAlong: number;
  readonly shrinkAcross: number;
}

/** The whole spans that are accepted. */
export const CLOTH_SPANS = {
  widthMm: [100, 4000],
  grainDegrees: [0, 10],
  gapMm: [0, 50],
  shrinkAlong: [0, 0.2],
  shrinkAcross: [0, 0.2],
} as const;

export const OPEN_CLOTH: Omit<Cloth, 'widthMm'> = {
  folded: false,
  nap: false,
  grainDegrees: 0,
  gapMm: 0,
  shrinkAlong: 0,
  shrinkAcross: 0,
};

/** The width that pieces lie on, mm. */
export const laidWidth = ({ widthMm, folded }: Pick<Cloth, 'widthMm' | 'folded'>): number =>
  folded ? widthMm / 2 : widthMm;
