// The sentences of what is to mend, by which fields can be described.

/** The id of the sentence about a field of the style, by which the field can be described. */
export const faultId = (field: string): string => `fault-${field}`;
