// A panel as it is cut from its block, before its ends are trued.

import type { Extent } from '../block/lines/extent';
import type { SmoothLine } from '../geometry/smoothLine';
import type { PieceIdentity } from '../terms/identity';
import type { BlockName } from '../terms/names';
import type { PanelRaise, Raise } from './raise';

/** A line as it stands on the flat block it was drafted on. */
export interface DraftedLine {
  readonly block: BlockName;
  readonly line: SmoothLine;
}

/** What lies between two wedges, before its ends are trued. */
export interface Panel extends PieceIdentity {
  /** Front and back side panel in one lie on the front and go on round the side. */
  readonly kind: 'panel' | 'sidePanel';
  /** Edge nearer the centre line; for the first panel the centre edge itself. */
  readonly inner: SmoothLine;
  /** Edge nearer the side; for the last panel the side seam. */
  readonly outer: SmoothLine;
  /** The same two edges on the blocks. */
  readonly drafted: { readonly inner: DraftedLine; readonly outer: DraftedLine };
  /** From the inner edge to the outer. */
  readonly darts: readonly PanelDart[];
  /** Id of the wedge that bounds it, towards the side where there are two; null on a block without wedges. */
  readonly wedge: string | null;
  /** Its edges were moved after a fitting, and are not wide enough apart at every height by their control points alone. */
  readonly mayBeNarrow?: true;
  /** How far its edges were raised after a fitting; left out where they were not. */
  readonly raised?: PanelRaise;
}

/** A dart as it lies on its panel. */
export interface PanelDart extends Extent {
  readonly wedge: string;
  /** The leg nearer the panel's inner edge. */
  readonly innerLeg: SmoothLine;
  readonly outerLeg: SmoothLine;
  /** The same legs on the block, in the same order. */
  readonly drafted: { readonly inner: DraftedLine; readonly outer: DraftedLine };
  readonly raised?: Raise;
}
