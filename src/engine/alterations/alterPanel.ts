// Alters one panel: its long edges and its darts are moved and raised as a fitting asks.

import { closedAgain } from '../block/lines/closedDart';
import { combine, type SmoothLine } from '../geometry/smoothLine';
import type { Panel, PanelDart } from '../panels/panel';
import { isSurelyWide } from '../panels/panels';
import { raisedHeight, raisedLine } from '../panels/raise';
import type { BodyLine, ClosedHalf } from './closed/closedHalf';
import type { PlannedLengths } from './moves/lengths';
import type { SeamChanges } from './moves/seams';

/** The line of the draft that a panel's edge lies on, and which mate of its seam it is. */
export interface SeamSide {
  readonly line: BodyLine;
  readonly mate: 'a' | 'b';
}

/** The seams of a panel's two long edges; null where its mate was not made. */
export type PanelSides = Readonly<Record<'inner' | 'outer', SeamSide | null>>;

/** What is planned for the seams and lengths of a draft. */
export interface Planned {
  readonly seams: SeamChanges;
  readonly lengths: PlannedLengths;
}

/** The panel with the planned alterations; the panel itself where none is on it. */
export function alterPanel(panel: Panel, sides: PanelSides, planned: Planned, closedHalf: ClosedHalf): Panel {
  const { lengths, seams } = planned;
  const raiseOf = (which: 'inner' | 'outer') => {
    const side = sides[which];
    return side && lengths.isAny ? lengths.raiseAt(side.line) : [];
  };
  const raised = { inner: raiseOf('inner'), outer: raiseOf('outer') };
  const edge = (which: 'inner' | 'outer'): SmoothLine => {
    const side = sides[which];
    const change = side && seams.get(side.line)?.[side.mate];
    // An edge towards the centre moves in outwards, one towards the side inwards.
    const moved = change ? combine(panel[which], 1, change, which === 'inner' ? 1 : -1) : panel[which];
    return raisedLine(moved, raised[which]);
  };
  const isRaised = raised.inner.length + raised.outer.length > 0;
  const [inner, outer] = [edge('inner'), edge('outer')];
  const darts =
    panel.darts.length === 0 ? panel.darts : panel.darts.map((dart) => alterDart(dart, planned, closedHalf));
  if (
    !isRaised &&
    inner === panel.inner &&
    outer === panel.outer &&
    darts.every((dart, i) => dart === panel.darts[i])
  )
    return panel;
  const altered = isRaised ? { ...panel, inner, outer, darts, raised } : { ...panel, inner, outer, darts };
  return isSurelyWide(altered) ? altered : { ...altered, mayBeNarrow: true };
}

/**
 * The dart with its planned alterations: it is widened into the cloth beside it. The fold of a dart closed at both ends is straight
 * again afterwards, and its legs are of one length.
 */
function alterDart(dart: PanelDart, { seams, lengths }: Planned, { darts }: ClosedHalf): PanelDart {
  const line = darts.find(({ wedge }) => wedge.id === dart.wedge);
  if (!line) return dart;
  const raise = lengths.isAny ? lengths.raiseAt(line) : [];
  const { a, b } = seams.get(line) ?? UNCHANGED;
  if (!a && !b && raise.length === 0) return dart;
  const legs = {
    innerLeg: raisedLine(a ? combine(dart.innerLeg, 1, a, -1) : dart.innerLeg, raise),
    outerLeg: raisedLine(b ? combine(dart.outerLeg, 1, b, 1) : dart.outerLeg, raise),
  };
  const height = (y: number | null): number | null => (y === null ? null : raisedHeight(raise, y));
  const [upper, lower] = [height(dart.upper), height(dart.lower)];
  return {
    ...dart,
    ...(upper === null || lower === null ? legs : closedAgain(legs, upper, lower)),
    upper,
    lower,
    ...(raise.length > 0 ? { raised: raise } : {}),
  };
}

const UNCHANGED = { a: null, b: null };
