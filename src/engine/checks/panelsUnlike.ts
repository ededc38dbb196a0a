// Panels beside each other of which one is much wider: the seam between them stands in an odd place.

import type { Piece } from '../pieces/piece';
import { identityOf } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import type { LedgerRow } from './ledger';

/** A panel more than so many times as wide as its neighbour looks like a slip; our own bound, no source. */
const MOST_TIMES = 2.2;

/**
 * A warning for each pair of neighbouring panels of a block, at the level where they differ most, if one is more than
 * {@link MOST_TIMES} times as wide as the other there. It stands at the wider one.
 */
export function panelsUnlike(pieces: readonly Piece[], ledger: readonly LedgerRow[]): Issue[] {
  return pieces.flatMap((piece): Issue[] => {
    const next = nextTo(piece, pieces);
    if (!next) return [];
    let most: { readonly row: LedgerRow; readonly wider: Piece; readonly times: number } | null = null;
    for (const row of ledger) {
      const [own, beside] = [row.widths[piece.id], row.widths[next.id]];
      if (!own || !beside) continue;
      const times = Math.max(own / beside, beside / own);
      if (times > (most?.times ?? MOST_TIMES)) most = { row, wider: own > beside ? piece : next, times };
    }
    if (!most) return [];
    const { row, wider } = most;
    const width = row.widths[wider.id] ?? 0;
    return [
      issue(
        'panelsUnlike',
        { width, beside: width / most.times },
        { block: wider.block, piece: identityOf(wider), level: row.level },
      ),
    ];
  });
}

/** The panel next to one towards the side, or behind a side panel cut in one. */
function nextTo(piece: Piece, pieces: readonly Piece[]): Piece | undefined {
  if (piece.kind !== 'sidePanel')
    return pieces.find(({ block, number }) => block === piece.block && number === piece.number + 1);
  return pieces
    .filter(({ block }) => block === 'back')
    .reduce<Piece | undefined>((most, each) => (most && most.number > each.number ? most : each), undefined);
}
