// The panels of a draft whose bust dart opens in the side seam, with that dart sewn up, for a sketch.

import { between, type Draft, type Edge, type Piece } from '../../engine';

/**
 * The pieces themselves where no dart was turned. Else the front has its side as it was before the turn, and its armhole goes from there
 * to where the turn brought its shoulder; the dart is a line.
 */
export function sewnAtSide({ pieces, turnedDart }: Pick<Draft, 'pieces' | 'turnedDart'>): readonly Piece[] {
  if (!turnedDart) return pieces;
  const { before, piece: id, wedge, point, lower } = turnedDart;
  const turned = pieces.find((piece) => piece.id === id);
  return before.pieces.map((piece) => {
    if (piece.id !== id || !turned) return piece;
    const own = (of: (edge: Edge) => boolean): Edge | undefined => piece.edges.find(of);
    const edges = turned.edges.flatMap((edge): Edge[] => {
      if (edge.at === 'outer') {
        const side = edge.sidePart === 'belowDart' ? own(({ at }) => at === 'outer') : undefined;
        return side ? [side] : [];
      }
      const drafted = edge.role === 'armhole' ? own(({ role }) => role === 'armhole') : undefined;
      if (!drafted) return [edge];
      const points = edge.points.map((place, i) =>
        between(drafted.points[i] ?? place, place, i / Math.max(1, edge.points.length - 1)),
      );
      return [{ ...edge, points }];
    });
    // In steps: a sketch leaves out what lies beyond the side of the body.
    const fold = Array.from({ length: 9 }, (_, i) => between(point, lower, i / 8));
    const darts = turned.darts.map((dart) =>
      dart.wedge === wedge ? { ...dart, inner: fold, outer: fold } : dart,
    );
    return { ...turned, edges, darts };
  });
}
