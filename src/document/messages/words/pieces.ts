// Pieces, edges and seams by the names that are written on cloth.

import type { BlockName, Edge, PieceIdentity, SeamIdentity } from '../../../engine';
import { catalogue } from '../catalogue';

type Numbered = { readonly number: number };

/** For a piece cut for both halves, and for one cut for the left or the right half alone. */
const PIECES = catalogue({
  both: {
    panel: {
      front: ({ number }: Numbered) => `Front ${number}`,
      back: ({ number }: Numbered) => `Back ${number}`,
    },
    sidePanel: 'Side panel',
    band: { front: 'Front shoulder band', back: 'Back shoulder band' },
    modesty: { front: 'Front modesty panel', back: 'Back modesty panel' },
    facing: { front: 'Front facing', back: 'Back facing' },
    strap: 'Strap',
    sleeve: 'Off-shoulder sleeve',
  },
  left: {
    panel: {
      front: ({ number }: Numbered) => `Left front ${number}`,
      back: ({ number }: Numbered) => `Left back ${number}`,
    },
    sidePanel: 'Left side panel',
    band: { front: 'Left front shoulder band', back: 'Left back shoulder band' },
    modesty: { front: 'Left front modesty panel', back: 'Left back modesty panel' },
    facing: { front: 'Left front facing', back: 'Left back facing' },
    strap: 'Left strap',
    sleeve: 'Left off-shoulder sleeve',
  },
  right: {
    panel: {
      front: ({ number }: Numbered) => `Right front ${number}`,
      back: ({ number }: Numbered) => `Right back ${number}`,
    },
    sidePanel: 'Right side panel',
    band: { front: 'Right front shoulder band', back: 'Right back shoulder band' },
    modesty: { front: 'Right front modesty panel', back: 'Right back modesty panel' },
    facing: { front: 'Right front facing', back: 'Right back facing' },
    strap: 'Right strap',
    sleeve: 'Right off-shoulder sleeve',
  },
});

/**
 * The label of a piece: the block and the piece's number, counted from the centre ("Front 1"); "Side panel" where front and
 * back are in one; "Back facing", "Strap". The label of a piece cut for one half begins with that: "Left front 1".
 */
export function pieceLabel({ kind, block, number, side }: PieceIdentity): string {
  const labels = PIECES[side ?? 'both'];
  if (kind === 'panel') return labels.panel[block]({ number });
  return kind === 'sidePanel' || kind === 'strap' || kind === 'sleeve' ? labels[kind] : labels[kind][block];
}

interface EdgeWords {
  /** For use within a sentence. */
  readonly name: string;
  /** With a capital, to begin a line. */
  readonly title: string;
}

const EDGES = catalogue({
  seam: { name: 'seam', title: 'Seam' },
  sideSeam: { name: 'side seam', title: 'Side seam' },
  top: { name: 'top edge', title: 'Top edge' },
  neckline: { name: 'neckline', title: 'Neckline' },
  hem: { name: 'hem', title: 'Hem' },
  centre: {
    front: { name: 'centre front', title: 'Centre front' },
    back: { name: 'centre back', title: 'Centre back' },
  },
  armhole: { name: 'armhole', title: 'Armhole' },
  shoulder: { name: 'shoulder line', title: 'Shoulder line' },
});

type EdgeOfPiece = Pick<Edge, 'role' | 'isSideSeam'>;
type PieceOfEdge = { readonly block: BlockName; readonly edges: readonly Pick<Edge, 'role'>[] };

/** What an edge of a piece is called: "seam", "side seam", "top edge" (under a shoulder "neckline"), "hem", "centre front", … */
export const edgeName = (edge: EdgeOfPiece, piece: PieceOfEdge): string => edgeText(edge, piece).name;

/** The same with a capital: "Seam", "Side seam", … */
export const edgeTitle = (edge: EdgeOfPiece, piece: PieceOfEdge): string => edgeText(edge, piece).title;

function edgeText(edge: EdgeOfPiece, piece: PieceOfEdge): EdgeWords {
  switch (edge.role) {
    case 'seam':
      return edge.isSideSeam ? EDGES.sideSeam : EDGES.seam;
    case 'top':
      return piece.edges.some(({ role }) => role === 'shoulder' || role === 'armhole')
        ? EDGES.neckline
        : EDGES.top;
    case 'centre':
      return EDGES.centre[piece.block];
    default:
      return EDGES[edge.role];
  }
}

/** What a turned hem asks of the cut line, for whoever draws it or cuts along it. */
export const { turnedHem: TURNED_HEM } = catalogue({
  turnedHem:
    'The hem is turned up along its sew line: below it the cut line of each seam goes on as its mirror image about the hem, so that the turned allowance lies on the seam allowances.',
});

type Named = { readonly piece: string };

const SEAMS = catalogue({
  /** Within a sentence. */
  name: {
    wedge: ({ pieces }: { pieces: readonly string[] }) => `the seam of ${pieces.join(' and ')}`,
    dart: ({ piece }: Named) => `the dart in ${piece}`,
    sideSeam: { both: 'the side seam', left: 'the left side seam', right: 'the right side seam' },
    centre: {
      both: { front: 'centre front', back: 'centre back' },
      left: { front: 'centre front on the left', back: 'centre back on the left' },
      right: { front: 'centre front on the right', back: 'centre back on the right' },
    },
    shoulder: {
      both: {
        whole: 'the shoulder seam',
        neck: 'the shoulder seam, its part at the neck',
        middle: 'the shoulder seam, its middle part',
        tip: 'the shoulder seam, its part at the tip',
      },
      left: {
        whole: 'the left shoulder seam',
        neck: 'the left shoulder seam, its part at the neck',
        middle: 'the left shoulder seam, its middle part',
        tip: 'the left shoulder seam, its part at the tip',
      },
      right: {
        whole: 'the right shoulder seam',
        neck: 'the right shoulder seam, its part at the neck',
        middle: 'the right shoulder seam, its middle part',
        tip: 'the right shoulder seam, its part at the tip',
      },
    },
  },
  /** At the head of a row. */
  label: {
    wedge: ({ pieces }: { pieces: readonly string[] }) => pieces.join(' + '),
    oneBlock: ({ first, number }: { first: string; number: number }) => `${first} + ${number}`,
    dart: ({ piece }: Named) => `Dart in ${piece}`,
    namedDart: ({ dart, piece }: Named & { dart: string }) => `${dart} in ${piece}`,
    sideSeam: { both: 'Side seam', left: 'Left side seam', right: 'Right side seam' },
    sidePart: {
      aboveDart: {
        both: 'Side seam above the dart',
        left: 'Left side seam above the dart',
        right: 'Right side seam above the dart',
      },
      belowDart: {
        both: 'Side seam below the dart',
        left: 'Left side seam below the dart',
        right: 'Right side seam below the dart',
      },
    },
    centre: {
      both: { front: 'Centre front', back: 'Centre back' },
      left: { front: 'Centre front on the left', back: 'Centre back on the left' },
      right: { front: 'Centre front on the right', back: 'Centre back on the right' },
    },
    shoulder: {
      both: {
        whole: 'Shoulder seam',
        neck: 'Shoulder seam, neck',
        middle: 'Shoulder seam, middle',
        tip: 'Shoulder seam, tip',
      },
      left: {
        whole: 'Left shoulder seam',
        neck: 'Left shoulder seam, neck',
        middle: 'Left shoulder seam, middle',
        tip: 'Left shoulder seam, tip',
      },
      right: {
        whole: 'Right shoulder seam',
        neck: 'Right shoulder seam, neck',
        middle: 'Right shoulder seam, middle',
        tip: 'Right shoulder seam, tip',
      },
    },
  },
});

/** A seam within a sentence: "the seam of Front 1 and Front 2", "the left side seam", "centre front". */
export function seamName(seam: SeamIdentity): string {
  const side = seam.side ?? 'both';
  switch (seam.kind) {
    case 'wedge':
      return SEAMS.name.wedge({ pieces: seam.pieces.map(pieceLabel) });
    case 'dart':
      return SEAMS.name.dart({ piece: pieceLabel(seam.piece) });
    case 'sideSeam':
      return SEAMS.name.sideSeam[side];
    case 'centre':
      return SEAMS.name.centre[side][seam.block];
    case 'shoulder':
      return SEAMS.name.shoulder[side][seam.part];
    case 'joined':
      return SEAMS.name.wedge({ pieces: [seam.panel, seam.to].map(pieceLabel) });
  }
}

/**
 * A seam at the head of a row: "Front 1 + 2", "Side panel + Back 2", "Left shoulder seam, neck", "Dart in Front 2".
 *
 * @param dartName what a dart is called, with a capital; "Dart" without one
 */
export function seamLabel(seam: SeamIdentity, dartName?: string): string {
  const side = seam.side ?? 'both';
  switch (seam.kind) {
    case 'wedge':
      return wedgeSeamLabel(seam.pieces);
    case 'dart': {
      const piece = pieceLabel(seam.piece);
      return dartName === undefined
        ? SEAMS.label.dart({ piece })
        : SEAMS.label.namedDart({ dart: dartName, piece });
    }
    case 'sideSeam':
      return seam.part ? SEAMS.label.sidePart[seam.part][side] : SEAMS.label.sideSeam[side];
    case 'centre':
      return SEAMS.label.centre[side][seam.block];
    case 'shoulder':
      return SEAMS.label.shoulder[side][seam.part];
    case 'joined':
      return SEAMS.label.wedge({ pieces: [seam.panel, seam.to].map(pieceLabel) });
  }
}

/** Two panels of one block share its name. */
function wedgeSeamLabel(pieces: readonly PieceIdentity[]): string {
  const [a, b] = pieces;
  return a?.kind === 'panel' && b?.kind === 'panel' && a.block === b.block && a.side === b.side
    ? SEAMS.label.oneBlock({ first: pieceLabel(a), number: b.number })
    : SEAMS.label.wedge({ pieces: pieces.map(pieceLabel) });
}
