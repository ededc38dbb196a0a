// Walks along the panels' top edges of what is sewn to them: shoulder bands from seam to seam, and the sleeve up to its marks.

import { distance } from '../geometry/point';
import { polylineLength } from '../geometry/polyline';
import { outerEdge } from '../pieces/edgeLookup';
import type { Edge, Piece } from '../pieces/piece';
import { identifyJoined, identityOf } from '../terms/identity';
import type { SeamWalkRow } from './seamWalk';

/** A row for each edge of a band that has a mate, and one for each panel that the sleeve is sewn to. */
export const joinedWalk = (panels: readonly Piece[], extras: readonly Piece[]): SeamWalkRow[] =>
  extras.flatMap((extra) => {
    if (extra.kind === 'band') return bandRows(panels, extra);
    return extra.kind === 'sleeve' ? sleeveRows(panels, extra) : [];
  });

function bandRows(panels: readonly Piece[], band: Piece): SeamWalkRow[] {
  return band.edges.flatMap(({ mate, points }, edge): SeamWalkRow[] => {
    const panel = panels.find(({ id }) => id === mate?.piece.id);
    const top = mate && panel?.edges[mate.edge];
    return panel && top ? [row(panel, mate.edge, top.points, band, edge, points)] : [];
  });
}

const row = (
  panel: Piece,
  edgeA: number,
  pointsA: Edge['points'],
  to: Piece,
  edgeB: number,
  pointsB: Edge['points'],
): SeamWalkRow => {
  const lengthA = polylineLength(pointsA);
  const lengthB = polylineLength(pointsB);
  return {
    seam: identifyJoined(panel, to),
    a: { piece: identityOf(panel), edge: edgeA },
    b: { piece: identityOf(to), edge: edgeB },
    lengthA,
    lengthB,
    ease: 0,
    lengthDifference: lengthA - lengthB,
    markDrift: 0,
  };
};

/** From the side seam to the mark on the panel, and from the seam under the arm to the mark on the sleeve. */
function sleeveRows(panels: readonly Piece[], sleeve: Piece): SeamWalkRow[] {
  const top = sleeve.edges.findIndex(({ at }) => at === 'top');
  const edge = sleeve.edges[top];
  if (!edge) return [];
  // Counter-clockwise the top edge comes from the back's end to the front's.
  const ends = { back: edge.points, front: [...edge.points].reverse() };
  return (['front', 'back'] as const).flatMap((block): SeamWalkRow[] => {
    const panel = panels.find((each) => each.block === block && outerEdge(each).isSideSeam);
    const index = panel?.edges.findIndex(({ at }) => at === 'top') ?? -1;
    const onPanel = panel && upToMark(panel, index, panel.edges[index]?.points ?? []);
    const onSleeve = upToMark(sleeve, top, ends[block]);
    return panel && onPanel && onSleeve ? [row(panel, index, onPanel, sleeve, top, onSleeve)] : [];
  });
}

/** The points of an edge, from its first, to the first mark that stands on it; null where none does. */
function upToMark({ marks }: Piece, edge: number, points: Edge['points']): Edge['points'] | null {
  const standing = marks.filter((mark) => mark.edge === edge);
  let before: Edge['points'] = [];
  for (const [i, point] of points.entries()) {
    const last = points[i - 1];
    const on = last
      ? standing
          .filter(({ at }) => distance(last, at) + distance(at, point) - distance(last, point) < ON_EDGE_MM)
          .sort((a, b) => distance(last, a.at) - distance(last, b.at))[0]
      : undefined;
    if (on) return [...before, on.at];
    before = [...before, point];
  }
  return null;
}

/** A mark that is farther off a chord does not stand on it. mm */
const ON_EDGE_MM = 1e-6;
