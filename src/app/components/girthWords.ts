// How the girths of a draft are spoken of, the same on every step.

import { formatLength, GIRTHS, type Unit } from '../../document';
import { type Closure, type Draft, finishedCloth, inches, type LedgerRow, openWidth } from '../../engine';

/**
 * What a finished girth is called: what the tape reads round the garment as worn. Of a laced one that is the laced girth, the
 * gap that is left open counted in.
 */
export const sewnWord = (closure: Closure): string => (openWidth(closure) > 0 ? GIRTHS.laced : GIRTHS.sewn);

/** Said after a girth that was measured on the edge. */
export const ALONG_EDGE = GIRTHS.alongEdge;

/** Levels this near an edge are cut by it on some panels and missed on others. mm */
const AT_EDGE_MM = 10;

/** Where a level lies that the garment does not reach all round; empty while there is no garment. */
export function whereOutside({ y }: LedgerRow, span: Draft['span']): string {
  if (!span) return '';
  if (y < span.top - AT_EDGE_MM) return GIRTHS.aboveTop;
  return y > span.hem + AT_EDGE_MM ? GIRTHS.belowHem : GIRTHS.atEdge;
}

/** What a finished girth is measured by: a tape across the cloth, or, where a level lies at a level edge, the edge itself. */
export interface FinishedGirth {
  /** What the tape reads, the opening counted in, mm. */
  readonly girth: number;
  /** By how much it misses what was asked and altered after a fitting, mm; 0 where a maker would say that it does not. */
  readonly off: number;
  readonly along: boolean;
}

/** A girth of the panels that is less off than this is as asked. mm */
const GIRTH_MM = 0.1;
/**
 * An edge is trued to run straight across leaning seams, not to lie on the level line: less than the finest division of a tape is as
 * asked. mm
 */
const EDGE_MM = inches(1 / 16);

/** The finished girth at a level; null where the garment has none. */
export function finishedGirth(row: LedgerRow, closure: Closure): FinishedGirth | null {
  const cloth = finishedCloth(row);
  if (cloth === null) return null;
  const along = row.sewnGirth === null;
  const off = cloth - row.targetGirth - row.alteredBy;
  return {
    girth: cloth + openWidth(closure),
    off: Math.abs(off) > (along ? EDGE_MM : GIRTH_MM) ? off : 0,
    along,
  };
}

/** Less than this an alteration adds to no girth. mm */
const ALTERED_MM = 0.05;

/** By how much alterations after a fitting change the waist, mm; 0 where no tape reads it. */
export function waistAlteredBy({ proof }: Draft): number {
  const alteredBy = proof.ledger.find(({ level }) => level === 'waist')?.alteredBy ?? 0;
  return Math.abs(alteredBy) < ALTERED_MM ? 0 : alteredBy;
}

/** By how much alterations after a fitting change a girth, with its sign; empty where they do not. */
export const alteredWritten = ({ alteredBy }: LedgerRow, unit: Unit): string =>
  Math.abs(alteredBy) < ALTERED_MM ? '' : formatLength(alteredBy, unit, { signed: true });
