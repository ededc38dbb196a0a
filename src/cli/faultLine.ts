// Writes a fault for the error stream.

import type { Fault } from '../document';

/** A fault on one line: its path, or `whole` where it is of the input as a whole, and its sentence. */
export const faultLine = ({ path, message }: Fault, whole: string): string =>
  `${path || whole}: ${message}\n`;
