// Sources of the figures of the making list, as the list and its form name them.

export const SOURCES = {
  practice: 'the usual way; no book says so',
  bindings: 'by McCunn’s book: ½ in',
  channel: 'by a maker’s published page: 3 cm',
  eyeletSpacing: 'the usual way; published advice: at most 3 cm',
  eyeletInset: 'the usual way; published advice: within 15 mm',
  boneWidth: 'spiral bones are sold 4 to 15 mm wide',
} as const;

/** The source `practice` as a sentence of its own. */
export const PRACTICE_SENTENCE = 'The usual way; no book says so.';
