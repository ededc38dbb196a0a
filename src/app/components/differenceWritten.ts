// A difference of two lengths as a maker writes it: in parts of an inch, or in millimetres, and not finer than cloth can be cut.

import { formatLength, PROOFS, type Unit } from '../../document';
import { inches } from '../../engine';

/** The finest difference that is written, by unit, mm. */
const FINEST_MM: Readonly<Record<Unit, number>> = { in: inches(1 / 64), cm: 0.5 };
const FINEST_WRITTEN: Readonly<Record<Unit, string>> = { in: '¹⁄₆₄', cm: '½ mm' };

/** In a table, without its unit: "under ¹⁄₆₄", "¹⁄₃₂", "¼"; in centimetres "under ½ mm", "0.2". The size only, without a sign. */
export function differenceWritten(mm: number, unit: Unit): string {
  const size = Math.abs(mm);
  if (size < FINEST_MM[unit]) return PROOFS.under({ length: FINEST_WRITTEN[unit] });
  return formatLength(size, unit, { parts: size < inches(1 / 8) ? 32 : 16 });
}

/** The same with its unit, in a sentence. */
export function differencePhrase(mm: number, unit: Unit): string {
  const written = differenceWritten(mm, unit);
  const hasUnit = unit === 'cm' && Math.abs(mm) < FINEST_MM.cm;
  return hasUnit ? written : PROOFS.withUnit({ length: written, unit });
}
