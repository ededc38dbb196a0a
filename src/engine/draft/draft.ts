// One whole draft: tape and style in; blocks, pieces, proof and everything there is to say out.

import { type Body, checkBody } from '../body/body';
import type { Measurements } from '../body/measurements';
import { type Issue, issue } from '../issue';
import { cautions } from '../proof/cautions';
import { type EdgeRunRow, edgeRun } from '../proof/edgeRun';
import { girthLedger, type LedgerRow } from '../proof/ledger';
import { type SeamWalkRow, seamWalk } from '../proof/seamWalk';
import { type Block, draftBlock } from './block';
import { checkStyle } from './checkStyle';
import { checkClosure } from './closure';
import { cutApart } from './cutApart';
import { dartSeams } from './darts';
import { type DraftedEdge, draftEdge, type EdgeNodePlace, nodePlaces } from './edgeLine';
import { extraPieces } from './extras';
import { legOf, type Seam } from './leg';
import { type Level, levelsOf } from './levels';
import { lacedSides } from './openings';
import type { PanelLeg } from './outline';
import { narrowAt, type Panel } from './panels';
import { type Edge, makePiece, type Piece } from './piece';
import { edgeOver, seamCrossing } from './seamEdges';
import { shoulderBands } from './shoulderBand';
import { type PanelShoulder, panelShoulders } from './shoulderLines';
import { napeOf, type ShoulderFrame, shouldersOf } from './shoulders';
import { type SeamEdges, type TruedSeam, trueDart, trueSeam } from './truing';
import type { EdgeNodeName, EdgeShape, Side, Style } from './types';

export interface Draft {
  /** From the top down; empty when the measurements or the style cannot be drafted. */
  readonly levels: readonly Level[];
  /** Null when there are no levels. */
  readonly blocks: Readonly<Record<Side, Block>> | null;
  /** Heights of top edge and hem as drafted, mm; null when there are no levels. */
  readonly span: {
    /** The level edges that nodes are measured from. */
    readonly top: number;
    readonly hem: number;
    readonly waist: number;
    /** The highest place of the top edge and the lowest of the hem, as drafted. */
    readonly highest: number;
    readonly lowest: number;
  } | null;
  /** Blocks laced at their centre edge. */
  readonly laced: readonly Side[];
  /** Nodes of top edge and hem on the flat blocks. */
  readonly nodes: readonly EdgeNodePlace[];
  /** Front panels from the centre, then back panels from the centre. */
  readonly pieces: readonly Piece[];
  /** Modesty panel, facings and straps: cut like the panels, no part of the proof. */
  readonly extras: readonly Piece[];
  readonly proof: {
    readonly ledger: readonly LedgerRow[];
    readonly seams: readonly SeamWalkRow[];
    readonly edges: readonly EdgeRunRow[];
  };
  readonly issues: readonly Issue[];
}

/** The least height of a garment that has room for its seams. mm */
const LEAST_HEIGHT_MM = 40;

/**
 * Drafts a style for a body. Never throws on any numbers: what cannot be made is left out and said in `issues`,
 * with the field, panel, wedge or level it stands at. Pure: same input, same output, to the bit.
 */
export function draft(measurements: Measurements, style: Style): Draft {
  const { body, issues: bodyIssues } = checkBody(measurements);
  const issues: Issue[] = [...bodyIssues, ...checkStyle(style)];
  if (!body || issues.some((each) => each.severity === 'block')) return nothing(issues);

  const { levels, issues: levelIssues } = levelsOf(body, style);
  issues.push(...levelIssues);
  if (levels.length === 0) return nothing(issues);

  const top = topHeight(body, style);
  const hem = body.neckToWaist + style.hemBelow;
  const shoulders = shouldersOf(body, style, levels, top);
  // A band lies above panels that are strapless.
  const frames = style.shoulders?.bandAbove === undefined ? shoulders.frames : null;
  const front = draftBlock('front', body, levels, style, frames?.front ?? null);
  const back = draftBlock('back', body, levels, style, frames?.back ?? null);
  issues.push(...shoulders.issues, ...front.issues, ...back.issues);
  const blocks = { front: front.block, back: back.block };
  // With shoulders the neckline ends at the nape behind.
  const topShape = frames ? withNape(style.topShape, top - napeOf(body)) : style.topShape;
  const edges = {
    top: draftEdge(blocks, topShape, top, -1),
    hem: draftEdge(blocks, style.hemShape, hem, 1),
  };
  const highest = frames ? 0 : Math.min(...heightsOf(edges.top));
  const lowest = Math.max(...heightsOf(edges.hem));
  const span = { top, hem, waist: body.neckToWaist, highest, lowest };
  const nodes = [
    ...nodePlaces('top', blocks, topShape, top).filter(
      ({ name }) => !frames || SHOULDERED_NODES.includes(name),
    ),
    ...nodePlaces('hem', blocks, style.hemShape, hem),
  ];
  if (hem - top < LEAST_HEIGHT_MM) {
    issues.push(
      issue('garmentTooShort', 'block', { field: 'hemBelow' }, { height: hem - top, least: LEAST_HEIGHT_MM }),
    );
    return { ...nothing(issues), levels, blocks, span, nodes };
  }

  const cut = cutApart(blocks, style, levels, edges, { highest, lowest });
  issues.push(...cut.issues);
  const frame: Frame = { edges, blocks, frames, waist: span.waist };
  const seams = cut.seams.map((seam) => trueSeam(seam, levels, span.waist, crossingsOf(seam, frame)));
  const shouldered = frames ? panelShoulders(cut.panels, frames) : null;
  issues.push(...tooShort(seams), ...tooSteep(seams));

  const closure = checkClosure(blocks, style.closure);
  issues.push(...closure.issues);
  const pieces: Piece[] = [];
  const dartSewn: TruedSeam[] = [];
  for (const panel of cut.panels) {
    const made = pieceOf(
      panel,
      seams,
      style,
      frame,
      shouldered?.get(panel.id) ?? null,
      closure.onFold[panel.side] && panel.number === 1,
      levels,
    );
    if (!made) issues.push(issue('panelCrossed', 'block', { block: panel.side, piece: panel.id }));
    else {
      pieces.push(made.piece);
      dartSewn.push(...made.darts);
      // Truing moves the ends of legs, at times to where the panel is narrower than between the drafted edges.
      const [inner, outer] = [made.piece.edges[0], made.piece.edges[made.piece.outer]].map(endsOf);
      const narrow =
        inner && outer
          ? narrowAt(panel, levels, Math.max(inner.top, outer.top), Math.min(inner.hem, outer.hem))
          : null;
      const told = issues.some(({ code, at }) => code === 'panelTooNarrow' && at.piece === panel.id);
      if (narrow && !told) issues.push(narrow);
      if (!made.sure) issues.push(issue('cutLineUnsure', 'block', { block: panel.side, piece: panel.id }));
    }
  }
  const bands = shoulders.frames
    ? shoulderBands(shoulders.frames, edges.top, seams, style, closure.onFold)
    : [];
  issues.push(...cautions(body, style, levels, seams, top));
  return {
    levels,
    blocks,
    span,
    nodes,
    laced: lacedSides(style.closure),
    pieces,
    extras: [...bands, ...extraPieces(style, lacedSides(style.closure), pieces)],
    proof: {
      ledger: girthLedger(levels, [blocks.front, blocks.back], pieces, pieces.length === cut.wanted),
      seams: seamWalk([...seams, ...dartSewn], pieces),
      edges: edgeRun([...seams, ...dartSewn], pieces),
    },
    issues,
  };
}

/** What a piece is cut from besides its panel and style. */
interface Frame {
  readonly edges: { readonly top: DraftedEdge; readonly hem: DraftedEdge };
  readonly blocks: Readonly<Record<Side, Block>>;
  readonly frames: Readonly<Record<Side, ShoulderFrame>> | null;
  readonly waist: number;
}

/** Where a shouldered block's neckline and armhole are given a height. */
const SHOULDERED_NODES: readonly EdgeNodeName[] = ['centreFront', 'underarm'];

const withNape = (shape: EdgeShape, above: number): EdgeShape => ({
  ...shape,
  centreBack: { beyond: above, kind: 'smooth' },
});

/** The level top edge. mm */
function topHeight(body: Body, style: Style): number {
  const lines = {
    overBust: body.neckToBust - style.overBustAbove,
    underBust: body.neckToUnderBust,
    waist: body.neckToWaist,
  };
  return lines[style.topFrom] - style.topAbove;
}

const heightsOf = ({ lines }: DraftedEdge): number[] =>
  [...lines.front, ...lines.back].flatMap((line) => line.xs);

/** A wedge that runs through a shouldered block meets its shoulder line, every other seam the top edge. */
function crossingsOf(seam: Seam, { edges, blocks, frames }: Frame): SeamEdges {
  const hem = seamCrossing(seam, edges.hem, blocks);
  if (!frames || seam.kind !== 'wedge') return { top: seamCrossing(seam, edges.top, blocks), hem };
  const { middle, slope } = frames[seam.a.panel.side];
  const top = { y: middle.y, slopeA: slope, slopeB: slope, closedA: middle.x, closedB: middle.x };
  return { top, hem };
}

/** Seams at which top edge and hem come too near each other. */
function tooShort(seams: readonly TruedSeam[]): Issue[] {
  return seams
    .map(({ seam, edges }) => ({ seam: seam.id, height: edges.hem.y - edges.top.y }))
    .filter(({ height }) => height < LEAST_HEIGHT_MM)
    .map(({ seam, height }) =>
      issue('garmentTooShort', 'block', { seam, field: 'hemBelow' }, { height, least: LEAST_HEIGHT_MM }),
    );
}

const tooSteep = (seams: readonly TruedSeam[]): Issue[] =>
  seams.filter(({ steep }) => steep).map(({ seam }) => issue('edgeTooSteep', 'block', { seam: seam.id }));

function endsOf(edge: Edge | undefined): { top: number; hem: number } {
  const heights = edge?.points.map((point) => point.y) ?? [];
  return { top: Math.min(...heights), hem: Math.max(...heights) };
}

function nothing(issues: readonly Issue[]): Draft {
  return {
    levels: [],
    blocks: null,
    span: null,
    nodes: [],
    laced: [],
    pieces: [],
    extras: [],
    proof: { ledger: [], seams: [], edges: [] },
    issues,
  };
}

function pieceOf(
  panel: Panel,
  seams: readonly TruedSeam[],
  style: Style,
  frame: Frame,
  shoulder: PanelShoulder | null,
  onFold: boolean,
  levels: readonly Level[],
): ({ darts: TruedSeam[] } & NonNullable<ReturnType<typeof makePiece>>) | null {
  const legIn = (which: 'inner' | 'outer'): PanelLeg => {
    for (const trued of seams) {
      const { a, b } = trued.seam;
      if (a.panel === panel && a.which === which) return { seam: trued, leg: trued.a };
      if (b?.panel === panel && b.which === which && trued.b) return { seam: trued, leg: trued.b };
    }
    // Its mate could not be made: trued against itself, so that the panel can still be seen.
    const alone: Seam = { id: `${panel.id}/alone`, kind: 'wedge', a: legOf(panel, which), b: null };
    const trued = trueSeam(alone, levels, frame.waist, crossingsOf(alone, frame));
    return { seam: trued, leg: trued.a };
  };
  const darts = dartSeams(panel).map((seam) => trueDart(seam, levels, crossingsOf(seam, frame)));
  const lines = { top: edgeOver(panel, frame.edges.top), hem: edgeOver(panel, frame.edges.hem) };
  const made = makePiece(
    { panel, inner: legIn('inner'), outer: legIn('outer'), darts, edges: lines, shoulder },
    style,
    levels,
    frame.waist,
    onFold,
  );
  return made && { ...made, darts };
}
