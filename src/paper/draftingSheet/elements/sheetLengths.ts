// Lengths of a drafting sheet, rounded to the divisions of a tape measure.

import { formatLength, type Unit } from '../../../document';
import { inches } from '../../../engine';

export interface SheetLengths {
  readonly unit: Unit;
  /** The finest division of the tape, mm: 1/16 in or 1 mm. */
  readonly divisionMm: number;
  /** A length rounded to the nearest division, mm. */
  round(mm: number): number;
  /** The rounded length as text, without the unit. */
  text(mm: number): string;
  /**
   * A height relative to a line of the sheet: "on the line", "⅛ above". Both are rounded first, so that a height measured from the
   * drawn line is within half a division.
   */
  fromLine(yMm: number, lineMm: number): string;
}

/** The text for a height on the line. */
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
