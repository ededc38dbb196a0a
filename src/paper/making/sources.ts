// Where the figures of the making list come from, in a maker's words: the list and the form that asks for them say the same.

export const SOURCES = {
  practice: 'the usual way; no book says so',
  bindings: 'by McCunn’s book: ½ in',
  channel: 'by a maker’s published page: 3 cm',
  eyeletSpacing: 'the usual way; published advice: at most 3 cm',
  eyeletInset: 'the usual way; published advice: within 15 mm',
  boneWidth: 'spiral bones are sold 4 to 15 mm wide',
} as const;

/** A source as a sentence of its own. */
export const sourceSentence = (source: string): string =>
  `${source.charAt(0).toUpperCase()}${source.slice(1)}.`;
