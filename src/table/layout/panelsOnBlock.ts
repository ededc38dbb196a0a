// The panels of a half block in the block's own coordinates. A side panel cut in one belongs to both blocks: it is split along
// the side line and moved back to where it was drafted, so that a block is drawn in the same way with a side seam or without.

import {
  type Block,
  type BlockName,
  type DartLines,
  type Draft,
  edgesAt,
  innerEdge,
  outerEdge,
  type Piece,
  type Point,
  pointsDown,
  ringThrough,
  xAt,
} from '../../engine';

/** A piece, or its part on one block. Lines run from the top down; x from the block's centre line, mm. */
export interface PanelOnBlock {
  readonly piece: Piece;
  /** Counted from the centre line, from 1. */
  readonly number: number;
  /** True for the part of a side panel that continues on the other block without a seam. */
  readonly isJoined: boolean;
  /** Closed ring, not repeated at its end. */
  readonly ring: readonly Point[];
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  /** The part of the side seam above a dart that opens in it; `outer` is then the part below. Null without such a dart. */
  readonly aboveDart: readonly Point[] | null;
  /** Edges that are not sewn to another: top edge, hem, centre. */
  readonly lines: readonly (readonly Point[])[];
  readonly darts: readonly DartLines[];
  readonly drills: readonly Point[];
}

/** The panels of one half block, from its centre line to the side; put together once for each draft. */
export function panelsOnBlock(draft: Draft, block: BlockName): readonly PanelOnBlock[] {
  const known = found.get(draft) ?? {};
  const panels = known[block] ?? panelsOf(draft, block);
  if (!known[block]) found.set(draft, { ...known, [block]: panels });
  return panels;
}

const found = new WeakMap<Draft, { readonly [block in BlockName]?: readonly PanelOnBlock[] }>();

function panelsOf({ pieces, blocks, span }: Draft, block: BlockName): PanelOnBlock[] {
  const whole = pieces
    .filter((piece) => piece.block === block && piece.kind !== 'sidePanel')
    .sort((a, b) => a.number - b.number)
    .map(wholePanel);
  const joined = sidePanelAmong(pieces);
  if (!joined || !blocks || !span) return whole;
  const split = splitPanel(joined, block, blocks, xAt(blocks.front.sideSeam, span.waist));
  const number = block === 'front' ? joined.number : (whole.at(-1)?.number ?? 0) + 1;
  return [...whole, { ...split, number }];
}

/** The side panel of both blocks in one; undefined where there is a side seam. */
export const sidePanelOf = ({ pieces }: Draft): Piece | undefined => sidePanelAmong(pieces);

const sidePanelAmong = (pieces: readonly Piece[]): Piece | undefined =>
  pieces.find(({ kind }) => kind === 'sidePanel');

function wholePanel(piece: Piece): PanelOnBlock {
  return {
    piece,
    number: piece.number,
    isJoined: false,
    ring: ringThrough(piece.edges),
    inner: innerEdge(piece).points,
    outer: [...outerEdge(piece).points].reverse(),
    aboveDart: piece.edges.find(({ sidePart }) => sidePart === 'aboveDart')?.points ?? null,
    lines: piece.edges.filter(({ role }) => role !== 'seam').map(({ points }) => points),
    darts: piece.darts,
    drills: drillsOf(piece),
  };
}

const drillsOf = ({ marks }: Piece): Point[] =>
  marks.filter(({ kind }) => kind === 'drill').map(({ at }) => at);

/**
 * The part of a side panel cut in one on one side of the vertical line at `x` mm, with the curve of the block's side seam in the
 * place of that line.
 */
function splitPanel(
  piece: Piece,
  block: BlockName,
  blocks: Readonly<Record<BlockName, Block>>,
  x: number,
): Omit<PanelOnBlock, 'number'> {
  const isOwn = (at: number): boolean => (block === 'front' ? at <= x : at >= x);
  const { sideSeam } = blocks[block];
  const place = (point: Point): Point => ({
    x: xAt(sideSeam, point.y) + (block === 'front' ? point.x - x : x - point.x),
    y: point.y,
  });
  const ownPart = (points: readonly Point[]): Point[] => clip(points, isOwn, x).map(place);
  const edges = piece.edges.map((edge) => ({ ...edge, points: ownPart(edge.points) }));
  const hem = edgesAt({ edges }, 'hem').flatMap(({ points }) => points);
  const top = edgesAt({ edges }, 'top').flatMap(({ points }) => points);
  const [foot, head] = block === 'front' ? [hem.at(-1), top[0]] : [hem[0], top.at(-1)];
  const line = head && foot ? pointsDown(sideSeam, head.y, foot.y) : [];
  const [towardsFront, towardsBack] = [innerEdge({ edges }).points, outerEdge({ edges }).points];
  const inner = block === 'front' ? towardsFront : [...towardsBack].reverse();
  const darts = piece.darts.filter((dart) => isOwn(dart.inner[0]?.x ?? x));
  return {
    piece,
    isJoined: true,
    ring:
      block === 'front'
        ? [...towardsFront, ...hem, ...[...line].reverse(), ...top]
        : [...hem, ...towardsBack, ...top, ...line],
    inner,
    outer: line,
    aboveDart: null,
    lines: edges
      .filter(({ role, points }) => role !== 'seam' && points.length > 1)
      .map(({ points }) => points),
    darts: darts.map((dart) => {
      const [a, b] = [dart.inner.map(place), dart.outer.map(place)];
      return block === 'front' ? { ...dart, inner: a, outer: b } : { ...dart, inner: b, outer: a };
    }),
    drills: drillsOf(piece)
      .filter((at) => isOwn(at.x))
      .map(place),
  };
}

/** The part of a polyline for whose x `isOwn` is true, cut where it crosses `x`. */
function clip(points: readonly Point[], isOwn: (x: number) => boolean, x: number): Point[] {
  return points.flatMap((point, i) => {
    const before = points[i - 1];
    const cut =
      before && isOwn(before.x) !== isOwn(point.x)
        ? [{ x, y: before.y + ((point.y - before.y) * (x - before.x)) / (point.x - before.x) }]
        : [];
    return isOwn(point.x) ? [...cut, point] : cut;
  });
}
