// A bound on each of very many values: an assertion of the test runner takes longer than what is measured here.

import { expect } from 'vitest';

/** Fails where `value` is above `most`, or no number. Only such a value is put to the test runner. */
export function expectAtMost(value: number, most: number, name: string): void {
  if (!(value <= most)) expect(value, name).toBeLessThanOrEqual(most);
}
