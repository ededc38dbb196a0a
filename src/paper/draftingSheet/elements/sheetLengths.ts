// Lengths as they can be drawn: to the lines of the maker's tape.

import { formatLength, type Unit } from '../../../document';
import { inches } from '../../../engine';

export interface SheetLengths {
  readonly unit: Unit;
  /** Width of its finest division, mm: 1/16 in or 1 mm. */
  readonly divisionMm: number;
  /** The nearest line of the tape, mm. */
  round(mm: number): number;
  /** The nearest line as it is read, without the unit. */
  text(mm: number): string;
  /**
   * How a height stands to a line drawn on the sheet: "on the line", "⅛ above". The two are rounded first, so that who draws
   * the line and measures from it comes out within half a division of the height.
   */
  fromLine(yMm: number, lineMm: number): string;
}

/** How a height is said that needs no measuring. */
export const ON_THE_LINE = 'on the line';

export function sheetLengths(unit: Unit): SheetLengths {
  const divisionMm = unit === 'in' ? inches(1 / 16) : 1;
  const round = (mm: number): number => Math.round(mm / divisionMm) * divisionMm;
  const text = (mm: number): string => formatLength(round(mm), unit);
  return {
    unit,
    divisionMm,
    round,
    text,
    fromLine(yMm, lineMm) {
      const below = round(yMm) - round(lineMm);
      if (Math.abs(below) < divisionMm / 2) return ON_THE_LINE;
      return below < 0 ? `${text(-below)} above` : `${text(below)} below`;
    },
  };
}
