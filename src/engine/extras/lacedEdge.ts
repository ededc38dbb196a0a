// The laced centre edge of a block with the edges that meet it: what is cut to lie behind it follows these.

import { between, distance, type Point } from '../geometry/point';
import { edgesAt, innerEdge, longEdgeIndex } from '../pieces/edgeLookup';
import type { Edge, Mark, Piece } from '../pieces/piece';
import type { BlockName } from '../terms/names';

/** A run of the top edge or hem, from the centre outwards. */
export interface BesideCentre {
  readonly role: Edge['role'];
  readonly points: readonly Point[];
}

/** A mark of a piece beside the panels, on one of its long edges. */
export interface MarkOnEdge extends Omit<Mark, 'edge'> {
  readonly edge: 'inner' | 'outer';
}

export interface LacedEdge {
  readonly block: BlockName;
  /** The finished centre edge, from the top down. */
  readonly centre: readonly Point[];
  /** Top edge and hem from it outwards; the last run goes on straight beyond its panel or the first dart. */
  readonly top: readonly BesideCentre[];
  readonly hem: readonly BesideCentre[];
  /** Balance marks on it. */
  readonly marks: Piece['marks'];
}

/** The laced edge of a block; null where its first panel was not made. */
export function lacedEdge(block: BlockName, pieces: readonly Piece[]): LacedEdge | null {
  const panel = pieces.find((piece) => piece.block === block && piece.number === 1);
  const centre = panel && innerEdge(panel);
  if (!panel || centre?.role !== 'centre') return null;
  const centreIndex = longEdgeIndex(panel, 'inner');
  const reversed = (edge: Edge): BesideCentre => ({ role: edge.role, points: [...edge.points].reverse() });
  return {
    block,
    centre: centre.points,
    top: goingOn(upToDart(edgesAt(panel, 'top').reverse()).map(reversed)),
    hem: goingOn(upToDart(edgesAt(panel, 'hem'))),
    marks: panel.marks.filter(({ kind, edge }) => kind === 'balance' && edge === centreIndex),
  };
}

function upToDart(edges: readonly Edge[]): readonly Edge[] {
  const dart = edges.findIndex((edge) => edge.dart !== undefined);
  return dart < 0 ? edges : edges.slice(0, dart);
}

/** Farther than anything behind a centre edge reaches. mm */
const BEYOND_MM = 1000;

/** Runs of which the last goes on along its tangent: sewn, top edge and hem run straight across a seam. */
function goingOn(runs: readonly BesideCentre[]): BesideCentre[] {
  const last = runs.at(-1);
  const [before, end] = last?.points.slice(-2) ?? [];
  if (!last || !before || !end) return [...runs];
  const far = between(before, end, 1 + BEYOND_MM / (distance(before, end) || 1));
  return [...runs.slice(0, -1), { role: last.role, points: [...last.points, far] }];
}
