// Pieces, edges and seams by the names that are written on cloth.

import type { BlockName, Edge, Piece } from '../../engine';
import { catalogue } from './catalogue';

const SIDE_WORDS: Readonly<Record<BlockName, string>> = { front: 'Front', back: 'Back' };

const EXTRA_WORDS: Readonly<Record<string, string>> = {
  modesty: 'modesty panel',
  facing: 'facing',
  band: 'shoulder band',
};

/**
 * "Front 1": the block and the piece's number, counted from the centre; "Side panel" where front and back are in one;
 * "Back facing", "Strap".
 */
export const pieceLabel = (piece: Pick<Piece, 'id'>): string => pieceLabelOf(piece.id);

/** The label of a piece known by its id only ("front-1"); an id of another form is given back as it is. */
export function pieceLabelOf(id: string): string {
  const [, hand, half] = /^(left|right)-(.+)$/.exec(id) ?? [];
  if (hand !== undefined && half !== undefined) {
    const label = pieceLabelOf(half);
    return label === half
      ? id
      : `${hand === 'left' ? 'Left' : 'Right'} ${label.charAt(0).toLowerCase()}${label.slice(1)}`;
  }
  if (id === 'side') return 'Side panel';
  if (id === 'strap') return 'Strap';
  const [, side, part = ''] = /^(front|back)-(\d+|modesty|facing|band)$/.exec(id) ?? [];
  return side === undefined ? id : `${SIDE_WORDS[side as BlockName]} ${EXTRA_WORDS[part] ?? part}`;
}

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

/** A seam within a sentence, from its id: "the seam of Front 1 and Front 2", "the side seam", "centre front". */
export function seamName(id: string): string {
  if (id === 'side') return 'the side seam';
  const shoulder = /^shoulder(?:-(neck|tip))?$/.exec(id);
  if (shoulder)
    return shoulder[1] ? `the shoulder seam, its half at the ${shoulder[1]}` : 'the shoulder seam';
  const [, hand, half] = /^(left|right)-(side|shoulder.*)$/.exec(id) ?? [];
  if (hand !== undefined && half !== undefined) return seamName(half).replace(/^the /, `the ${hand} `);
  const centre = /^(front|back)-centre$/.exec(id);
  if (centre) return `centre ${centre[1]}`;
  const dart = /^([^/]+)\/dart:/.exec(id);
  if (dart?.[1]) return `the dart in ${pieceLabelOf(dart[1])}`;
  return `the seam of ${id.split('/').map(pieceLabelOf).join(' and ')}`;
}
