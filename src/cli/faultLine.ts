// A fault as the error stream has it.

import type { Fault } from '../document';

/** A fault on one line of the error stream; `whole` stands where the fault is of the input as a whole. */
export const faultLine = ({ path, message }: Fault, whole: string): string =>
  `${path || whole}: ${message}\n`;
