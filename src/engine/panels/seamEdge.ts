// The long edges of a panel, and which are sewn together.

import type { SmoothLine } from '../geometry/smoothLine';
import type { SeamIdentity } from '../terms/identity';
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
  readonly identity: SeamIdentity;
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
