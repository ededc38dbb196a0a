// Cutting the two blocks apart: which panel lies between which legs, and which edges are sewn together.

import { type Block, partingWedges } from '../block/block';
import { isThrough } from '../block/lines/extent';
import { type Level, nearestLevel } from '../block/lines/levels';
import type { DraftedWedge } from '../block/lines/wedge';
import { endOfDart, partingEnds } from '../block/shoulders/upperEdges';
import { combine, isSurelyAbove, leastBetween, type SmoothLine, straightDown } from '../geometry/smoothLine';
import { LEAST_PANEL_MM } from '../style/style';
import {
  identifyCentre,
  identifyPiece,
  identifySideSeam,
  identifyWedgeSeam,
  identityOf,
} from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { liesOn } from './darts';
import type { Panel, PanelDart } from './panel';
import { type Seam, seamEdgeOf } from './seamEdge';

/**
 * Panels of a block between heights `top` and `hem`, mm. A panel under {@link LEAST_PANEL_MM} gets a blocking issue; one whose
 * edges meet or cross is not made, and a dart that lies on no panel is refused. `expectedCount` is how many panels the wedges ask
 * for, made or not; `areSurelyWide` is true where every panel is {@link isSurelyWide}.
 */
export function cutPanels(
  block: Block,
  levels: readonly Level[],
  top: number,
  hem: number,
): { panels: Panel[]; expectedCount: number; areSurelyWide: boolean; issues: Issue[] } {
  const issues: Issue[] = [];
  const panels: Panel[] = [];
  let areSurelyWide = true;
  const centre = block.wedges.find((wedge) => wedge.onCentre);
  const cuts = partingWedges(block);
  const darts = block.wedges
    .filter(
      (wedge) =>
        !isThrough(wedge.extent) &&
        (endOfDart(block.upper, wedge.id) !== null || [...wedge.intake.values()].some((taken) => taken > 0)),
    )
    .map((wedge) => dartOn(block.name, wedge));
  for (let i = 0; i <= cuts.length; i += 1) {
    const inner = i === 0 ? (centre?.outerLeg ?? straightDown(0)) : cuts[i - 1]?.outerLeg;
    const outer = i === cuts.length ? block.sideSeam : cuts[i]?.innerLeg;
    if (!inner || !outer) continue;
    const identity = identifyPiece('panel', block.name, i + 1);
    const panel: Panel = {
      id: identity.id,
      kind: 'panel',
      block: identity.block,
      number: identity.number,
      side: identity.side,
      inner,
      outer,
      drafted: { inner: { block: block.name, line: inner }, outer: { block: block.name, line: outer } },
      // Above the underarm no side seam bounds the panel: there a dart lies where its point does.
      darts: darts.filter((dart) =>
        liesOn(dart, { inner, outer }, (endOfDart(block.upper, dart.wedge) && dart.lower) ?? top, hem),
      ),
      wedge: (cuts[i] ?? cuts[i - 1] ?? centre)?.id ?? null,
    };
    const isWide = isSurelyWide(panel);
    areSurelyWide &&= isWide;
    const narrow = isWide ? null : narrowAt(panel, levels, Math.max(top, topOf(block, panel)), hem);
    if (narrow) issues.push(narrow);
    if (narrow?.code !== 'panelCrossed') panels.push(panel);
  }
  for (const { wedge } of darts)
    if (!panels.some((panel) => panel.darts.some((dart) => dart.wedge === wedge)))
      issues.push(issue('dartOffPanel', {}, { block: block.name, wedge }));
  return {
    panels,
    expectedCount: cuts.length + 1,
    areSurelyWide: areSurelyWide && darts.length === 0 && panels.length > cuts.length,
    issues,
  };
}

/** Height below which a panel has cloth from edge to edge, mm, on a shouldered block; else no bound. */
export function topOf({ upper }: Block, { number }: Pick<Panel, 'number'>): number {
  if (!upper) return Number.NEGATIVE_INFINITY;
  const ends = partingEnds(upper);
  const before = ends[number - 2]?.at.point.y ?? Number.NEGATIVE_INFINITY;
  return Math.max(before, ends[number - 1]?.at.point.y ?? upper.frame.underarm.y);
}

const dartOn = (block: BlockName, { id, extent, innerLeg, outerLeg }: DraftedWedge): PanelDart => ({
  ...extent,
  wedge: id,
  innerLeg,
  outerLeg,
  drafted: { inner: { block, line: innerLeg }, outer: { block, line: outerLeg } },
});

/**
 * Whether a panel without darts is {@link LEAST_PANEL_MM} wide at every height, inside the garment and beyond it. False where the
 * control points of its edges do not tell.
 */
export const isSurelyWide = ({ inner, outer, darts }: Pick<Panel, 'inner' | 'outer' | 'darts'>): boolean =>
  darts.length === 0 && isSurelyAbove(combine(outer, 1, inner, -1), LEAST_PANEL_MM);

/**
 * The blocking issue of a panel that is too narrow, or crossed, somewhere between two heights, mm, or beside one of its
 * darts; null when it is not.
 */
export function narrowAt(panel: Panel, levels: readonly Level[], from: number, to: number): Issue | null {
  const whole = narrowBetween(panel.inner, panel.outer, from, to);
  if (whole) return narrowIssue(panel, levels, whole, panel.wedge);
  for (const [i, dart] of panel.darts.entries()) {
    const upper = Math.max(from, dart.upper ?? from);
    const lower = Math.min(to, dart.lower ?? to);
    const next = panel.darts[i + 1];
    const narrow =
      narrowBetween(panel.inner, dart.innerLeg, upper, lower) ??
      narrowBetween(dart.outerLeg, panel.outer, upper, lower) ??
      (next
        ? narrowBetween(
            dart.outerLeg,
            next.innerLeg,
            Math.max(upper, next.upper ?? upper),
            Math.min(lower, next.lower ?? lower),
          )
        : null);
    // A dart that leaves its panel can still be drawn; the panel stays, refused.
    if (narrow)
      return narrowIssue(panel, levels, { ...narrow, x: Math.max(narrow.x, CROSSED_MM) }, dart.wedge);
  }
  return null;
}

function narrowBetween(
  inner: SmoothLine,
  outer: SmoothLine,
  from: number,
  to: number,
): { x: number; y: number } | null {
  if (from > to) return null;
  const width = combine(outer, 1, inner, -1);
  if (isSurelyAbove(width, LEAST_PANEL_MM)) return null;
  const least = leastBetween(width, from, to);
  return least.x < LEAST_PANEL_MM ? least : null;
}

function narrowIssue(
  panel: Panel,
  levels: readonly Level[],
  least: { x: number; y: number },
  wedge: string | null,
): Issue {
  return issue(
    least.x < CROSSED_MM ? 'panelCrossed' : 'panelTooNarrow',
    { width: least.x, least: LEAST_PANEL_MM },
    {
      block: panel.block,
      piece: identityOf(panel),
      level: nearestLevel(levels, least.y),
      ...(wedge === null ? {} : { wedge }),
    },
  );
}

// Narrower than this two edges are one line to a pair of shears.
const CROSSED_MM = 1;

/** The seams of one block and its centre edge, from the centre to the side. */
export function seamsOf(panels: readonly Panel[]): Seam[] {
  return panels.flatMap((panel): Seam[] => {
    const seamEdge = seamEdgeOf(panel, 'inner');
    if (panel.number === 1) return [{ identity: identifyCentre(panel.block), a: seamEdge, b: null }];
    const neighbour = panels.find((other) => other.number === panel.number - 1);
    if (!neighbour) return [];
    return [
      { identity: identifyWedgeSeam(neighbour, panel), a: seamEdgeOf(neighbour, 'outer'), b: seamEdge },
    ];
  });
}

/** The seam between the outermost panels, where both were made. */
export function sideSeamOf(front: Panel | undefined, back: Panel | undefined): Seam[] {
  if (!front || !back) return [];
  return [{ identity: identifySideSeam(), a: seamEdgeOf(front, 'outer'), b: seamEdgeOf(back, 'outer') }];
}
