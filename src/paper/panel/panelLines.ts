// Lines of a panel: cut line, sew line, fold, grain, balance and drill marks.

import type { Edge, Mark, Piece, Point } from '../../engine';
import { placeNear, reachTo } from './edgeWalk';
import { cross, type Stroke } from './strokes';

/** How far a balance mark reaches across the seam line into the panel, so that it is seen after sewing. mm */
const MARK_INSIDE_MM = 4;
const ARROW_MM = 3;
const DRILL_MM = 2;
/** Distance from the fold of the bracket that points to it. mm */
export const BRACKET_MM = 9;

/** All lines of a piece, in the coordinates of its block. */
export function panelLines(piece: Piece): Stroke[] {
  const fold = foldOf(piece);
  return [
    ...cutLines(piece, fold),
    ...piece.edges
      .filter((edge) => edge.allowance > 0)
      .map((edge): Stroke => ({ kind: 'sew', points: edge.points })),
    ...piece.darts.flatMap(({ inner, outer }): Stroke[] => [
      { kind: 'sew', points: inner },
      { kind: 'sew', points: outer },
    ]),
    ...grainLines(piece),
    ...piece.marks.flatMap((mark) => markLines(mark, piece)),
    ...(fold ? bracketLines(fold) : []),
  ];
}

/** The edge on the fold of the cloth; null for a piece that is not cut on the fold. */
export const foldOf = (piece: Piece): Edge | null =>
  piece.cut.onFold ? (piece.edges.find((edge) => edge.role === 'centre') ?? null) : null;

/** The cut line. The part of it that lies on the fold is a fold line, because it is not cut. */
function cutLines({ cutLine }: Piece, fold: Edge | null): Stroke[] {
  const [first] = cutLine;
  if (!first) return [];
  const closedRing = [...cutLine, first];
  const ends = fold && [fold.points[0] as Point, fold.points[fold.points.length - 1] as Point];
  if (!ends) return [{ kind: 'cut', points: closedRing }];
  const [a, b] = ends as [Point, Point];
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const onFold = ({ x, y }: Point): boolean =>
    Math.abs((x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x)) / length < ON_FOLD_MM;
  const lines: { kind: 'cut' | 'fold'; points: Point[] }[] = [];
  for (let i = 1; i < closedRing.length; i += 1) {
    const [from, to] = [closedRing[i - 1] as Point, closedRing[i] as Point];
    const kind = onFold(from) && onFold(to) ? 'fold' : 'cut';
    const last = lines[lines.length - 1];
    if (last?.kind === kind) last.points.push(to);
    else lines.push({ kind, points: [from, to] });
  }
  return lines;
}

const ON_FOLD_MM = 0.01;

function grainLines({ grain: [top, foot] }: Piece): Stroke[] {
  const length = Math.hypot(foot.x - top.x, foot.y - top.y);
  if (length === 0) return [];
  const direction = { x: (foot.x - top.x) / length, y: (foot.y - top.y) / length };
  return [
    { kind: 'grain', points: [top, foot] },
    { kind: 'grain', points: arrowHead(top, { x: -direction.x, y: -direction.y }) },
    { kind: 'grain', points: arrowHead(foot, direction) },
  ];
}

function arrowHead(tip: Point, direction: Point): Point[] {
  const wing = (side: number): Point => ({
    x: tip.x - direction.x * ARROW_MM - direction.y * side * ARROW_MM * 0.4,
    y: tip.y - direction.y * ARROW_MM + direction.x * side * ARROW_MM * 0.4,
  });
  return [wing(1), tip, wing(-1)];
}

function markLines(mark: Mark, piece: Piece): Stroke[] {
  if (mark.kind === 'drill') return cross(mark.at, DRILL_MM);
  const markLine = balanceMarkLine(mark, piece);
  return markLine ? [{ kind: 'mark', points: [markLine.inner, markLine.outer] }] : [];
}

/** The line of a balance mark, from the cut line across the seam line into the panel; null where its edge has no length. */
export function balanceMarkLine(
  mark: Mark,
  piece: Piece,
): { readonly inner: Point; readonly outer: Point; readonly out: Point } | null {
  const edge = mark.edge === null ? undefined : piece.edges[mark.edge];
  const place = edge && placeNear(edge.points, mark.at);
  if (!edge || !place) return null;
  const { out } = place;
  const reached = edge.allowance > 0 ? reachTo(piece.cutLine, mark.at, out) : 0;
  const outwards = Math.min(reached ?? edge.allowance, 2 * edge.allowance);
  const at = (length: number): Point => ({ x: mark.at.x + out.x * length, y: mark.at.y + out.y * length });
  return { inner: at(-MARK_INSIDE_MM), outer: at(outwards), out };
}

/** A bracket beside the fold whose two arrows touch it. */
function bracketLines(fold: Edge): Stroke[] {
  const lines: Stroke[] = [];
  const [a, b] = [fold.points[0] as Point, fold.points[fold.points.length - 1] as Point];
  const corner = (t: number, away: number): Point => {
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const out = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
    return { x: a.x + (b.x - a.x) * t - out.x * away, y: a.y + (b.y - a.y) * t - out.y * away };
  };
  const [high, low] = [0.15, 0.85];
  lines.push({
    kind: 'grain',
    points: [corner(high, 0), corner(high, BRACKET_MM), corner(low, BRACKET_MM), corner(low, 0)],
  });
  for (const t of [high, low]) {
    const [tip, from] = [corner(t, 0), corner(t, 1)];
    lines.push({ kind: 'grain', points: arrowHead(tip, { x: tip.x - from.x, y: tip.y - from.y }) });
  }
  return lines;
}
