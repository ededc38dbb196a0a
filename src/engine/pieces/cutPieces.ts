// The pieces of all panels, each trued with its mates, and the issues of those that cannot be made or cut as asked.

import type { BaseDraft } from '../edges/baseDraft';
import { heightSpan } from '../geometry/polyline';
import { crossingsOf } from '../panels/crossings';
import { dartSeams } from '../panels/darts';
import type { Panel } from '../panels/panel';
import { narrowAt } from '../panels/panels';
import { heightOn } from '../panels/raisedSeam';
import { edgeOver } from '../panels/seamCrossing';
import { type Seam, type SeamEdge, seamEdgeOf } from '../panels/seamEdge';
import { type TruedSeam, trueDart, trueSeam } from '../panels/truing';
import type { Style } from '../style/style';
import { identifyWedgeSeam, identityOf } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { innerEdge, outerEdge } from './edgeLookup';
import type { OutlinedPanel } from './edgeNodes';
import { makePiece } from './makePiece';
import { edgeReferences } from './matedEdges';
import { outlineOf, type PanelEdge, type TruedPanel } from './outline';
import type { EdgeReference, Piece } from './piece';
import { pieceEdges } from './pieceEdges';
import { type PanelShoulder, panelShoulders } from './shoulderLines';

export interface CutPieces {
  readonly pieces: readonly Piece[];
  /** The panels they were made of. */
  readonly made: readonly OutlinedPanel[];
  /** The seams of open darts. */
  readonly darts: readonly TruedSeam[];
  /** Where an edge of a seam stands among its piece's edges. */
  readonly referenceTo: (seamEdge: SeamEdge) => EdgeReference;
  readonly issues: readonly Issue[];
}

/**
 * Pieces of the panels that can be made, in the same order; a panel that cannot is a blocking issue.
 *
 * @param toTurn id of a dart that is turned afterwards: the piece it lies on has no cut line yet
 */
export function cutPieces(
  panels: readonly Panel[],
  seams: readonly TruedSeam[],
  style: Style,
  baseDraft: BaseDraft,
  onFold: Readonly<Record<BlockName, boolean>>,
  reportedIssues: readonly Issue[],
  toTurn: string | null,
): CutPieces {
  const shouldered = baseDraft.shoulders ? panelShoulders(panels, baseDraft.blocks) : null;
  const outlined = panels.map((panel) => {
    const trued = truePanel(panel, seams, baseDraft, shouldered?.get(panel.id) ?? null);
    const outline = outlineOf(trued);
    const isOnFold = onFold[panel.block] && panel.number === 1;
    return { panel, trued, outline, isOnFold, ...pieceEdges(trued, outline, style, isOnFold) };
  });
  const { referenceTo, withMate } = edgeReferences(outlined);
  const pieces: Piece[] = [];
  const made: OutlinedPanel[] = [];
  const darts: TruedSeam[] = [];
  const issues: Issue[] = [];
  for (const { panel, trued, outline, isOnFold, edges, toCut } of outlined) {
    const mated = edges.map((edge) => withMate(edge, panel.block));
    const { levels, span } = baseDraft;
    const isTurned = toTurn !== null && panel.darts.some(({ wedge }) => wedge === toTurn);
    const cut = makePiece(trued, outline, mated, isTurned ? null : toCut, levels, span.waist, isOnFold);
    const place = { block: panel.block, piece: identityOf(panel) };
    if (!cut) {
      issues.push(issue('panelCrossed', {}, place));
      continue;
    }
    pieces.push(cut.piece);
    made.push({ panel, outline });
    darts.push(...trued.darts);
    const isReported = reportedIssues.some(
      ({ code, at }) => code === 'panelTooNarrow' && at.piece?.id === panel.id,
    );
    const narrow = isReported ? null : narrowAsTrued(panel, cut.piece, baseDraft);
    if (narrow) issues.push(narrow);
    if (!cut.isValid) issues.push(issue('cutLineUnsure', {}, place));
    else if (!cut.turnsUp) issues.push(issue('hemTurnsShort', {}, place));
  }
  return { pieces, made, darts, referenceTo, issues };
}

/**
 * Truing moves the ends of legs, at times to where the panel is narrower than between the drafted edges. Within those a panel
 * without darts has been measured when it was cut, and is wide enough.
 */
function narrowAsTrued(panel: Panel, piece: Piece, { levels, span, shoulders }: BaseDraft): Issue | null {
  const a = heightSpan(innerEdge(piece).points);
  const b = heightSpan(outerEdge(piece).points);
  const top = Math.max(a.least, b.least);
  const hem = Math.min(a.most, b.most);
  const isMeasured =
    !shoulders && !panel.mayBeNarrow && panel.darts.length === 0 && top >= span.highest && hem <= span.lowest;
  return isMeasured ? null : narrowAt(panel, levels, top, hem);
}

function truePanel(
  panel: Panel,
  seams: readonly TruedSeam[],
  baseDraft: BaseDraft,
  shoulder: PanelShoulder | null,
): TruedPanel {
  const { levels, edges, span } = baseDraft;
  const panelEdge = (which: 'inner' | 'outer'): PanelEdge => {
    for (const trued of seams) {
      const { a, b } = trued.seam;
      if (a.panel === panel && a.which === which) return { seam: trued, trued: trued.a };
      if (b?.panel === panel && b.which === which && trued.b) return { seam: trued, trued: trued.b };
    }
    // Its mate could not be made: trued against itself, so that the panel can still be seen.
    const alone: Seam = { identity: identifyWedgeSeam(panel), a: seamEdgeOf(panel, which), b: null };
    const waist = heightOn(alone, span.waist);
    const trued = trueSeam(alone, levels, waist, crossingsOf(alone, baseDraft));
    return { seam: trued, trued: trued.a };
  };
  return {
    panel,
    inner: panelEdge('inner'),
    outer: panelEdge('outer'),
    darts: dartSeams(panel).map((seam) => trueDart(seam, levels, crossingsOf(seam, baseDraft))),
    edges: { top: edgeOver(panel, edges.top), hem: edgeOver(panel, edges.hem) },
    shoulder,
  };
}
