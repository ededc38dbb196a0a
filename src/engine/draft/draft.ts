// One whole draft: tape and style in; blocks, pieces, proof and everything there is to say out.

import { refused } from '../alterations/alteration';
import {
  applyAlterations,
  type CentreLines,
  type HalfAlterations,
  type HalfOutcomes,
  planAlterations,
} from '../alterations/alterDraft';
import { correctedBody } from '../alterations/correctedBody';
import type { Block } from '../block/block';
import { checkClosure } from '../block/closure';
import { type Level, levelsOf } from '../block/lines/levels';
import { shapingAt } from '../block/shaping';
import { checkBody } from '../body/body';
import type { Measurements } from '../body/measurements';
import { armholeOf } from '../checks/armhole';
import { bandIssues } from '../checks/bandWalk';
import { cautions } from '../checks/cautions';
import { type EdgeContinuityRow, edgeContinuity } from '../checks/edgeContinuity';
import { joinedWalk } from '../checks/joinedWalk';
import { girthLedger, type LedgerRow } from '../checks/ledger';
import { panelsUnlike } from '../checks/panelsUnlike';
import { type DartWalkRow, dartWalk, type SeamWalkRow, seamWalk } from '../checks/seamWalk';
import { sewingIssues } from '../checks/sewing';
import { shoulderContinuity } from '../checks/shoulderContinuity';
import { sidePushedOut } from '../checks/sidePushedOut';
import { type BaseDraft, type DraftSpan, makeBaseDraft } from '../edges/baseDraft';
import { levelEdges } from '../edges/levelEdges';
import { withBandsMated } from '../extras/bandParts';
import { extraPieces } from '../extras/extras';
import { shoulderBands } from '../extras/shoulderBand';
import { withSleeve } from '../extras/sleeve';
import { crossingsOf } from '../panels/crossings';
import { cutApart } from '../panels/cutApart';
import { heightOn } from '../panels/raisedSeam';
import { type TruedSeam, trueSeam } from '../panels/truing';
import { cutPieces } from '../pieces/cutPieces';
import { type EdgeNodePlace, nodesOf, type OutlinedPanel } from '../pieces/edgeNodes';
import { finishedSeam } from '../pieces/finishedSeam';
import type { Piece } from '../pieces/piece';
import { checkStyle } from '../style/checkStyle';
import { lacedBlocks } from '../style/openings';
import type { EdgeNodeName, Style } from '../style/style';
import { checkHem } from '../style/turnedHem';
import { type Issue, issue } from '../terms/issue';
import type { BlockName, LevelName, Side } from '../terms/names';
import { cutAgain } from './cutAgain';

export interface Draft {
  /** From the top down; empty when the measurements or the style cannot be drafted. */
  readonly levels: readonly Level[];
  /** Null when there are no levels. */
  readonly blocks: Readonly<Record<BlockName, Block>> | null;
  /** Heights of top edge and hem as drafted, mm; null when there are no levels. */
  readonly span: DraftSpan | null;
  /** Blocks laced at their centre edge. */
  readonly laced: readonly BlockName[];
  /** Nodes of top edge and hem on the flat blocks. */
  readonly nodes: readonly EdgeNodePlace[];
  /** Front panels from the centre, then back panels from the centre. */
  readonly pieces: readonly Piece[];
  /** Shoulder bands, sleeves, modesty panel, facings and straps: cut like the panels; of the proof only what is sewn to the panels' top edge. */
  readonly extras: readonly Piece[];
  readonly proof: {
    readonly ledger: readonly LedgerRow[];
    readonly seams: readonly SeamWalkRow[];
    /** Darts closed at both ends; an open one's legs are a seam. */
    readonly closedDarts: readonly DartWalkRow[];
    readonly edges: readonly EdgeContinuityRow[];
  };
  readonly issues: readonly Issue[];
  /** What became of each alteration asked for, in the same order; on a half, null for what is done on the other. */
  readonly alterations: HalfOutcomes;
  /** The lines of the centre edges where alterations may have moved them; left out where none were asked for. */
  readonly centres?: CentreLines;
  /**
   * Both halves, each in the coordinates of its own blocks, where the body or the style differs left to right; their extras
   * are their bands, all others are cut for the whole.
   */
  readonly halves?: Readonly<Record<Side, Draft>>;
}

/** The least height of a garment that has room for its seams. mm */
const LEAST_HEIGHT_MM = 40;

/**
 * Drafts a style for a body. Never throws on any numbers: what cannot be made is left out and said in `issues`,
 * with the field, panel, wedge or level it stands at. Pure: same input, same output, to the bit.
 */
export function draft(measurements: Measurements, style: Style, alterations: HalfAlterations = []): Draft {
  const { panels, isCut } = draftPanels(measurements, style, alterations);
  if (!isCut) return panels;
  const beside = extraPieces(style, panels.laced, panels.pieces);
  return {
    ...panels,
    extras: [...panels.extras, ...beside.pieces],
    issues: [...panels.issues, ...beside.issues],
  };
}

/** A draft without what lies beside its panels, but for the bands above them; `isCut` tells whether it came as far as cutting. */
export function draftPanels(
  measurements: Measurements,
  style: Style,
  alterations: HalfAlterations = [],
): { panels: Draft; isCut: boolean } {
  const corrected = correctedBody(measurements, style, alterations);
  const uncut = (panels: Omit<Draft, 'alterations'>) => ({
    panels: { ...panels, alterations: notDrafted(alterations) },
    isCut: false,
  });
  const { body, issues: bodyIssues } = checkBody(corrected.measurements);
  const issues: Issue[] = [...bodyIssues, ...checkStyle(style)];
  if (!body || issues.some((each) => each.severity === 'error')) return uncut(nothing(issues));

  const { levels, issues: levelIssues } = levelsOf(body, style);
  issues.push(...levelIssues);
  if (levels.length === 0) return uncut(nothing(issues));

  const asAsked = makeBaseDraft(body, style, levels);
  const { span: asked } = asAsked.baseDraft;
  const height = asked.hem - asked.top;
  if (height < LEAST_HEIGHT_MM) {
    const { blocks } = asAsked.baseDraft;
    issues.push(...asAsked.issues);
    issues.push(issue('garmentTooShort', { height, least: LEAST_HEIGHT_MM }, { field: 'hemBelow' }));
    return uncut({
      ...nothing(issues),
      levels,
      blocks,
      span: asked,
      nodes: nodesOn(asAsked.baseDraft, []),
    });
  }

  const drafted = cutAgain(body, style, levels, asAsked);
  issues.push(...drafted.issues);
  const plan = planAlterations(drafted.baseDraft, style, alterations);
  const { blocks, edges, span } = plan?.baseDraft ?? drafted.baseDraft;
  const apart = plan ? cutApart(blocks, style, levels, edges, span) : drafted.apart;
  const altered = plan && applyAlterations(plan, apart, style.allowances);
  const { baseDraft, panels: cutPanels, seams: untrued } = altered ?? { ...drafted, ...apart };
  const seams = untrued.map((seam) =>
    trueSeam(seam, levels, heightOn(seam, span.waist), crossingsOf(seam, baseDraft)),
  );
  const closure = checkClosure(blocks, style);
  issues.push(...apart.issues, ...tooShort(seams), ...tooSteep(seams), ...closure.issues, ...checkHem(style));
  const cut = cutPieces(cutPanels, seams, style, baseDraft, closure.onFold, issues);
  const finished = seams.map((seam) => finishedSeam(seam, cut.referenceTo));
  const sleeved = withSleeve(body.upperArm, style, cut.pieces);
  const bands = baseDraft.bands
    ? shoulderBands(baseDraft.bands, edges.top, seams, style, closure.onFold, sleeved.panels)
    : { pieces: [], issues: [] };
  const pieces = withBandsMated(sleeved.panels, bands.pieces);
  const armhole = baseDraft.shoulders ? armholeOf(pieces, baseDraft.shoulders.front.underarm.y) : null;
  const fit = altered ? withEaseAltered(style, levels, altered.girths) : { style, levels };
  issues.push(...cut.issues, ...cautions(body, fit.style, fit.levels, finished, span.top, armhole));
  const sewn = [...finished, ...cut.darts.map((seam) => finishedSeam(seam, cut.referenceTo))];
  issues.push(
    ...(altered?.issues ?? []),
    ...bands.issues,
    ...sleeved.issues,
    ...sewingIssues(pieces, sewn, levels),
    ...sidePushedOut([blocks.front, blocks.back], style, levels),
    ...bandIssues({ pieces, extras: bands.pieces }),
  );
  const ledger = girthLedger(
    levels,
    (level) => shapingAt(level, [blocks.front, blocks.back]),
    pieces,
    pieces.length === apart.expectedCount,
    levelEdges(baseDraft),
    altered,
  );
  issues.push(...panelsUnlike(pieces, ledger));
  const beside = [...bands.pieces, ...sleeved.sleeve];
  const panels: Draft = {
    levels,
    blocks,
    span,
    nodes: nodesOn(baseDraft, cut.made),
    laced: lacedBlocks(style.closure),
    pieces,
    extras: beside,
    proof: {
      ledger,
      seams: [...seamWalk(sewn, pieces), ...joinedWalk(pieces, beside)],
      closedDarts: dartWalk(pieces),
      edges: [...edgeContinuity(sewn, pieces), ...shoulderContinuity(pieces)],
    },
    issues,
    alterations: corrected.outcomes.map((outcome, i) => outcome ?? altered?.outcomes[i] ?? null),
    ...(altered ? { centres: altered.centres } : {}),
  };
  return { panels, isCut: true };
}

/** Style and levels with what alterations add to the girths counted as ease, as the wearer feels it. */
function withEaseAltered(
  style: Style,
  levels: readonly Level[],
  girths: ReadonlyMap<LevelName, number>,
): { style: Style; levels: readonly Level[] } {
  const ease = { ...style.ease, waist: style.ease.waist + (girths.get('waist') ?? 0) };
  return {
    style: { ...style, ease },
    levels: levels.map((level) => ({ ...level, ease: level.ease + (girths.get(level.name) ?? 0) })),
  };
}

const nodesOn = ({ edges, shoulders }: BaseDraft, made: readonly OutlinedPanel[]): EdgeNodePlace[] => [
  ...nodesOf('top', edges.top, made).filter(({ name }) => !shoulders || SHOULDERED_NODES.includes(name)),
  ...nodesOf('hem', edges.hem, made),
];

/** Where a shouldered block's neckline and armhole are given a height. */
const SHOULDERED_NODES: readonly EdgeNodeName[] = ['centreFront', 'underarm'];

/** Seams at which top edge and hem come too near each other. */
function tooShort(seams: readonly TruedSeam[]): Issue[] {
  return seams
    .map(({ seam, edges }) => ({ seam: seam.identity, height: edges.hem.y - edges.top.y }))
    .filter(({ height }) => height < LEAST_HEIGHT_MM)
    .map(({ seam, height }) =>
      issue('garmentTooShort', { height, least: LEAST_HEIGHT_MM }, { seam, field: 'hemBelow' }),
    );
}

const tooSteep = (seams: readonly TruedSeam[]): Issue[] =>
  seams.filter(({ steep }) => steep).map(({ seam }) => issue('edgeTooSteep', {}, { seam: seam.identity }));

const notDrafted = (alterations: HalfAlterations): HalfOutcomes =>
  alterations.map((each) => each && refused('notDrafted'));

function nothing(issues: readonly Issue[]): Omit<Draft, 'alterations'> {
  return {
    levels: [],
    blocks: null,
    span: null,
    nodes: [],
    laced: [],
    pieces: [],
    extras: [],
    proof: { ledger: [], seams: [], closedDarts: [], edges: [] },
    issues,
  };
}
