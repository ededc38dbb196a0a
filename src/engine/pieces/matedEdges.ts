// References to edges: the piece that an edge of a panel belongs to and its index there, and so the mate of each edge.

import type { Panel } from '../panels/panel';
import type { SeamEdge } from '../panels/seamEdge';
import { identityOf } from '../terms/identity';
import type { BlockName } from '../terms/names';
import { edgeIndex } from './edgeLookup';
import type { Edge, EdgePlace, EdgeReference } from './piece';
import { type OutlineEdge, placeOf } from './pieceEdges';

interface PanelOutline {
  readonly panel: Panel;
  readonly edges: readonly OutlineEdge[];
}

/** References to the edges of these outlines. */
export function edgeReferences(outlines: readonly PanelOutline[]): {
  referenceTo: (seamEdge: SeamEdge) => EdgeReference;
  /** An edge of a panel on `block` with its mate. */
  withMate: (edge: OutlineEdge, block: BlockName) => Edge;
} {
  const edgesOf = new Map(outlines.map(({ panel, edges }) => [panel.id, edges]));
  const referenceTo = (seamEdge: SeamEdge): EdgeReference => ({
    piece: identityOf(seamEdge.panel),
    edge: edgeIndex(edgesOf.get(seamEdge.panel.id) ?? [], placeOf(seamEdge)),
  });
  /** The part of the shoulder on the other block; null where its panel was not made. */
  const acrossShoulder = ({ at, shoulder }: EdgePlace, block: BlockName): EdgeReference | null => {
    for (const { panel, edges } of outlines) {
      if (panel.block === block || shoulder === undefined) continue;
      const edge = edgeIndex(edges, { at, shoulder });
      if (edge >= 0) return { piece: identityOf(panel), edge };
    }
    return null;
  };
  // Field by field: thousands of edges are made in a pull.
  const withMate = (edge: OutlineEdge, block: BlockName): Edge => ({
    role: edge.role,
    at: edge.at,
    dart: edge.dart,
    shoulder: edge.shoulder,
    isSideSeam: edge.isSideSeam,
    mate: edge.shoulder ? acrossShoulder(edge, block) : edge.sewnTo && referenceTo(edge.sewnTo),
    ease: edge.ease,
    allowance: edge.allowance,
    points: edge.points,
  });
  return { referenceTo, withMate };
}
