// Presses on the seams of the closed-up panels, and edges pulled across their seams there.

import { type PointerEvent, useEffect, useRef } from 'react';
import type { Piece, Placement, Point } from '../../../engine';
import type { PlacedPart } from './ClosedName';

/** An edge by its place in the piece's list, or a closed dart by its wedge; `y` is the height that was pressed, mm, null where it is not known. */
export type Picked = { readonly piece: string; readonly y: number | null } & (
  | { readonly edge: number }
  | { readonly wedge: string }
);

/** What is done as an edge is pulled; `inwardMm` is how far into its panel, less than nothing for out of it. */
export interface EdgePull {
  readonly onPull: (picked: Picked, inwardMm: number) => void;
  /** The edge was let go. */
  readonly onKeep: (picked: Picked, inwardMm: number) => void;
  readonly onDrop: () => void;
}

/** A pointer that moved less is a press. px */
const PRESS_PX = 4;

interface Pull {
  readonly pointer: number;
  readonly picked: Picked;
  readonly placement: Placement;
  /** +1 where x grows into the panel, −1 where it grows out of it; 0 for a closed dart, which is pressed only. */
  readonly inward: number;
  readonly from: Point;
  readonly pxFrom: Point;
  /** From the screen to the drawing as it was when the pull began: the drawing moves under the pull. */
  readonly matrix: DOMMatrix;
  mm: number;
  moved: boolean;
}

/** Handlers for the drawing. A pull along a seam is a scroll under a finger, and a press elsewhere. */
export function useEdgePull(
  placed: readonly PlacedPart[],
  onPick: (picked: Picked) => void,
  { onPull, onKeep, onDrop }: EdgePull,
) {
  const pull = useRef<Pull | null>(null);
  const drop = useRef(onDrop);
  drop.current = onDrop;
  useEffect(() => {
    const dropOnEscape = ({ key }: KeyboardEvent): void => {
      if (key !== 'Escape' || !pull.current?.moved) return;
      pull.current = null;
      drop.current();
    };
    window.addEventListener('keydown', dropOnEscape);
    return () => window.removeEventListener('keydown', dropOnEscape);
  }, []);
  const onPointerDown = (event: PointerEvent<SVGSVGElement>): void => {
    const found = reachedBy(event.target, placed);
    const matrix = event.currentTarget.getScreenCTM?.()?.inverse();
    if (!found || !matrix || event.button !== 0 || pull.current) return;
    const from = through(matrix, event);
    pull.current = {
      pointer: event.pointerId,
      picked: { ...found.picked, y: onPiece(found.placement, from).y },
      placement: found.placement,
      inward: found.inward,
      from,
      pxFrom: { x: event.clientX, y: event.clientY },
      matrix,
      mm: 0,
      moved: false,
    };
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    const own = pull.current;
    if (!own || event.pointerId !== own.pointer || own.inward === 0) return;
    if (!own.moved && Math.hypot(event.clientX - own.pxFrom.x, event.clientY - own.pxFrom.y) < PRESS_PX)
      return;
    if (!own.moved) event.currentTarget.setPointerCapture(event.pointerId);
    own.moved = true;
    const now = through(own.matrix, event);
    own.mm = own.inward * (onPiece(own.placement, now).x - onPiece(own.placement, own.from).x);
    onPull(own.picked, own.mm);
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>): void => {
    const own = pull.current;
    if (own && event.pointerId !== own.pointer) return;
    pull.current = null;
    if (own?.moved) onKeep(own.picked, own.mm);
    else {
      const found = own?.picked ?? reachedBy(event.target, placed)?.picked;
      if (found) onPick(found);
    }
  };
  const onPointerCancel = (event: PointerEvent<SVGSVGElement>): void => {
    if (event.pointerId !== pull.current?.pointer) return;
    const { moved } = pull.current;
    pull.current = null;
    if (moved) onDrop();
  };
  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel };
}

/** The edge or closed dart that a pointer is on. */
function reachedBy(
  target: EventTarget,
  placed: readonly PlacedPart[],
): { picked: Picked; placement: Placement; inward: number } | null {
  if (!(target instanceof Element)) return null;
  const [edge, wedge] = [target.getAttribute('data-edge'), target.getAttribute('data-wedge')];
  const panel = target.closest('[data-piece]');
  const piece = panel?.getAttribute('data-piece');
  const part = Number(panel?.getAttribute('data-part') ?? 0);
  const found =
    placed.find((each) => each.piece.id === piece && each.placement.part === part) ??
    placed.find((each) => each.piece.id === piece);
  if (!found || !piece) return null;
  const { placement } = found;
  if (wedge !== null) return { picked: { piece, wedge, y: null }, placement, inward: 0 };
  if (edge === null) return null;
  return {
    picked: { piece, edge: Number(edge), y: null },
    placement,
    inward: inwardOf(found.piece, Number(edge)),
  };
}

function inwardOf({ edges }: Piece, index: number): number {
  const edge = edges[index];
  if (edge?.role !== 'seam' && edge?.role !== 'centre') return 0;
  const sum = edges.flatMap(({ points }) => points).reduce((x, point) => x + point.x, 0);
  // Pieces that lie right side up may be mirrored, with the side at the left.
  const toSide = sum < 0 ? -1 : 1;
  if (edge.dart) return edge.dart.leg === 'inner' ? -toSide : toSide;
  return edge.at === 'inner' ? toSide : edge.at === 'outer' ? -toSide : 0;
}

const through = (matrix: DOMMatrix, { clientX, clientY }: PointerEvent): Point => ({
  x: matrix.a * clientX + matrix.c * clientY + matrix.e,
  y: matrix.b * clientX + matrix.d * clientY + matrix.f,
});

/** A point of the drawing in the coordinates of the piece that lies there. */
function onPiece({ mirrored, turnRad, shift }: Placement, point: Point): Point {
  const [x, y] = [point.x - shift.x, point.y - shift.y];
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const own = x * cos + y * sin;
  return { x: mirrored ? -own : own, y: y * cos - x * sin };
}
