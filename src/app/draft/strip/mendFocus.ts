// The list of what is to mend takes the focus when a count of it is pressed elsewhere.

/** The id of the list's heading. */
export const MEND_LIST = 'to-mend';

export function goToMendList(): void {
  const heading = document.getElementById(MEND_LIST);
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: 'nearest' });
}

/** The id of the sentence about a field of the style, by which the field can be described. */
export const faultId = (field: string): string => `fault-${field}`;
