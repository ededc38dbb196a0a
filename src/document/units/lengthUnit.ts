// The units a length is typed, shown or filed in. Inside the program it is always mm.

import { MM_PER_INCH } from '../../engine';

/** The two units of the form, and mm for files. */
export type LengthUnit = 'in' | 'cm' | 'mm';

/** Millimetres in one of each unit. */
export const MM_PER: Readonly<Record<LengthUnit, number>> = { in: MM_PER_INCH, cm: 10, mm: 1 };
