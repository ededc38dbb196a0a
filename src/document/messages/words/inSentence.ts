// A name in the form it has within a sentence.

/** A name that begins a line, as it is written within one. */
export const inSentence = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
