// Both halves closed up side by side as seen from the front: the right half's mirror image and the left half meet at centre
// front.

import { closeUp, type Placement } from '../checks/closedUp';
import type { ClosedAt } from '../checks/slash';
import type { Point } from '../geometry/point';
import { idOfSide } from '../pieces/rightSideUp';
import type { Side } from '../terms/names';
import type { Draft } from './draft';

/** Placements of the whole's pieces, which lie right side up already, so that none is mirrored. */
export function closeUpWhole(halves: Readonly<Record<Side, Draft>>, at: ClosedAt): Placement[] {
  const [own, other] = [centreHeld(halves.left, at), centreHeld(halves.right, at)];
  const right = closeUp(halves.right.pieces, at).map(
    ({ piece, part, turnRad, shift }): Placement => ({
      piece: idOfSide('right', piece),
      part,
      mirrored: false,
      turnRad: -turnRad,
      shift: { x: own.x + other.x - shift.x, y: own.y - other.y + shift.y },
    }),
  );
  const left = closeUp(halves.left.pieces, at).map(
    (placement): Placement => ({ ...placement, piece: idOfSide('left', placement.piece), mirrored: false }),
  );
  return [...right.reverse(), ...left];
}

/** The point of the centre front that is held: its upper end, the waist mark or its lower end. */
function centreHeld({ pieces, span }: Draft, at: ClosedAt): Point {
  const piece = pieces.find(({ block, number }) => block === 'front' && number === 1);
  const points = piece?.edges[0]?.points;
  const held =
    at === 'waist'
      ? piece?.marks.find(({ level, edge }) => level === 'waist' && edge === 0)?.at
      : at === 'top'
        ? points?.[0]
        : points?.at(-1);
  return held ?? { x: 0, y: span?.waist ?? 0 };
}
