// Finds panels beside each other of which one is much wider, so that the seam between them may stand in the wrong place.

import type { Piece } from '../pieces/piece';
import { identityOf } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import type { LedgerRow } from './ledger';

/**
 * A panel, or each part of it where darts part it, more than so many times as wide as its neighbour is warned of; our own bound,
 * no source.
 */
const MOST_TIMES = 2.2;

/** Where a panel is most unlike one beside it. */
interface Unlike {
  readonly row: LedgerRow;
  readonly wider: Piece;
  /** Its width over that of its neighbour. */
  readonly times: number;
  /** The same for each of the parts between its darts. */
  readonly partTimes: number;
}

/**
 * A warning for each panel that is more than {@link MOST_TIMES} times as wide as a neighbour on its block, at the level and beside
 * the neighbour where they differ most.
 */
export function panelsUnlike(pieces: readonly Piece[], ledger: readonly LedgerRow[]): Issue[] {
  const found = new Map<string, Unlike>();
  for (const piece of pieces) {
    const next = nextTo(piece, pieces);
    const most = next && mostUnlike(piece, next, ledger);
    if (most && most.partTimes > (found.get(most.wider.id)?.partTimes ?? 0)) found.set(most.wider.id, most);
  }
  return [...found.values()].map(({ row, wider, times }) => {
    const width = row.widths[wider.id] ?? 0;
    return issue(
      'panelsUnlike',
      { width, beside: width / times },
      { block: wider.block, piece: identityOf(wider), level: row.level },
    );
  });
}

function mostUnlike(piece: Piece, next: Piece, ledger: readonly LedgerRow[]): Unlike | null {
  let most: Unlike | null = null;
  for (const row of ledger) {
    const own = row.widths[piece.id];
    const beside = row.widths[next.id];
    if (!own || !beside) continue;
    const times = Math.max(own / beside, beside / own);
    const wider = own > beside ? piece : next;
    const partTimes = times / (1 + wider.darts.length);
    if (partTimes > (most?.partTimes ?? MOST_TIMES)) most = { row, wider, times, partTimes };
  }
  return most;
}

/** The panel next to one towards the side, or behind a side panel cut in one. */
function nextTo(piece: Piece, pieces: readonly Piece[]): Piece | undefined {
  if (piece.kind !== 'sidePanel')
    return pieces.find(({ block, number }) => block === piece.block && number === piece.number + 1);
  return pieces
    .filter(({ block }) => block === 'back')
    .reduce<Piece | undefined>((most, each) => (most && most.number > each.number ? most : each), undefined);
}
