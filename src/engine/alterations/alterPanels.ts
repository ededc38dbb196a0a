// Alters all panels of a draft. An alteration that would make the edges of a panel meet is refused.

import type { BaseDraft } from '../edges/baseDraft';
import { combine, isSurelyAbove, leastBetween } from '../geometry/smoothLine';
import type { Panel, PanelDart } from '../panels/panel';
import { topOf } from '../panels/panels';
import { type Seam, type SeamEdge, seamEdgeOf } from '../panels/seamEdge';
import { alterPanel, type PanelSides, type SeamSide } from './alterPanel';
import type { BodyLine, ClosedHalf } from './closed/closedHalf';
import type { SeamLines } from './closed/seamLines';
import type { PlannedLengths } from './moves/lengths';
import { changesOf, type PlannedSeams, type SeamChanges } from './moves/seams';
import type { RefusalCode } from './terms/alteration';

export interface AlteredPanels {
  readonly panels: readonly Panel[];
  readonly seams: readonly Seam[];
  /** What could not be altered, and why, by the alteration's index. */
  readonly refused: ReadonlyMap<number, RefusalCode>;
  /** Those that were made, and what they add up to. */
  readonly made: PlannedSeams;
  readonly changes: SeamChanges;
}

/** Edges nearer to each other than this count as meeting. mm */
const CROSSED_MM = 1;

/**
 * The panels with all planned alterations but those that have to be refused, and their seams.
 *
 * @param lines of the seams
 */
export function alterPanels(
  panels: readonly Panel[],
  seams: readonly Seam[],
  lines: SeamLines,
  planned: { readonly seams: PlannedSeams; readonly lengths: PlannedLengths },
  closedHalf: ClosedHalf,
  base: BaseDraft,
): AlteredPanels {
  const sides = sidesOf(panels, lines);
  const refused = new Map<number, RefusalCode>();
  let made = planned.seams;
  for (;;) {
    const changes = changesOf(made);
    const altered = panels.map((panel) =>
      alterPanel(
        panel,
        sides.get(panel) ?? NO_SIDES,
        { seams: changes, lengths: planned.lengths },
        closedHalf,
      ),
    );
    const faults = altered.flatMap((panel, i) => {
      const before = panels[i];
      return before && before !== panel
        ? faultsOf(before, panel, sides.get(before) ?? NO_SIDES, made, closedHalf, base)
        : [];
    });
    if (faults.length === 0)
      return { panels: altered, seams: seamsWith(seams, panels, altered), refused, made, changes };
    for (const { index, code } of faults) if (!refused.has(index)) refused.set(index, code);
    made = new Map(
      [...made].map(
        ([line, own]) => [line, own.filter(({ of }) => !of.some((index) => refused.has(index)))] as const,
      ),
    );
  }
}

const NO_SIDES: PanelSides = { inner: null, outer: null };

/** Which seams the edges of each panel belong to. */
function sidesOf(panels: readonly Panel[], lines: SeamLines): Map<Panel, PanelSides> {
  const sides = new Map(
    panels.map((panel) => [panel, { ...NO_SIDES } as Record<'inner' | 'outer', SeamSide | null>]),
  );
  for (const [seam, line] of lines) {
    const add = ({ panel, which }: SeamEdge, mate: 'a' | 'b'): void => {
      const own = sides.get(panel);
      if (own) own[which] = { line, mate };
    };
    add(seam.a, 'a');
    if (seam.b) add(seam.b, 'b');
  }
  return sides;
}

/** The alterations on a panel whose edges meet or whose dart is turned inside out. */
function faultsOf(
  drafted: Panel,
  altered: Panel,
  sides: PanelSides,
  planned: PlannedSeams,
  closedHalf: ClosedHalf,
  { blocks, span }: BaseDraft,
): { index: number; code: RefusalCode }[] {
  const on = (line: BodyLine | undefined, code: RefusalCode) =>
    ((line && planned.get(line)) ?? []).flatMap(({ of }) => of.map((index) => ({ index, code })));
  const lineOfDart = (dart: PanelDart) => closedHalf.darts.find(({ wedge }) => wedge.id === dart.wedge);
  if (!altered.mayBeNarrow) return [];
  const from = Math.max(span.highest, topOf(blocks[drafted.block], drafted));
  const width = combine(altered.outer, 1, altered.inner, -1);
  const meets = !isSurelyAbove(width, CROSSED_MM) && leastBetween(width, from, span.lowest).x < CROSSED_MM;
  const crossed = meets
    ? [sides.inner?.line, sides.outer?.line, ...drafted.darts.map(lineOfDart)].flatMap((line) =>
        on(line, 'panelCrossed'),
      )
    : [];
  const closed = altered.darts.flatMap((dart) => {
    const own = on(lineOfDart(dart), 'dartClosed');
    if (own.length === 0) return [];
    const taken = combine(dart.outerLeg, 1, dart.innerLeg, -1);
    const least = leastBetween(taken, dart.upper ?? span.highest, dart.lower ?? span.lowest).x;
    return least < -ROUNDING_MM ? own : [];
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
