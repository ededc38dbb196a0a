// How the girths of a draft are spoken of, the same on every step.

import { type Closure, type Draft, type LedgerRow, openWidth } from '../../engine';

/**
 * What a finished girth is called: what the tape reads round the garment as worn. Of a laced one that is the laced girth, the
 * gap that is left open counted in.
 */
export const sewnWord = (closure: Closure): string => (openWidth(closure) > 0 ? 'laced' : 'sewn');

/** Levels this near an edge are cut by it on some panels and missed on others. mm */
const AT_EDGE_MM = 12;

/** Where a level lies that the garment does not reach all round; empty while there is no garment. */
export function whereOutside({ y }: LedgerRow, span: Draft['span']): string {
  if (!span) return '';
  if (y < span.top - AT_EDGE_MM) return 'above the top edge';
  return y > span.hem + AT_EDGE_MM ? 'below the hem' : 'at the edge';
}
