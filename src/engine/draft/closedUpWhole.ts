// Both halves closed up side by side as seen from the front: the right half's mirror image and the left half meet at centre
// front.

import { closeUp, type Placement } from '../checks/closedUp';
import type { ClosedAt } from '../checks/slash';
import type { Point } from '../geometry/point';
import { innerEdge, longEdgeIndex } from '../pieces/edgeLookup';
import type { Piece } from '../pieces/piece';
import { pieceOfSide } from '../terms/identity';
import type { Side } from '../terms/names';
import type { Draft } from './draft';

/** Placements of the whole's pieces, which lie right side up already, so that none is mirrored. */
export function closeUpWhole(halves: Readonly<Record<Side, Draft>>, at: ClosedAt): Placement[] {
  const [own, other] = [centreHeld(halves.left, at), centreHeld(halves.right, at)];
  const closedHalf = (side: Side): Placement[] =>
    closeUp(halves[side].pieces, at).map((placement) => ({
      ...placement,
      piece: pieceOfSide(side, placement.piece),
      mirrored: false,
    }));
  const left = closedHalf('left');
  const right = closedHalf('right').map(
    (placement): Placement => ({
      ...placement,
      turnRad: -placement.turnRad,
      shift: { x: own.x + other.x - placement.shift.x, y: own.y - other.y + placement.shift.y },
    }),
  );
  return [...right.reverse(), ...left];
}

/** The point of the centre front that is held: its upper end, the waist mark or its lower end. */
function centreHeld({ pieces, span }: Draft, at: ClosedAt): Point {
  const piece = pieces.find(({ block, number }) => block === 'front' && number === 1);
  const held = piece && heldOn(piece, at);
  return held ?? { x: 0, y: span?.waist ?? 0 };
}

function heldOn(piece: Piece, at: ClosedAt): Point | undefined {
  if (at === 'waist') {
    const centre = longEdgeIndex(piece, 'inner');
    return piece.marks.find(({ level, edge }) => level === 'waist' && edge === centre)?.at;
  }
  const { points } = innerEdge(piece);
  return at === 'top' ? points[0] : points.at(-1);
}
