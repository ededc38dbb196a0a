// The way from number to number.

import { NEXT_STEP } from './fieldShown';

/** Goes from a number of the form to the next one, from the last one to the way on; backwards from the first one nowhere. */
export function walkFrom(field: HTMLInputElement, backwards = false): void {
  const fields = [...(field.form?.querySelectorAll<HTMLInputElement>('input[type="text"]') ?? [])];
  const next = fields[fields.indexOf(field) + (backwards ? -1 : 1)];
  if (next) {
    next.focus();
    next.select();
  } else if (!backwards) document.getElementById(NEXT_STEP)?.focus();
}
