// Lengths of a drafting sheet, rounded to the divisions of a tape measure.

import { DRAFTING_SHEET, formatLength, type Unit } from '../../../document';
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
   * How far a height lies below a line of the sheet, mm; negative above it, 0 on it. Both are rounded first, so that a height
   * measured from the drawn line is within half a division.
   */
  belowLine(yMm: number, lineMm: number): number;
  /** How a height stands to a line drawn on the sheet: "on the line", "⅛ above". */
  fromLine(yMm: number, lineMm: number): string;
}

/** The lengths of a sheet in a unit. */
export function sheetLengths(unit: Unit): SheetLengths {
  const divisionMm = unit === 'in' ? inches(1 / 16) : 1;
  const round = (mm: number): number => Math.round(mm / divisionMm) * divisionMm;
  const text = (mm: number): string => formatLength(round(mm), unit);
  const belowLine = (yMm: number, lineMm: number): number => {
    const below = round(yMm) - round(lineMm);
    return Math.abs(below) < divisionMm / 2 ? 0 : below;
  };
  return {
    unit,
    divisionMm,
    round,
    text,
    belowLine,
    fromLine(yMm, lineMm) {
      const { onLine, above, below } = DRAFTING_SHEET.heights;
      const depth = belowLine(yMm, lineMm);
      if (depth === 0) return onLine;
      return depth < 0 ? above({ length: text(-depth) }) : below({ length: text(depth) });
    },
  };
}
