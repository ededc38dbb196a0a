// Writes a fault for the error stream.

import { ALTERATION_REFUSED, type Fault, type FittingOutcome } from '../../document';

/** A fault on one line: its path, or `whole` where it is of the input as a whole, and its sentence. */
export const faultLine = ({ path, message }: Fault, whole: string): string =>
  `${path || whole}: ${message}\n`;

/** An alteration that was not made, on one line: its path in the file of fittings, and why. */
export const refusedLine = ({ fitting, alteration, code }: FittingOutcome): string =>
  `${code === 'switchedOff' ? 'note' : 'warn'} fittings.${fitting}.alterations.${alteration}: ${code ? ALTERATION_REFUSED[code] : ''}\n`;
