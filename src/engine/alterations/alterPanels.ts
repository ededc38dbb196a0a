// Alters all panels of a draft. An alteration that would make the edges of a panel meet is refused.

import type { BaseDraft } from '../edges/baseDraft';
import { combine, leastBetween } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import { topOf } from '../panels/panels';
import { type Seam, type SeamEdge, seamEdgeOf } from '../panels/seamEdge';
import { alterPanel, isSameLine, type PanelSides, type Planned, type SeamSide } from './alterPanel';
import { type BodyLine, type ClosedHalf, lineNamed } from './closed/closedHalf';
import type { PlannedSeam } from './moves/seams';
import type { PanelName, RefusalCode } from './terms/alteration';

export interface AlteredPanels {
  readonly panels: readonly Panel[];
  readonly seams: readonly Seam[];
  /** What could not be altered, and why, by the alteration's index. */
  readonly refused: ReadonlyMap<number, RefusalCode>;
}

/** Edges nearer to each other than this count as meeting. mm */
const CROSSED_MM = 1;

/** The panels with all planned alterations but those that have to be refused, and their seams. */
export function alterPanels(
  panels: readonly Panel[],
  seams: readonly Seam[],
  planned: Planned,
  closedHalf: ClosedHalf,
  base: BaseDraft,
): AlteredPanels {
  const sides = sidesOf(panels, seams, closedHalf);
  const refused = new Map<number, RefusalCode>();
  let kept = planned.seams;
  for (;;) {
    const altered = panels.map((panel) =>
      alterPanel(panel, sides.get(panel) ?? NO_SIDES, { ...planned, seams: kept }, closedHalf),
    );
    const faults = altered.flatMap((panel, i) => {
      const before = panels[i];
      return before && before !== panel
        ? faultsOf(before, panel, sides.get(before) ?? NO_SIDES, kept, base)
        : [];
    });
    if (faults.length === 0) return { panels: altered, seams: seamsWith(seams, panels, altered), refused };
    for (const { index, code } of faults) if (!refused.has(index)) refused.set(index, code);
    kept = kept.filter(({ index }) => !refused.has(index));
  }
}

const NO_SIDES: PanelSides = { inner: null, outer: null };

/** Which seams the edges of each panel belong to. */
function sidesOf(
  panels: readonly Panel[],
  seams: readonly Seam[],
  closedHalf: ClosedHalf,
): Map<Panel, PanelSides> {
  const sides = new Map(
    panels.map((panel) => [panel, { ...NO_SIDES } as Record<'inner' | 'outer', SeamSide | null>]),
  );
  for (const seam of seams) {
    const line = lineOf(seam, closedHalf);
    if (!line) continue;
    const add = ({ panel, which }: SeamEdge, mate: 'a' | 'b'): void => {
      const own = sides.get(panel);
      if (own) own[which] = { line, mate };
    };
    add(seam.a, 'a');
    if (seam.b) add(seam.b, 'b');
  }
  return sides;
}

/** The line that a seam of the panels lies on; null where one of its panels was not made. */
export function lineOf({ identity, a, b }: Seam, closedHalf: ClosedHalf): BodyLine | null {
  if (identity.kind === 'centre') return { kind: 'centre', block: identity.block };
  if (!b) return null;
  return lineNamed(closedHalf, { kind: 'seam', pieces: [nameOf(a.panel), nameOf(b.panel)] })?.line ?? null;
}

const nameOf = ({ kind, block, number }: Panel): PanelName =>
  kind === 'sidePanel' ? { kind } : { kind, block, number };

/** The alterations on a panel whose edges meet or whose dart is turned inside out. */
function faultsOf(
  drafted: Panel,
  altered: Panel,
  sides: PanelSides,
  seams: readonly PlannedSeam[],
  { blocks, span }: BaseDraft,
): { index: number; code: RefusalCode }[] {
  const on = (lines: readonly (BodyLine | undefined)[], code: RefusalCode) =>
    seams
      .filter(({ line }) => lines.some((each) => each && isSameLine(each, line)))
      .map(({ index }) => ({ index, code }));
  const isOnDart =
    (wedge: string) =>
    ({ line }: PlannedSeam) =>
      line.kind === 'dart' && line.wedge.id === wedge;
  const from = Math.max(span.highest, topOf(blocks[drafted.block], drafted));
  const across = leastBetween(combine(altered.outer, 1, altered.inner, -1), from, span.lowest).x;
  const dartLines = drafted.darts.flatMap(({ wedge }) => seams.find(isOnDart(wedge))?.line ?? []);
  const crossed =
    across < CROSSED_MM ? on([sides.inner?.line, sides.outer?.line, ...dartLines], 'panelCrossed') : [];
  const closed = altered.darts.flatMap(({ wedge, innerLeg, outerLeg, upper, lower }) => {
    const own = seams.filter(isOnDart(wedge));
    if (own.length === 0) return [];
    const taken = combine(outerLeg, 1, innerLeg, -1);
    return leastBetween(taken, upper ?? span.highest, lower ?? span.lowest).x < -ROUNDING_MM
      ? own.map(({ index }) => ({ index, code: 'dartClosed' as const }))
      : [];
  });
  return [...crossed, ...closed];
}

const ROUNDING_MM = 1e-6;

/** The same seams between the altered panels. */
function seamsWith(seams: readonly Seam[], drafted: readonly Panel[], altered: readonly Panel[]): Seam[] {
  const now = new Map(drafted.map((panel, i) => [panel, altered[i] ?? panel]));
  const edge = ({ panel, which }: SeamEdge): SeamEdge => seamEdgeOf(now.get(panel) ?? panel, which);
  return seams.map(({ identity, a, b }) => ({ identity, a: edge(a), b: b && edge(b) }));
}
