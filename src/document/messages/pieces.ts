// Pieces, edges and seams by the names that are written on cloth.

import type { BlockName, Edge, PieceIdentity, SeamIdentity, Side } from '../../engine';
import { catalogue } from './catalogue';

const BLOCK_WORDS: Readonly<Record<BlockName, string>> = { front: 'Front', back: 'Back' };

const SIDE_WORDS: Readonly<Record<Side, string>> = { left: 'Left', right: 'Right' };

/**
 * "Front 1": the block and the piece's number, counted from the centre; "Side panel" where front and back are in one;
 * "Back facing", "Strap". A piece cut for one half begins with that: "Left front 1".
 */
export function pieceLabel(piece: PieceIdentity): string {
  const label = labelOf(piece);
  return piece.side === null ? label : `${SIDE_WORDS[piece.side]} ${uncapital(label)}`;
}

function labelOf({ kind, block, number }: PieceIdentity): string {
  switch (kind) {
    case 'panel':
      return `${BLOCK_WORDS[block]} ${number}`;
    case 'sidePanel':
      return 'Side panel';
    case 'band':
      return `${BLOCK_WORDS[block]} shoulder band`;
    case 'modesty':
      return `${BLOCK_WORDS[block]} modesty panel`;
    case 'facing':
      return `${BLOCK_WORDS[block]} facing`;
    case 'strap':
      return 'Strap';
  }
}

const uncapital = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What an edge of a piece is called: "seam", "side seam", "top edge" (under a shoulder "neckline"), "hem", "centre front", … */
export function edgeName(
  edge: Pick<Edge, 'role' | 'isSideSeam'>,
  piece: { readonly block: BlockName; readonly edges: readonly Pick<Edge, 'role'>[] },
): string {
  switch (edge.role) {
    case 'seam':
      return EDGES[edge.isSideSeam ? 'sideSeam' : 'seam'];
    case 'top':
      return EDGES[
        piece.edges.some(({ role }) => role === 'shoulder' || role === 'armhole') ? 'neckline' : 'top'
      ];
    case 'centre':
      return EDGES.centre[piece.block];
    case 'hem':
    case 'armhole':
    case 'shoulder':
      return EDGES[edge.role];
  }
}

const EDGES = catalogue({
  seam: 'seam',
  sideSeam: 'side seam',
  top: 'top edge',
  neckline: 'neckline',
  hem: 'hem',
  centre: { front: 'centre front', back: 'centre back' },
  armhole: 'armhole',
  shoulder: 'shoulder line',
});

/** What a turned hem asks of the cut line, for whoever draws it or cuts along it. */
export const { turnedHem: TURNED_HEM } = catalogue({
  turnedHem:
    'The hem is turned up along its sew line: below it the cut line of each seam goes on as its mirror image about the hem, so that the turned allowance lies on the seam allowances.',
});

/** A seam within a sentence: "the seam of Front 1 and Front 2", "the left side seam", "centre front". */
export function seamName(seam: SeamIdentity): string {
  const half = seam.side === null ? '' : `${seam.side} `;
  switch (seam.kind) {
    case 'wedge':
      return `the seam of ${seam.pieces.map(pieceLabel).join(' and ')}`;
    case 'dart':
      return `the dart in ${pieceLabel(seam.piece)}`;
    case 'sideSeam':
      return `the ${half}side seam`;
    case 'centre':
      return seam.side === null ? `centre ${seam.block}` : `centre ${seam.block} on the ${seam.side}`;
    case 'shoulder':
      return `the ${half}shoulder seam${seam.part === 'whole' ? '' : `, its half at the ${seam.part}`}`;
  }
}

/**
 * A seam at the head of a row: "Front 1 + 2", "Side panel + Back 2", "Left shoulder seam, neck", "Dart in Front 2".
 *
 * @param dartName what a dart is called; "Dart" without one
 */
export function seamLabel(seam: SeamIdentity, dartName = 'Dart'): string {
  const half = seam.side === null ? '' : `${SIDE_WORDS[seam.side]} `;
  switch (seam.kind) {
    case 'wedge':
      return wedgeSeamLabel(seam.pieces);
    case 'dart':
      return `${dartName} in ${pieceLabel(seam.piece)}`;
    case 'sideSeam':
      return half === '' ? 'Side seam' : `${half}side seam`;
    case 'centre':
      return seam.side === null ? `Centre ${seam.block}` : `Centre ${seam.block} on the ${seam.side}`;
    case 'shoulder': {
      const name = half === '' ? 'Shoulder seam' : `${half}shoulder seam`;
      return seam.part === 'whole' ? name : `${name}, ${seam.part}`;
    }
  }
}

/** Two panels of one block share its name. */
function wedgeSeamLabel(pieces: readonly PieceIdentity[]): string {
  const [a, b] = pieces;
  return a?.kind === 'panel' && b?.kind === 'panel' && a.block === b.block && a.side === b.side
    ? `${pieceLabel(a)} + ${b.number}`
    : pieces.map(pieceLabel).join(' + ');
}
