// The way from number to number.

import { NEXT_STEP } from './fieldShown';

const NUMBERS = 'input[type="text"]';

/** Goes to the first number of the form. */
export function walkToFirst(): void {
  const first = document.querySelector<HTMLInputElement>(`.tape-form ${NUMBERS}`);
  first?.focus();
  first?.select();
}

/** Goes from a number of the form to the next one, from the last one to the way on; backwards from the first one nowhere. */
export function walkFrom(field: HTMLInputElement, backwards = false): void {
  const fields = [...(field.form?.querySelectorAll<HTMLInputElement>(NUMBERS) ?? [])];
  const next = fields[fields.indexOf(field) + (backwards ? -1 : 1)];
  if (next) {
    next.focus();
    next.select();
  } else if (!backwards) document.getElementById(NEXT_STEP)?.focus();
}
