// A half draft whose bust dart opens in the side seam: drafted and checked with the dart in the neckline, then slashed and turned. The
// girths, angles and warnings that were read before hold after it, because what is turned keeps its shape.

import type { SideDart } from '../block/shoulders/sideDart';
import type { EdgeContinuityRow } from '../checks/edgeContinuity';
import type { SeamWalkRow } from '../checks/seamWalk';
import { polylineLength } from '../geometry/polyline';
import { edgeAt, edgeIndex, longEdgeIndex } from '../pieces/edgeLookup';
import type { EdgeNodePlace } from '../pieces/edgeNodes';
import type { Edge, EdgeReference, Mark, Piece } from '../pieces/piece';
import { partOfMark, splitFromTop } from '../pieces/turn/splitSide';
import { cutUnturned, type TurnedDart, type TurnedPiece, turnDart } from '../pieces/turn/turnDart';
import type { Style } from '../style/style';
import { turnsHemUp } from '../style/turnedHem';
import { identifySideSeam, identityOf, type PieceIdentity, type SidePart } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';

/** The bust dart as it was turned, and what it was turned from. */
export interface DartTurned extends TurnedDart {
  /** Pieces and seams with the dart in the neckline, as they are drafted before it is turned. */
  readonly before: { readonly pieces: readonly Piece[]; readonly seams: readonly SeamWalkRow[] };
}

/** What of a half draft is turned with the dart. */
interface Panels {
  readonly pieces: readonly Piece[];
  readonly extras: readonly Piece[];
  readonly nodes: readonly EdgeNodePlace[];
  readonly proof: { readonly seams: readonly SeamWalkRow[]; readonly edges: readonly EdgeContinuityRow[] };
  readonly issues: readonly Issue[];
}

/** The draft with its dart turned; as it was drafted, with a blocking issue, where it cannot be turned. */
export function withDartTurned<Drafted extends Panels>(
  drafted: Drafted,
  { wedge, below, short }: SideDart,
  style: Style,
): Drafted & { readonly turnedDart?: DartTurned } {
  const place = { block: 'front', wedge } as const;
  const unturned = (faults: readonly Issue[]): Drafted => ({
    ...drafted,
    pieces: drafted.pieces.map((piece) =>
      piece.darts.some((dart) => dart.wedge === wedge) ? cutUnturned(piece, turnsHemUp(style)) : piece,
    ),
    issues: [...drafted.issues, ...faults],
  });
  const refused = (fault: Issue): Drafted => unturned([fault]);
  const front = drafted.pieces.find(
    ({ block, darts }) => block === 'front' && darts.some((dart) => dart.wedge === wedge && dart.open),
  );
  const side = front?.edges[longEdgeIndex(front, 'outer')];
  const back = drafted.pieces.find(({ id }) => id === side?.mate?.piece.id);
  // A dart that was not made, or a side seam without its mate, has an issue of its own.
  if (!front || !side?.isSideSeam || !back)
    return drafted.issues.some(({ severity }) => severity === 'error')
      ? unturned([])
      : refused(issue('dartEndsAtEdge', {}, { ...place, ...(front ? { piece: identityOf(front) } : {}) }));
  const turned = turnedWhereClear(front, wedge, below, short, turnsHemUp(style));
  if (!turned) return unturned([]);
  if ('kind' in turned) {
    if (turned.kind === 'meets') return refused(issue('sideDartMeets', {}, place));
    const { least, most } = turned;
    return refused(issue('sideDartOffSeam', { least, most }, place));
  }
  const backSide = longEdgeIndex(back, 'outer');
  const edgeNow = ({ piece, edge }: EdgeReference): EdgeReference => {
    if (piece.id === front.id) return { piece, edge: turned.edgeNow(edge) ?? edge };
    return piece.id === back.id && edge > backSide ? { piece, edge: edge + 1 } : { piece, edge };
  };
  const withMates = (piece: Piece, isFront = false): Piece => ({
    ...piece,
    edges: piece.edges.map((edge) =>
      // The legs of the turned dart are each other's mates already.
      edge.mate && !(isFront && edge.dart?.wedge === wedge) ? { ...edge, mate: edgeNow(edge.mate) } : edge,
    ),
  });
  const madeBack = withSideParted(back, backSide, turned.dart.below);
  const pieces = drafted.pieces.map((piece) => {
    if (piece.id === front.id) return matedAtSide(withMates(turned.piece, true), identityOf(back), madeBack);
    return piece.id === back.id
      ? matedAtSide(withMates(madeBack), identityOf(front), turned.piece)
      : withMates(piece);
  });
  return {
    ...drafted,
    pieces,
    extras: drafted.extras.map((piece) => withMates(piece)),
    nodes: drafted.nodes.map((node) =>
      node.block === 'front' && node.edge === 'top' ? { ...node, at: turned.moved(node.at) } : node,
    ),
    proof: {
      ...drafted.proof,
      seams: drafted.proof.seams.flatMap((row): SeamWalkRow[] => {
        if (row.seam.kind === 'sideSeam') return sideRows(row, pieces);
        if (row.seam.kind === 'dart' && row.seam.wedge === wedge) return [legRow(row, pieces, wedge)];
        return [{ ...row, a: edgeNow(row.a), b: edgeNow(row.b) }];
      }),
      edges: drafted.proof.edges
        // Closed, the dart is no longer crossed by the neckline.
        .filter(({ seam }) => seam.kind !== 'dart' || seam.wedge !== wedge)
        .map((row) =>
          row.at.piece.id === front.id
            ? { ...row, at: { ...row.at, point: turned.moved(row.at.point) } }
            : row,
        ),
    },
    issues: [...drafted.issues, ...cutIssues(turned, identityOf(front))],
    turnedDart: { ...turned.dart, before: { pieces: drafted.pieces, seams: drafted.proof.seams } },
  };
}

/** The piece turned at the first of these places that has room; why it cannot be at the first where none has. */
function turnedWhereClear(
  piece: Piece,
  wedge: string,
  places: readonly number[],
  short: number,
  turnsHem: boolean,
): ReturnType<typeof turnDart> {
  let refused: ReturnType<typeof turnDart> = null;
  for (const below of places) {
    const turned = turnDart(piece, wedge, below, short, turnsHem);
    if (turned && 'dart' in turned) return turned;
    refused ??= turned;
  }
  return refused;
}

/** What cannot be cut as asked of the turned piece. */
function cutIssues({ isValid, turnsUp }: TurnedPiece, piece: PieceIdentity): Issue[] {
  const place = { block: 'front', piece } as const;
  if (!isValid) return [issue('cutLineUnsure', {}, place)];
  return turnsUp ? [] : [issue('hemTurnsShort', {}, place)];
}

/** The piece whose side edge is parted where its mate's dart closes, with a mark there. */
function withSideParted(piece: Piece, side: number, below: number): Piece {
  const edge = piece.edges[side] as Edge;
  const { lower, upper } = splitFromTop(edge.points, below);
  return {
    ...piece,
    edges: [
      ...piece.edges.slice(0, side),
      { ...edge, sidePart: 'belowDart', points: lower },
      { ...edge, sidePart: 'aboveDart', points: upper },
      ...piece.edges.slice(side + 1),
    ],
    marks: [
      ...piece.marks.flatMap((mark): Mark[] => {
        if (mark.edge === null || mark.edge < side) return [mark];
        if (mark.edge > side) return [{ ...mark, edge: mark.edge + 1 }];
        const part = partOfMark(edge.points, mark.at, below);
        if (part === null) return [];
        return part === 'aboveDart' ? [{ ...mark, edge: side + 1 }] : [mark];
      }),
      { kind: 'balance', level: null, at: upper[0] as Mark['at'], edge: side },
    ],
  };
}

/** A piece whose two parts of the side seam have those of another as mates. */
const matedAtSide = (piece: Piece, other: EdgeReference['piece'], { edges }: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map((edge) => {
    const mate = edge.sidePart ? edgeIndex(edges, { at: 'outer', sidePart: edge.sidePart }) : -1;
    return mate < 0 ? edge : { ...edge, mate: { piece: other, edge: mate } };
  }),
});

/** The side seam's row as the rows of its two parts, from the armhole down. */
function sideRows(row: SeamWalkRow, pieces: readonly Piece[]): SeamWalkRow[] {
  const partOf = ({ piece }: EdgeReference, part: SidePart): EdgeReference => {
    const edges = pieces.find(({ id }) => id === piece.id)?.edges ?? [];
    return { piece, edge: edgeIndex(edges, { at: 'outer', sidePart: part }) };
  };
  return SIDE_PARTS.map((part): SeamWalkRow => {
    const [a, b] = [partOf(row.a, part), partOf(row.b, part)];
    return {
      ...row,
      seam: identifySideSeam(row.seam.side, part),
      a,
      b,
      lengthA: lengthOf(a, pieces),
      lengthB: lengthOf(b, pieces),
      // What truing evened out lies below the dart, where both mates go on to the hem.
      lengthDifference: part === 'belowDart' ? row.lengthDifference : 0,
    };
  });
}

const SIDE_PARTS = ['aboveDart', 'belowDart'] as const satisfies readonly SidePart[];

const lengthOf = (reference: EdgeReference, pieces: readonly Piece[]): number =>
  polylineLength(edgeAt(pieces, reference)?.points ?? []);

/** The row of the dart's legs where they lie now. */
function legRow(row: SeamWalkRow, pieces: readonly Piece[], wedge: string): SeamWalkRow {
  const { piece } = row.a;
  const edges = pieces.find(({ id }) => id === piece.id)?.edges ?? [];
  const [a, b] = (['inner', 'outer'] as const).map(
    (leg): EdgeReference => ({
      piece,
      edge: edgeIndex(edges, { at: 'outer', dart: { wedge, leg } }),
    }),
  ) as [EdgeReference, EdgeReference];
  return {
    ...row,
    a,
    b,
    lengthA: lengthOf(a, pieces),
    lengthB: lengthOf(b, pieces),
    lengthDifference: 0,
    markDrift: 0,
  };
}
