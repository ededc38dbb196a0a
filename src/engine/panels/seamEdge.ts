// The long edges of a panel, and which are sewn together.

import type { SmoothLine } from '../geometry/smoothLine';
import type { DraftedLine, Panel, PanelDart } from './panel';

/** One long edge of a panel, or of the part of it beside an open dart. */
export interface SeamEdge {
  readonly panel: Panel;
  /** `inner`: the cloth lies towards the side of it. `outer`: towards the centre line. */
  readonly which: 'inner' | 'outer';
  readonly line: SmoothLine;
  readonly drafted: DraftedLine;
  /** The dart whose leg it is; null for the panel's own edges. */
  readonly dart: PanelDart | null;
}

/** Two edges that are sewn together, or (`b` null) a centre edge that meets its mirror image. */
export interface Seam {
  readonly id: string;
  readonly kind: 'wedge' | 'side' | 'centre' | 'dart';
  readonly a: SeamEdge;
  readonly b: SeamEdge | null;
}

/** One of a panel's own edges. */
export const seamEdgeOf = (panel: Panel, which: 'inner' | 'outer'): SeamEdge => ({
  panel,
  which,
  line: panel[which],
  drafted: panel.drafted[which],
  dart: null,
});

/** Whether the mates lie mirrored on the table, as front and back do at the side. */
export const isFacing = ({ a, b }: Seam): boolean => b !== null && a.which === b.which;

/**
 * Where a leg stands among its piece's edges. They run counter-clockwise as seen on paper: the edge towards the centre,
 * the hem, the edge towards the side, the top edge; an open dart parts hem or top edge with its two legs.
 */
export function edgeIndex({ panel, which, dart }: SeamEdge): number {
  const atHem = panel.darts.filter(({ lower, upper }) => lower === null && upper !== null);
  const outer = 2 + 3 * atHem.length;
  if (!dart) return which === 'inner' ? 0 : outer;
  if (dart.lower === null) return 2 + 3 * atHem.indexOf(dart) + (which === 'outer' ? 0 : 1);
  const atTop = panel.darts.filter(({ upper }) => upper === null).reverse();
  return outer + 2 + 3 * atTop.indexOf(dart) + (which === 'inner' ? 0 : 1);
}
