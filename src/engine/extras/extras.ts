// Pieces beside the panels: modesty panel and facings of a laced centre, and straps. Ledger, seam walk and closed-up view know
// nothing of them.

import { cutLineTurnedUp } from '../geometry/offset/cutLine';
import type { Point } from '../geometry/point';
import { ringThrough } from '../geometry/polyline';
import { uprightInside } from '../geometry/uprightInside';
import { longEdgeIndex } from '../pieces/edgeLookup';
import type { Edge, EdgePlace, Piece } from '../pieces/piece';
import { rightSideUp } from '../pieces/rightSideUp';
import { allowanceOf } from '../style/allowanceOf';
import type { Style } from '../style/style';
import type { StylePath } from '../style/styleSpans';
import { turnsHemUp } from '../style/turnedHem';
import { identifyPiece, type PieceIdentity } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import { type BlockName, SIDES, type Side } from '../terms/names';
import { facingShape } from './facing';
import { freeEdge } from './freeEdge';
import { type LacedEdge, lacedEdge, type MarkOnEdge } from './lacedEdge';
import { modestyShape } from './modesty';

export interface ExtraPieces {
  readonly pieces: readonly Piece[];
  readonly issues: readonly Issue[];
}

/**
 * The pieces that `style.extras` asks for, from front to back, both halves of the garment being alike. There is no modesty
 * panel and no facing where the edge is not laced or its panel was not made; one that has no room is left out with a warning.
 * Facings lie on the block as their panels do; x runs from the left edge of the others, y as on the block, and a strap begins
 * at the shoulder level.
 */
export function extraPieces(
  style: Style,
  laced: readonly BlockName[],
  pieces: readonly Piece[],
): ExtraPieces {
  const behind = laced.flatMap((block): Cut[] => {
    const edge = lacedEdge(block, pieces);
    return edge ? [...modestyOf(style, edge, edge), ...facingOf(style, edge)] : [];
  });
  return gather([...behind, ...strapOf(style)]);
}

/** The same where the halves differ, of the pieces of each: facings are cut for each half, right side up, the others for both. */
export function extrasOfHalves(
  style: Style,
  laced: readonly BlockName[],
  halves: Readonly<Record<Side, readonly Piece[]>>,
): ExtraPieces {
  const behind = laced.flatMap((block): Cut[] => {
    const [left, right] = [lacedEdge(block, halves.left), lacedEdge(block, halves.right)];
    if (!left || !right) return [];
    // Seen from before her, her left lies on the right; seen from behind, on the left.
    const modesty = block === 'front' ? modestyOf(style, right, left) : modestyOf(style, left, right);
    const facings = SIDES.flatMap((side) =>
      facingOf(style, side === 'left' ? left : right).map(({ piece, issues }) => ({
        piece: piece && rightSideUp(side, piece, []),
        issues: issues.map((each) => ({ ...each, at: { ...each.at, side } })),
      })),
    );
    return [...modesty, ...facings];
  });
  return gather([...behind, ...strapOf(style)]);
}

/** A piece, or why there is none. */
interface Cut {
  readonly piece: Piece | null;
  readonly issues: readonly Issue[];
}

const gather = (cut: readonly Cut[]): ExtraPieces => ({
  pieces: cut.flatMap(({ piece }) => (piece ? [piece] : [])),
  issues: cut.flatMap(({ issues }) => issues),
});

/** A modesty panel, seen right side up, under a left and a right laced edge. */
function modestyOf(style: Style, left: LacedEdge, right: LacedEdge): Cut[] {
  const { closure, allowances, extras } = style;
  const asked = extras?.modesty;
  const width = closure.lacingGap + 2 * (asked?.overlap ?? 0);
  if (!asked || width <= 0) return [];
  const shape = modestyShape(left, right, closure.lacingGap, asked.overlap);
  if (!shape) return [noRoom('extras.modesty.overlap', left.block)];
  const edges = [
    freeEdge('inner', 'seam', allowances.seam, shape.left),
    freeEdge('hem', 'hem', allowances.hem, shape.hem),
    freeEdge('outer', 'seam', allowances.seam, shape.right),
    freeEdge('top', 'top', allowanceOf(topOf([left, right]), allowances), shape.top),
  ];
  return [cut(identifyPiece('modesty', left.block), 1, edges, shape.marks, turnsHemUp(style))];
}

function facingOf(style: Style, laced: LacedEdge): Cut[] {
  const { allowances, extras } = style;
  if (!extras?.facing) return [];
  const shape = facingShape(laced, extras.facing.width);
  if (!shape) return [noRoom('extras.facing.width', laced.block)];
  const edges = shape.outline.map(({ at, role, points }) =>
    freeEdge(at, role, allowanceBeside(role, laced, allowances), points),
  );
  return [cut(identifyPiece('facing', laced.block), 2, edges, shape.marks, turnsHemUp(style))];
}

function allowanceBeside(role: Edge['role'], laced: LacedEdge, allowances: Style['allowances']): number {
  switch (role) {
    case 'centre':
    case 'seam':
      return allowances[role];
    case 'top':
      return allowanceOf(topOf([laced]), allowances);
    default:
      return allowanceOf(role, allowances);
  }
}

/** What the upper edge beside laced edges is: under a shoulder a neckline. */
const topOf = (laced: readonly LacedEdge[]): 'top' | 'neckline' =>
  laced.some(({ top }) => top.some(({ role }) => role === 'shoulder')) ? 'neckline' : 'top';

/** A pair of straps, each doubled: folded along its middle. */
function strapOf({ allowances: { seam }, extras }: Style): Cut[] {
  const asked = extras?.straps;
  if (!asked) return [];
  const [width, length] = [2 * asked.width, asked.length];
  const [topLeft, footLeft] = [
    { x: 0, y: 0 },
    { x: 0, y: length },
  ];
  const [footRight, topRight] = [
    { x: width, y: length },
    { x: width, y: 0 },
  ];
  const edge = (at: EdgePlace['at'], from: Point, to: Point): Edge => freeEdge(at, 'seam', seam, [from, to]);
  const edges = [
    edge('inner', topLeft, footLeft),
    edge('hem', footLeft, footRight),
    edge('outer', footRight, topRight),
    edge('top', topRight, topLeft),
  ];
  return [cut(identifyPiece('strap', 'front'), 2, edges, [], false)];
}

const noRoom = (field: StylePath & `extras.${string}`, block: BlockName): Cut => ({
  piece: null,
  issues: [issue('extraHasNoRoom', {}, { field, block })],
});

function cut(
  identity: PieceIdentity,
  count: number,
  edges: readonly Edge[],
  marks: readonly MarkOnEdge[],
  turnedUp: boolean,
): Cut {
  const { line, turnsUp } = cutLineTurnedUp(
    edges.map((each) =>
      turnedUp && each.role === 'hem' ? { ...each, turnedUp: { start: true, end: true } } : each,
    ),
  );
  const ring = ringThrough(edges);
  const place = { block: identity.block, piece: identity };
  return {
    piece: {
      ...identity,
      cut: { count, onFold: false },
      edges,
      darts: [],
      cutLine: line ?? ring,
      grain: uprightInside(ring),
      marks: marks.map((mark) => ({ ...mark, edge: longEdgeIndex({ edges }, mark.edge) })),
    },
    issues: line ? (turnsUp ? [] : [issue('hemTurnsShort', {}, place)]) : [issue('cutLineUnsure', {}, place)],
  };
}
