// A panel in the drawing of the panels closed up, or the part of one on one side of a closed dart: its edges, marks and darts.

import type { ClosedAt, DartLines, Draft, LevelName, Piece, Point } from '../../../engine';
import { isInside, placePoint } from '../../../engine';
import { closedPath, pathThrough } from '../lines/paths';
import { ClosedName, type PlacedPart } from './ClosedName';

/** What is highlighted: a seam, a dart closed at both ends, a place where the top edge or the hem crosses a seam, or a level. */
export type PointedOut =
  | { readonly kind: 'seam'; readonly pieces: readonly string[]; readonly edges: readonly number[] }
  | { readonly kind: 'dart'; readonly piece: string; readonly wedge: string }
  | { readonly kind: 'crossing'; readonly piece: string; readonly at: Point }
  | { readonly kind: 'level'; readonly level: LevelName };

interface ClosedPartProps {
  readonly placed: PlacedPart;
  readonly pointedOut: PointedOut | null;
  readonly draft: Draft;
  /** The level at which the seams are closed. */
  readonly at: ClosedAt;
  readonly name: string;
}

export function ClosedPart({ placed, pointedOut, draft, at, name }: ClosedPartProps) {
  const { piece, part, placement } = placed;
  const place = (point: Point): Point => placePoint(placement, point);
  const outline = part.rows.flatMap(({ points }) => points.slice(0, -1));
  const edges = part.rows.flatMap(({ edge: index, points }) => {
    const edge = index === null ? undefined : piece.edges[index];
    return edge && index !== null ? [{ edge, index, d: pathThrough(points.map(place)) }] : [];
  });
  const marks = piece.marks.filter(({ edge, at }) =>
    edge === null ? isInside(outline, at) : edges.some(({ index }) => index === edge),
  );
  const isLevel = (level: LevelName | null): boolean =>
    pointedOut?.kind === 'level' && pointedOut.level === level;
  return (
    <g className={`closed-panel block-${piece.block}`} data-piece={piece.id} data-part={placement.part}>
      <path className="panel" d={closedPath(outline.map(place))} />
      {piece.darts
        .filter(({ open, inner }) => !open && inner[1] && isInside(outline, inner[1]))
        .map((dart) => (
          <ClosedDart key={dart.wedge} piece={piece} dart={dart} place={place} pointedOut={pointedOut} />
        ))}
      {part.rows
        .filter(({ edge }) => edge === null)
        .map(({ points }) => (
          <path
            key={`${points[0]?.x}`}
            className="edge slash"
            strokeDasharray="3 5"
            d={pathThrough(points.map(place))}
          />
        ))}
      {edges.map(({ edge, index, d }) => (
        <path
          key={index}
          className={`edge edge-${edge.role}${isPointedOut(piece, index, pointedOut) ? ' pointed-out' : ''}`}
          d={d}
        />
      ))}
      {edges.map(({ edge, index, d }) =>
        edge.mate ? <path key={index} className="edge-reach" data-edge={index} d={d} /> : null,
      )}
      {marks.map(({ kind, edge, level, at }) => {
        const { x, y } = place(at);
        return (
          <circle
            key={`${kind} ${edge} ${at.x} ${at.y}`}
            className={`${kind}-mark${isLevel(level) && edge !== null ? ' pointed-out' : ''}`}
            cx={x}
            cy={y}
            r={1.6}
          />
        );
      })}
      {pointedOut?.kind === 'level' ? (
        <LevelAcross placed={placed} draft={draft} level={pointedOut.level} />
      ) : null}
      <ClosedName placed={placed} at={at} name={name} />
    </g>
  );
}

interface ClosedDartProps {
  readonly piece: Piece;
  readonly dart: DartLines;
  readonly place: (point: Point) => Point;
  readonly pointedOut: PointedOut | null;
}

/** A dart within its panel, and over it the area in which it can be pressed. */
function ClosedDart({ piece, dart: { wedge, inner, outer }, place, pointedOut }: ClosedDartProps) {
  const shape = closedPath([...inner, ...[...outer].reverse()].map(place));
  const isShown = pointedOut?.kind === 'dart' && pointedOut.piece === piece.id && pointedOut.wedge === wedge;
  return (
    <>
      <path className="dart" d={shape} />
      {isShown
        ? [inner, outer].map((leg, i) => (
            <path
              key={i === 0 ? 'inner' : 'outer'}
              className="edge edge-seam pointed-out"
              d={pathThrough(leg.map(place))}
            />
          ))
        : null}
      <path className="edge-reach" data-wedge={wedge} d={shape} />
    </>
  );
}

function isPointedOut(piece: Piece, edge: number, pointedOut: PointedOut | null): boolean {
  if (pointedOut?.kind !== 'seam') return false;
  return pointedOut.pieces.some((id, i) => id === piece.id && pointedOut.edges[i] === edge);
}

/** The level line on one part, from its inner to its outer line. */
function LevelAcross({
  placed: { piece, part, placement },
  draft,
  level,
}: {
  placed: PlacedPart;
  draft: Draft;
  level: LevelName;
}) {
  const { levels } = (piece.side && draft.halves?.[piece.side]) ?? draft;
  const y = levels.find((each) => each.name === level)?.y;
  if (y === undefined) return null;
  const [from, to] = [part.inner, part.outer].map(({ points }) => {
    const below = points.findIndex((point, i) => i > 0 && point.y >= y - 1e-6);
    const [a, b] = [points[below - 1], points[below]];
    if (!a || !b || a.y > y + 1e-6) return null;
    return placePoint(placement, { x: a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y });
  });
  return from && to ? (
    <line className="level-across pointed-out" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
  ) : null;
}
