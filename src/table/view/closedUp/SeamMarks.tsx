// A mark over each seam of the panels closed up: a tick where its mates are as long as each other, else by how much they differ.

import type { ClosedAt, Point } from '../../../engine';
import { placePoint } from '../../../engine';
import type { PlacedPart } from './ClosedName';
import type { PointedOut } from './ClosedPart';

export interface SeamMark {
  readonly key: string;
  readonly seam: Extract<PointedOut, { kind: 'seam' }>;
  /** By how much the mates differ, as it is written; null where they do not. */
  readonly difference: string | null;
}

interface SeamMarksProps {
  readonly placed: readonly PlacedPart[];
  readonly marks: readonly SeamMark[];
  /** The level at which the seams are closed. */
  readonly at: ClosedAt;
}

/** Radius of a mark and how far it stands from the edge of the garment, mm of the drawing. */
const RADIUS_MM = 4.5;
const OUT_MM = 8;

export function SeamMarks({ placed, marks, at }: SeamMarksProps) {
  return marks.map(({ key, seam, difference }) => {
    const place = heldPoint(placed, seam, at);
    return place ? (
      <g
        key={key}
        className={difference === null ? 'seam-mark' : 'seam-mark off'}
        transform={`translate(${place.x} ${place.y})`}
      >
        <circle r={RADIUS_MM} />
        <path d={difference === null ? 'M-2 0.2 -0.6 1.7 2.1 -1.5' : 'M0 -2.4V0.6M0 2.2V2.3'} />
        {difference === null ? null : (
          <text x={RADIUS_MM + 2} y={3.5}>
            {difference}
          </text>
        )}
      </g>
    ) : null;
  });
}

/** Beside the place at which the two edges of a seam lie on each other; null where neither is drawn. */
function heldPoint(
  placed: readonly PlacedPart[],
  { pieces, edges }: SeamMark['seam'],
  at: ClosedAt,
): Point | null {
  const [[id], [own]] = [pieces, edges];
  const found = placed.find(
    ({ piece, part }) => piece.id === id && part.rows.some(({ edge }) => edge === own),
  );
  const points = found?.part.rows.find(({ edge }) => edge === own)?.points ?? [];
  const waist = found?.piece.marks.find(({ level, edge }) => level === 'waist' && edge === own)?.at.y;
  const [first] = points;
  if (!found || !first) return null;
  // The less, the nearer to where the edges are held.
  const away = ({ y }: Point): number =>
    at === 'top' ? y : at === 'hem' ? -y : Math.abs(y - (waist ?? first.y));
  const held = points.reduce((best, point) => (away(point) < away(best) ? point : best), first);
  const { x, y } = placePoint(found.placement, held);
  return { x, y: at === 'top' ? y - OUT_MM : at === 'hem' ? y + OUT_MM : y };
}
