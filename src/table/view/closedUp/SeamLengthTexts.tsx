// The lengths of the selected seam, each beside its own edge in the drawing of the panels closed up.

import { placePoint } from '../../../engine';
import type { PlacedPart } from './ClosedName';
import type { PointedOut } from './ClosedPart';

/** Lengths of the two edges of a seam and their difference, as they are written. */
export interface SeamLengths {
  readonly edges: readonly string[];
  readonly difference: string;
}

interface SeamLengthTextsProps {
  readonly placed: readonly PlacedPart[];
  readonly seam: Extract<PointedOut, { kind: 'seam' }>;
  readonly lengths: SeamLengths;
}

/** Gap between an edge and its length, mm of the drawing. */
const ASIDE_MM = 5;

export function SeamLengthTexts({ placed, seam, lengths }: SeamLengthTextsProps) {
  const places = seam.pieces.flatMap((id, i) => {
    const found = placed.find(
      ({ piece, part }) => piece.id === id && part.rows.some(({ edge }) => edge === seam.edges[i]),
    );
    const points = found?.part.rows.find(({ edge }) => edge === seam.edges[i])?.points ?? [];
    const middle = points[Math.floor(points.length / 2)];
    if (!found || !middle) return [];
    const [top, foot] = found.piece.grain;
    // A panel may lean so far that its upper end lies across the seam from its middle.
    const panel = placePoint(found.placement, { x: (top.x + foot.x) / 2, y: (top.y + foot.y) / 2 });
    const at = placePoint(found.placement, middle);
    const key = `${id} ${seam.edges[i]}`;
    return [{ key, at, toRight: panel.x > at.x, text: lengths.edges[i] ?? '' }];
  });
  // The difference is the longest of the texts: it runs inwards, so that it stays in the drawing.
  const xs = placed.map(({ piece, placement }) => placePoint(placement, piece.grain[0]).x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const inwards = places.find(({ at, toRight }) => toRight === at.x < middle) ?? places[0];
  return (
    <g className="seam-lengths">
      {places.map(({ key, at, toRight, text }) => (
        <text
          key={key}
          x={at.x + (toRight ? ASIDE_MM : -ASIDE_MM)}
          y={at.y}
          textAnchor={toRight ? 'start' : 'end'}
        >
          {text}
        </text>
      ))}
      {inwards ? (
        <text
          className="difference"
          x={inwards.at.x + (inwards.toRight ? ASIDE_MM : -ASIDE_MM)}
          y={inwards.at.y}
          dy="1.2em"
          textAnchor={inwards.toRight ? 'start' : 'end'}
        >
          {lengths.difference}
        </text>
      ) : null}
    </g>
  );
}
