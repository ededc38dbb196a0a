// Drafts a style for a body that is alike on both sides: blocks, pieces, what the checks measure on them, and all issues.

import type { CentreLines, HalfAlterations, HalfOutcomes } from '../alterations/alterDraft';
import { correctedBody } from '../alterations/correctedBody';
import { refused } from '../alterations/terms/alteration';
import type { Block } from '../block/block';
import { type Level, levelsOf, type RaisedLevel } from '../block/lines/levels';
import { shapingAt } from '../block/shaping';
import { draftedAbove, type SideDart } from '../block/shoulders/sideDart';
import { type Body, checkBody } from '../body/body';
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
import { extraPieces } from '../extras/extras';
import { type EdgeNodePlace, nodesOf, type OutlinedPanel } from '../pieces/edgeNodes';
import type { Piece } from '../pieces/piece';
import { checkStyle } from '../style/checkStyle';
import { lacedBlocks } from '../style/openings';
import type { EdgeNodeName, Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { BlockName, LevelName, Side } from '../terms/names';
import { cutAgain } from './cutAgain';
import { LEAST_HEIGHT_MM, type MadePieces, makePieces } from './makePieces';
import { type DartTurned, withDartTurned } from './turnedDraft';

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
  /**
   * Shoulder bands, sleeves, modesty panel, facings and straps. They are cut like the panels; the proof has only those seams of them
   * that are sewn to the panels' top edge.
   */
  readonly extras: readonly Piece[];
  readonly proof: {
    readonly ledger: readonly LedgerRow[];
    readonly seams: readonly SeamWalkRow[];
    /** Darts closed at both ends; an open one's legs are a seam. */
    readonly closedDarts: readonly DartWalkRow[];
    readonly edges: readonly EdgeContinuityRow[];
  };
  readonly issues: readonly Issue[];
  /** The outcome of each alteration asked for, in the same order; on a half, null for one that is made on the other. */
  readonly alterations: HalfOutcomes;
  /**
   * Levels that alterations raised on a piece, so that they run aslant there or at another height; left out where no alterations were
   * asked for.
   */
  readonly raisedLevels?: readonly RaisedLevel[];
  /** The lines of the centre edges where alterations may have moved them; left out where none were asked for. */
  readonly centres?: CentreLines;
  /** The bust dart that was turned into the side seam; left out where none was. */
  readonly turnedDart?: DartTurned;
  /**
   * Both halves, each in the coordinates of its own blocks, where the body or the style differs left to right; their extras
   * are their bands, all others are cut for the whole.
   */
  readonly halves?: Readonly<Record<Side, Draft>>;
}

/**
 * Drafts a style for a body, all lengths mm. It never throws, whatever the numbers: what cannot be made is left out, and an issue
 * names the field, panel, wedge or level that keeps it from being made. Pure: the same input gives the same output, to the bit.
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

/** The same without facings, modesty panel and straps. `isCut` is false where something keeps the draft from being cut. */
export function draftPanels(
  measurements: Measurements,
  given: Style,
  alterations: HalfAlterations = [],
): { panels: Draft; isCut: boolean } {
  const corrected = correctedBody(measurements, given, alterations);
  const uncut = (panels: Omit<Draft, 'alterations'>) => ({
    panels: { ...panels, alterations: notDrafted(alterations) },
    isCut: false,
  });
  const { body: checked, issues: bodyIssues } = checkBody(corrected.measurements);
  const body = checked && withBackAsMeasured(checked, measurements);
  const issues: Issue[] = [...bodyIssues, ...checkStyle(given)];
  if (!body || issues.some((each) => each.severity === 'error')) return uncut(nothing(issues));

  const { style, sideDart } = draftedAbove(given);
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
  const isOfTurned = alterations.map((each) => isOfDart(each, sideDart));
  const laidOn = alterations.map((each, i) => (isOfTurned[i] ? null : each));
  const made = makePieces(body, style, levels, drafted, laidOn, sideDart?.wedge);
  const drawn = checkedPanels(body, style, levels, made, issues);
  const panels = {
    ...(sideDart ? withDartTurned(drawn, sideDart, style) : drawn),
    alterations: corrected.outcomes.map((outcome, i) =>
      isOfTurned[i] ? refused('dartTurned') : (outcome ?? made.altered?.outcomes[i] ?? null),
    ),
  };
  return { panels, isCut: true };
}

/** Whether an alteration is one of the dart that is turned into the side seam: it has no legs until it was turned. */
const isOfDart = (each: HalfAlterations[number], sideDart: SideDart | null): boolean =>
  each?.kind === 'seam' && each.seam.kind === 'dart' && each.seam.wedge === sideDart?.wedge;

/** The body with its back's line where the measurements have it: a fitting that moves the bust points leaves the back as it is. */
const withBackAsMeasured = (body: Body, { bustPointWidth }: Measurements): Body =>
  bustPointWidth === null || bustPointWidth === body.backLineWidth
    ? body
    : { ...body, backLineWidth: bustPointWidth };

/** The draft of pieces that were made, with what the checks measure on them; `before` are the issues that came up till then. */
function checkedPanels(
  body: Body,
  style: Style,
  levels: readonly Level[],
  made: MadePieces,
  before: readonly Issue[],
): Omit<Draft, 'alterations'> {
  const { baseDraft, altered, pieces, bands, seams } = made;
  const { blocks, span } = made.planned;
  const sewn = [...seams, ...made.darts];
  const extras = [...bands, ...made.sleeve];
  const armhole = baseDraft.shoulders ? armholeOf(pieces, baseDraft.shoulders.front.underarm.y) : null;
  const worn = altered ? withEaseAltered(style, levels, altered.girths) : { style, levels };
  const ledger = girthLedger(
    levels,
    (level) => shapingAt(level, [blocks.front, blocks.back]),
    pieces,
    pieces.length === made.expectedCount,
    levelEdges(baseDraft),
    altered,
  );
  return {
    levels,
    blocks,
    span,
    nodes: nodesOn(baseDraft, made.outlined),
    laced: lacedBlocks(style.closure),
    pieces,
    extras,
    proof: {
      ledger,
      seams: [...seamWalk(sewn, pieces), ...joinedWalk(pieces, extras)],
      closedDarts: dartWalk(pieces),
      edges: [...edgeContinuity(sewn, pieces), ...shoulderContinuity(pieces)],
    },
    issues: [
      ...before,
      ...made.panelIssues,
      ...cautions(body, worn.style, worn.levels, seams, span.top, armhole),
      ...made.besideIssues,
      ...sewingIssues(pieces, sewn, levels),
      ...sidePushedOut([blocks.front, blocks.back], style, levels),
      ...bandIssues({ pieces, extras: bands }),
      ...panelsUnlike(pieces, ledger),
    ],
    ...(altered ? { centres: altered.centres, raisedLevels: altered.raisedLevels } : {}),
  };
}

/** Style and levels with what alterations add to the girths added to the ease, because that is the ease that the wearer feels. */
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
