// The panels closed up as worn, from centre front round the side to centre back, with one place highlighted.

import { type CSSProperties, useMemo } from 'react';
import { TABLE } from '../../../document';
import {
  type ClosedAt,
  closeUp,
  closeUpWhole,
  type Draft,
  type Piece,
  type Placement,
  type Point,
  partsOf,
  placePoint,
} from '../../../engine';
import { movedRuns } from '../../layout/movedRuns';
import { pathThrough } from '../lines/paths';
import { fitNames, type PlacedPart } from './ClosedName';
import { ClosedPart, type PointedOut } from './ClosedPart';
import { type SeamLengths, SeamLengthTexts } from './SeamLengthTexts';
import { type SeamMark, SeamMarks } from './SeamMarks';
import { type EdgePull, type Picked, useEdgePull } from './useEdgePull';

interface ClosedUpProps {
  readonly draft: Draft;
  readonly at: ClosedAt;
  readonly pointedOut: PointedOut | null;
  /** Written beside the edges of the seam that is pointed out; null where none is. */
  readonly lengths: SeamLengths | null;
  /** Drawn over the seams. */
  readonly marks: readonly SeamMark[];
  readonly nameOf: (piece: Piece) => string;
  /** Is called when a seam or a closed dart is pressed. The rows of the proof do the same for the keyboard. */
  readonly onPick: (picked: Picked) => void;
  /** The panels without what fittings changed, whose lines are drawn where they lie otherwise; null where nothing was changed. */
  readonly unaltered: readonly Piece[] | null;
  readonly pull: EdgePull;
}

const ROOM_MM = 14;

export function ClosedUp(props: ClosedUpProps) {
  const { draft, at, pointedOut, lengths, marks, nameOf, onPick, unaltered, pull } = props;
  const { pieces, halves } = draft;
  const placed = useMemo(
    () => placedParts(pieces, halves ? closeUpWhole(halves, at) : closeUp(pieces, at), at),
    [pieces, halves, at],
  );
  const { inALine, mostMm } = fitNames(placed, at, ({ piece }) => nameOf(piece));
  const box = boxOf(
    placed.flatMap(({ part, placement }) =>
      part.rows.flatMap(({ points }) => points.map((point) => placePoint(placement, point))),
    ),
  );
  const pulled = useEdgePull(placed, onPick, pull);
  if (!box) return null;
  const [width, height] = [box.right - box.left + 2 * ROOM_MM, box.foot - box.top + 2 * ROOM_MM];
  return (
    <svg
      className={inALine ? 'closed-up' : 'closed-up worded'}
      style={{ '--most': `${mostMm}px` } as CSSProperties}
      role="img"
      aria-label={halves ? TABLE.closedWhole : TABLE.closedHalf}
      {...pulled}
      viewBox={`${box.left - ROOM_MM} ${box.top - ROOM_MM} ${width} ${height}`}
    >
      {placed.map((each) => (
        <ClosedPart
          key={`${each.piece.id} ${each.placement.part}`}
          placed={each}
          pointedOut={pointedOut}
          draft={draft}
          at={at}
          name={nameOf(each.piece)}
        />
      ))}
      {unaltered ? <UnalteredPanels placed={placed} unaltered={unaltered} /> : null}
      <SeamMarks placed={placed} marks={marks} at={at} />
      {pointedOut?.kind === 'seam' && lengths ? (
        <SeamLengthTexts placed={placed} seam={pointedOut} lengths={lengths} />
      ) : null}
      {pointedOut?.kind === 'crossing' ? <Crossing placed={placed} pointedOut={pointedOut} /> : null}
    </svg>
  );
}

/** The panels to draw, each whole or, where an open dart is closed, part by part. */
function placedParts(pieces: readonly Piece[], placements: readonly Placement[], at: ClosedAt): PlacedPart[] {
  return placements.flatMap((placement) => {
    const piece = pieces.find((each) => each.id === placement.piece.id);
    const part = piece && partsOf(piece, at)[placement.part];
    return piece && part ? [{ piece, part, placement }] : [];
  });
}

/** The lines that panels had before, where they moved, as the same part of them lies now. */
function UnalteredPanels({
  placed,
  unaltered,
}: {
  readonly placed: readonly PlacedPart[];
  readonly unaltered: readonly Piece[];
}) {
  const runs = placed.flatMap(({ piece, placement }) => {
    const was = unaltered.find(({ id }) => id === piece.id);
    if (!was || placement.part > 0) return [];
    return was.edges
      .flatMap(({ points }, i) => movedRuns(points, piece.edges[i]?.points ?? []))
      .map((run) => run.map((point) => placePoint(placement, point)));
  });
  return <path className="unaltered-lines" d={runs.map(pathThrough).join('')} />;
}

function Crossing({
  placed,
  pointedOut,
}: {
  placed: readonly PlacedPart[];
  pointedOut: Extract<PointedOut, { kind: 'crossing' }>;
}) {
  // Points are compared by their coordinates: those of a mirrored half are other objects.
  const isThere = ({ x, y }: Point): boolean => x === pointedOut.at.x && y === pointedOut.at.y;
  const found = placed.find(
    ({ piece, part }) =>
      piece.id === pointedOut.piece && part.rows.some(({ points }) => points.some(isThere)),
  );
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
