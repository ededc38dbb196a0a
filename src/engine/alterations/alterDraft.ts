// Applies alterations to a draft, between balancing and truing: to its edges before the blocks are cut apart, to its panels after.

import type { BaseDraft } from '../edges/baseDraft';
import { reachOf } from '../edges/baseDraft';
import type { SmoothLine } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import { heightBeside } from '../panels/raisedSeam';
import type { Seam } from '../panels/seamEdge';
import type { Style } from '../style/style';
import type { Issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { alterPanels } from './alterPanels';
import { type ClosedHalf, closedHalfOf } from './closed/closedHalf';
import { linesOf } from './closed/seamLines';
import { type AlteredEdges, alterEdges } from './moves/edges';
import { type AlteredLevels, alteredLevels } from './moves/girths';
import { type PlannedLengths, planLengths } from './moves/lengths';
import { letOutIssues } from './moves/letOut';
import { type PlannedSeams, planSeams } from './moves/seams';
import { neckKept, raiseEnds } from './moves/upperEnds';
import { type Alteration, type AlterationOutcome, refused } from './terms/alteration';
import { isWithinSpans } from './terms/checkAmounts';

/** The alterations of one half in the order of the list; null for one that is not made on this half. */
export type HalfAlterations = readonly (Alteration | null)[];

/** The outcome of each; null for one that is not made on this half. */
export type HalfOutcomes = readonly (AlterationOutcome | null)[];

interface AlterationPlan {
  readonly drafted: BaseDraft;
  /** The same with its edges altered; the drafted one itself where no edge is. */
  readonly baseDraft: BaseDraft;
  readonly planned: { readonly seams: PlannedSeams; readonly lengths: PlannedLengths };
  readonly closedHalf: ClosedHalf;
  readonly outcomes: HalfOutcomes;
}

/**
 * Plans the alterations of a draft; null where there are none. Each is measured on the unaltered draft, so that their order does not
 * matter.
 */
export function planAlterations(
  drafted: BaseDraft,
  style: Style,
  alterations: HalfAlterations,
): AlterationPlan | null {
  if (alterations.length === 0) return null;
  const closedHalf = closedHalfOf(drafted.blocks, style);
  const withinSpans = alterations.map((each) => (each && isWithinSpans(each) ? each : null));
  const lengths = planLengths(withinSpans, drafted, closedHalf);
  const edges = alterEdges(withinSpans, drafted, closedHalf, lengths);
  const seams = planSeams(withinSpans, drafted, closedHalf, style.closure);
  return {
    drafted,
    baseDraft: withEdges(drafted, edges, lengths),
    planned: { seams: seams.planned, lengths },
    closedHalf,
    outcomes: alterations.map((each, i) =>
      each && !withinSpans[i]
        ? refused('amountOutOfSpan')
        : (lengths.outcomes[i] ?? edges.outcomes[i] ?? seams.outcomes[i] ?? null),
    ),
  };
}

/** The draft with its edges altered; itself where none is. */
function withEdges(drafted: BaseDraft, altered: AlteredEdges, lengths: PlannedLengths): BaseDraft {
  const { edges, endsRaised } = altered;
  const areKept = edges.top === drafted.edges.top && edges.hem === drafted.edges.hem;
  if (areKept && endsRaised.size === 0 && !lengths.isAny) return drafted;
  const { front, back } = drafted.blocks;
  const blocks = {
    front: { ...front, upper: raiseEnds(front, endsRaised, lengths) },
    back: { ...back, upper: raiseEnds(back, endsRaised, lengths) },
  };
  const reach = reachOf(edges, drafted.shoulders);
  return { ...drafted, blocks, edges, span: { ...drafted.span, ...reach } };
}

/** The line of each centre edge and the height of the waist on it, mm; null where its panel was not made. */
export type CentreLines = Readonly<
  Record<BlockName, { readonly line: SmoothLine; readonly waist: number } | null>
>;

export interface AlteredDraft {
  readonly baseDraft: BaseDraft;
  readonly panels: readonly Panel[];
  readonly seams: readonly Seam[];
  readonly outcomes: HalfOutcomes;
  readonly girths: AlteredLevels['girths'];
  readonly raisedLevels: AlteredLevels['raised'];
  readonly centres: CentreLines;
  readonly issues: readonly Issue[];
}

/**
 * Alters the panels of a planned draft.
 *
 * @param apart the panels cut from the draft with its edges altered, and their seams
 */
export function applyAlterations(
  { drafted, baseDraft, planned, closedHalf, outcomes }: AlterationPlan,
  apart: { readonly panels: readonly Panel[]; readonly seams: readonly Seam[] },
  allowances: Style['allowances'],
): AlteredDraft {
  const lines = linesOf(apart.seams, closedHalf);
  const done = alterPanels(apart.panels, apart.seams, lines, planned, closedHalf, baseDraft);
  const { panels, seams } = done;
  const { front, back } = baseDraft.blocks;
  const kept = (block: typeof front) =>
    block.upper && neckKept(drafted.blocks[block.name], block.upper, panels, baseDraft.span.waist);
  const centre = (block: BlockName): CentreLines[BlockName] => {
    const panel = panels.find((each) => each.block === block && each.number === 1);
    return panel ? { line: panel.inner, waist: heightBeside(panel, 'inner', baseDraft.span.waist) } : null;
  };
  const { girths, raised } = alteredLevels(baseDraft.levels, apart.panels, panels);
  return {
    baseDraft: {
      ...baseDraft,
      blocks: { front: { ...front, upper: kept(front) }, back: { ...back, upper: kept(back) } },
    },
    panels,
    seams,
    outcomes: outcomes.map((outcome, i) => {
      const code = done.refused.get(i);
      return code ? refused(code) : outcome;
    }),
    girths,
    raisedLevels: raised,
    centres: { front: centre('front'), back: centre('back') },
    issues: letOutIssues(lines, done, baseDraft.span, allowances),
  };
}
