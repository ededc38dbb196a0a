// The panels closed up as worn: from centre front round the side to centre back, with one place pointed out.

import { type PointerEvent, useMemo } from 'react';
import {
  type ClosedAt,
  closeUp,
  closeUpWhole,
  type Draft,
  type Edge,
  HANDS,
  type LevelName,
  type Piece,
  type Placement,
  type Point,
  placePoint,
} from '../../engine';
import { closedPath, pathThrough } from './paths';

/** What to point out: a seam, a crossing of top edge or hem over a seam, a level, or a panel. */
export type PointedOut =
  | { readonly kind: 'seam'; readonly pieces: readonly string[]; readonly edges: readonly number[] }
  | { readonly kind: 'crossing'; readonly piece: string; readonly at: Point }
  | { readonly kind: 'level'; readonly level: LevelName };

interface ClosedUpProps {
  readonly draft: Draft;
  readonly at: ClosedAt;
  readonly pointedOut: PointedOut | null;
  readonly nameOf: (piece: Piece) => string;
  /** A seam was pressed on the drawing; `edge` is its place in the piece's list. The rows of the proof do the same by key. */
  readonly onPick: (piece: string, edge: number) => void;
}

const ROOM_MM = 14;

export function ClosedUp({ draft, at, pointedOut, nameOf, onPick }: ClosedUpProps) {
  const { pieces, halves } = draft;
  const placements = useMemo(
    () => (halves ? closeUpWhole(halves, at) : closeUp(pieces, at)),
    [pieces, halves, at],
  );
  const placed = placements.flatMap((placement) => {
    const piece = pieces.find((each) => each.id === placement.piece);
    return piece ? [{ piece, placement }] : [];
  });
  const box = boxOf(
    placed.flatMap(({ piece, placement }) =>
      piece.edges.flatMap((edge) => edge.points.map((point) => placePoint(placement, point))),
    ),
  );
  if (!box) return null;
  const pick = ({ target }: PointerEvent): void => {
    const edge = target instanceof Element ? target.getAttribute('data-edge') : null;
    const piece =
      target instanceof Element ? target.closest('[data-piece]')?.getAttribute('data-piece') : null;
    if (edge && piece) onPick(piece, Number(edge));
  };
  const [width, height] = [box.right - box.left + 2 * ROOM_MM, box.foot - box.top + 2 * ROOM_MM];
  return (
    <svg
      className="closed-up"
      role="img"
      aria-label={`The panels closed up along their seams, centre front ${halves ? 'in the middle' : 'on the left'}`}
      onPointerUp={pick}
      viewBox={`${box.left - ROOM_MM} ${box.top - ROOM_MM} ${width} ${height}`}
    >
      {placed.map(({ piece, placement }) => (
        <ClosedPanel
          key={piece.id}
          piece={piece}
          placement={placement}
          pointedOut={pointedOut}
          draft={draft}
          name={nameOf(piece)}
        />
      ))}
      {pointedOut?.kind === 'crossing' ? <Crossing placed={placed} pointedOut={pointedOut} /> : null}
    </svg>
  );
}

interface ClosedPanelProps {
  readonly piece: Piece;
  readonly placement: Placement;
  readonly pointedOut: PointedOut | null;
  readonly draft: Draft;
  readonly name: string;
}

function ClosedPanel({ piece, placement, pointedOut, draft, name }: ClosedPanelProps) {
  const place = (point: Point): Point => placePoint(placement, point);
  const ring = piece.edges.flatMap((edge) => edge.points.slice(0, -1)).map(place);
  const middle = place({
    x: piece.grain[0].x,
    y: piece.grain[0].y + (piece.grain[1].y - piece.grain[0].y) * 0.1,
  });
  return (
    <g className="closed-panel" data-piece={piece.id}>
      <path className="panel" d={closedPath(ring)} />
      {piece.darts
        .filter(({ open }) => !open)
        .map(({ wedge, inner, outer }) => (
          <path key={wedge} className="dart" d={closedPath([...inner, ...[...outer].reverse()].map(place))} />
        ))}
      {piece.edges.map((edge, i) => (
        <path
          key={keyOf(edge)}
          className={`edge edge-${edge.role}${isPointedOut(piece, i, pointedOut) ? ' pointed-out' : ''}`}
          d={pathThrough(edge.points.map(place))}
        />
      ))}
      {piece.edges.map((edge, i) =>
        edge.mate ? (
          <path
            key={keyOf(edge)}
            className="edge-reach"
            data-edge={i}
            d={pathThrough(edge.points.map(place))}
          />
        ) : null,
      )}
      {piece.marks.map((mark) => {
        const at = place(mark.at);
        return (
          <circle
            key={`${mark.kind} ${mark.edge} ${mark.at.x} ${mark.at.y}`}
            className={`${mark.kind}-mark${pointedOut?.kind === 'level' && pointedOut.level === mark.level && mark.edge !== null ? ' pointed-out' : ''}`}
            cx={at.x}
            cy={at.y}
            r={1.6}
          />
        );
      })}
      {pointedOut?.kind === 'level' ? (
        <LevelAcross piece={piece} place={place} draft={draft} level={pointedOut.level} />
      ) : null}
      <text className="panel-name" x={middle.x} y={middle.y}>
        {name}
      </text>
    </g>
  );
}

/** No two edges of a piece begin at the same place. */
const keyOf = ({ points }: Edge): string => `${points[0]?.x} ${points[0]?.y}`;

function isPointedOut(piece: Piece, edge: number, pointedOut: PointedOut | null): boolean {
  if (pointedOut?.kind !== 'seam') return false;
  return pointedOut.pieces.some((id, i) => id === piece.id && pointedOut.edges[i] === edge);
}

/** The level line on one panel, leg to leg. */
function LevelAcross({
  piece,
  place,
  draft,
  level,
}: {
  piece: Piece;
  place: (point: Point) => Point;
  draft: Draft;
  level: LevelName;
}) {
  const hand = HANDS.find((each) => piece.id.startsWith(`${each}-`));
  const { levels } = (hand && draft.halves?.[hand]) ?? draft;
  const y = levels.find((each) => each.name === level)?.y;
  if (y === undefined) return null;
  const ends = [piece.edges[0], piece.edges[piece.outer]].map((edge) => {
    const at = edge?.points.find((point) => Math.abs(point.y - y) < 1e-6);
    return at ? place(at) : null;
  });
  const [from, to] = ends;
  return from && to ? (
    <line className="level-across pointed-out" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
  ) : null;
}

function Crossing({
  placed,
  pointedOut,
}: {
  placed: readonly { piece: Piece; placement: Placement }[];
  pointedOut: Extract<PointedOut, { kind: 'crossing' }>;
}) {
  const found = placed.find(({ piece }) => piece.id === pointedOut.piece);
  if (!found) return null;
  const at = placePoint(found.placement, pointedOut.at);
  return <circle className="crossing" cx={at.x} cy={at.y} r={8} />;
}

function boxOf(points: readonly Point[]): { left: number; right: number; top: number; foot: number } | null {
  if (points.length === 0) return null;
  let [left, right, top, foot] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    foot = Math.max(foot, y);
  }
  return { left, right, top, foot };
}
