// The lower edge of a shoulder band, parted so that each panel's top edge has a mate of its own length.

import { at, last } from '../geometry/lists';
import { between, distance, type Point } from '../geometry/point';
import { polylineLength } from '../geometry/polyline';
import type { Edge, EdgeReference, Mark, Piece } from '../pieces/piece';
import { identityOf } from '../terms/identity';

export interface TopEdge {
  readonly mate: EdgeReference;
  /** mm */
  readonly length: number;
}

/** The top edges of a block's panels from the centre to the side; an open dart parts one in two. */
export const topsOf = (panels: readonly Piece[]): TopEdge[] =>
  [...panels]
    .sort((a, b) => a.number - b.number)
    .flatMap((panel) =>
      panel.edges
        .map(({ role, points }, edge) => ({
          role,
          mate: { piece: identityOf(panel), edge },
          length: polylineLength(points),
        }))
        .filter(({ role }) => role === 'top')
        // Counter-clockwise an edge nearer the centre comes later.
        .reverse(),
    );

/** The lower edge parted where the panels' top edges meet, so that each part is as long as its mate. */
export function lowerParts(
  sewn: readonly Point[],
  tops: readonly TopEdge[],
): { points: readonly Point[]; mate: EdgeReference | null }[] {
  if (tops.length === 0) return [{ points: sewn, mate: null }];
  let rest = sewn;
  return tops.map(({ mate, length }, i) => {
    if (i === tops.length - 1) return { points: rest, mate };
    const { before, after } = partedAt(rest, length);
    rest = after;
    return { points: before, mate };
  });
}

/** A polyline in two, parted so far along it, mm. */
function partedAt(points: readonly Point[], length: number): { before: Point[]; after: Point[] } {
  let left = length;
  for (let i = 1; i < points.length; i += 1) {
    const a = at(points, i - 1);
    const b = at(points, i);
    const chord = distance(a, b);
    if (left < chord) {
      const cut = between(a, b, left / chord);
      return {
        before: [...points.slice(0, i), cut],
        after: [cut, ...points.slice(i)],
      };
    }
    left -= chord;
  }
  return { before: [...points], after: points.slice(-1) };
}

/** A mark where two panels meet at the lower edge; the legs of a dart open there meet as well. */
export function meetingMarks(edges: readonly Edge[]): Mark[] {
  const lower = edges.flatMap(({ at, points }, edge) => (at === 'hem' ? [{ points, edge }] : []));
  return lower
    .slice(0, -1)
    .map(({ points, edge }): Mark => ({ kind: 'balance', level: null, at: last(points), edge }));
}

/** Panels whose top edges have the bands as their mates. */
export const withBandsMated = (panels: readonly Piece[], bands: readonly Piece[]): readonly Piece[] =>
  bands.length === 0
    ? panels
    : panels.map((panel) => ({
        ...panel,
        edges: panel.edges.map((edge, i) => {
          const mate = mateIn(bands, panel, i);
          return mate ? { ...edge, mate } : edge;
        }),
      }));

function mateIn(bands: readonly Piece[], panel: Piece, index: number): EdgeReference | null {
  for (const band of bands) {
    const edge = band.edges.findIndex(({ mate }) => mate?.piece.id === panel.id && mate.edge === index);
    if (edge >= 0) return { piece: identityOf(band), edge };
  }
  return null;
}
