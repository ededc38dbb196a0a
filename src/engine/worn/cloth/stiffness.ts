// How stiff cloth, bones and waist tape are. Estimates: usual figures of firm cotton cloth and flat steel, measured on no
// garment of this tool. The figures compare drafts sewn from the same cloth; they do not tell what one cloth will do.

/** Firm close-woven cotton cloth. */
export const CLOTH = {
  /** N per mm of width for a strain of 1, along the grain and across it. */
  warp: 60,
  weft: 45,
  /** N/mm against a change of the angle between warp and weft by 1 rad. */
  shear: 3,
  /** So much of warp and weft where the cloth is pressed together: it buckles finer than the mesh. */
  squeezed: 0.15,
  /** Bending stiffness, N·mm: at 4 every strapless style came to rest in one place, at 1 two did not. */
  bend: 4,
  /** N/mm²: 510 g/m² with interlining. */
  weight: 5e-6,
} as const;

/** Flat steel bones, and the two steels of a busk. */
export const BONE = {
  /** Bending stiffness out of the flat, N·mm². */
  bend: 2e4,
  busk: 2e5,
  /** N for a strain of 1: the tape of the channel. */
  stretch: 5e3,
} as const;

/** The waist tape holds each mark at the body's waist, N per mm and mark: a laced garment stays at the waist. */
export const WAIST_TAPE = 1;

/** A seam shorter than this has no bone, mm. */
export const LEAST_BONE_MM = 60;

export type ClothStiffness = { readonly [part in keyof typeof CLOTH]: number };
