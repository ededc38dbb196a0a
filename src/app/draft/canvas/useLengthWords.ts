// Lengths as the table writes them.

import { useMemo } from 'react';
import { CANVAS, formatLength, type Unit } from '../../../document';
import type { Level } from '../../../engine';

/** Lengths as they are written on the table; the same functions as long as the unit is, so that nothing is drawn again for them. */
export function useLengthWords(unit: Unit) {
  return useMemo(
    () => ({
      length: (mm: number): string => formatLength(mm, unit, { withUnit: true }),
      width: (mm: number): string => formatLength(mm, unit),
      levelNote: ({ y }: Level, isBeyond: boolean): string =>
        isBeyond ? CANVAS.levels.outOfScale : CANVAS.levels.down({ length: formatLength(y, unit) }),
    }),
    [unit],
  );
}
