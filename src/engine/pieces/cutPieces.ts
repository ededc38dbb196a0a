// The pieces of all panels, each trued with its mates, and what there is to say about them.

import type { BaseDraft } from '../edges/baseDraft';
import { crossingsOf } from '../panels/crossings';
import { dartSeams } from '../panels/darts';
import type { Panel } from '../panels/panel';
import { narrowAt } from '../panels/panels';
import { edgeOver } from '../panels/seamCrossing';
import { type Seam, seamEdgeOf } from '../panels/seamEdge';
import { type TruedSeam, trueDart, trueSeam } from '../panels/truing';
import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import type { OutlinedPanel } from './edgeNodes';
import { makePiece } from './makePiece';
import type { PanelEdge } from './outline';
import type { Edge, Piece } from './piece';
import { type PanelShoulder, panelShoulders } from './shoulderLines';

export interface CutPieces {
  readonly pieces: readonly Piece[];
  /** The panels they were made of. */
  readonly made: readonly OutlinedPanel[];
  /** The seams of open darts. */
  readonly darts: readonly TruedSeam[];
  readonly issues: readonly Issue[];
}

/** Pieces of the panels that can be made, in the same order; a panel that cannot is a blocking issue. */
export function cutPieces(
  panels: readonly Panel[],
  seams: readonly TruedSeam[],
  style: Style,
  baseDraft: BaseDraft,
  onFold: Readonly<Record<BlockName, boolean>>,
  reportedIssues: readonly Issue[],
): CutPieces {
  const shouldered = baseDraft.shoulders ? panelShoulders(panels, baseDraft.shoulders) : null;
  const pieces: Piece[] = [];
  const made: OutlinedPanel[] = [];
  const darts: TruedSeam[] = [];
  const issues: Issue[] = [];
  for (const panel of panels) {
    const shoulder = shouldered?.get(panel.id) ?? null;
    const cut = pieceOf(panel, seams, style, baseDraft, shoulder, onFold[panel.block] && panel.number === 1);
    const place = { block: panel.block, piece: panel.id };
    if (!cut) {
      issues.push(issue('panelCrossed', 'error', place));
      continue;
    }
    pieces.push(cut.piece);
    made.push({ panel, outline: cut.outline });
    darts.push(...cut.darts);
    const isReported = reportedIssues.some(
      ({ code, at }) => code === 'panelTooNarrow' && at.piece === panel.id,
    );
    const narrow = isReported ? null : narrowAsTrued(panel, cut.piece, baseDraft);
    if (narrow) issues.push(narrow);
    if (!cut.isValid) issues.push(issue('cutLineUnsure', 'error', place));
    else if (!cut.turnsUp) issues.push(issue('hemTurnsShort', 'warn', place));
  }
  return { pieces, made, darts, issues };
}

/** Truing moves the ends of legs, at times to where the panel is narrower than between the drafted edges. */
function narrowAsTrued(panel: Panel, { edges, outer }: Piece, { levels }: BaseDraft): Issue | null {
  const [a, b] = [endsOf(edges[0]), endsOf(edges[outer])];
  return narrowAt(panel, levels, Math.max(a.top, b.top), Math.min(a.hem, b.hem));
}

function endsOf(edge: Edge | undefined): { top: number; hem: number } {
  const heights = edge?.points.map((point) => point.y) ?? [];
  return { top: Math.min(...heights), hem: Math.max(...heights) };
}

function pieceOf(
  panel: Panel,
  seams: readonly TruedSeam[],
  style: Style,
  baseDraft: BaseDraft,
  shoulder: PanelShoulder | null,
  onFold: boolean,
): ({ darts: TruedSeam[] } & NonNullable<ReturnType<typeof makePiece>>) | null {
  const { levels, edges, span } = baseDraft;
  const panelEdge = (which: 'inner' | 'outer'): PanelEdge => {
    for (const trued of seams) {
      const { a, b } = trued.seam;
      if (a.panel === panel && a.which === which) return { seam: trued, trued: trued.a };
      if (b?.panel === panel && b.which === which && trued.b) return { seam: trued, trued: trued.b };
    }
    // Its mate could not be made: trued against itself, so that the panel can still be seen.
    const alone: Seam = { id: `${panel.id}/alone`, kind: 'wedge', a: seamEdgeOf(panel, which), b: null };
    const trued = trueSeam(alone, levels, span.waist, crossingsOf(alone, baseDraft));
    return { seam: trued, trued: trued.a };
  };
  const darts = dartSeams(panel).map((seam) => trueDart(seam, levels, crossingsOf(seam, baseDraft)));
  const lines = { top: edgeOver(panel, edges.top), hem: edgeOver(panel, edges.hem) };
  const made = makePiece(
    { panel, inner: panelEdge('inner'), outer: panelEdge('outer'), darts, edges: lines, shoulder },
    style,
    levels,
    span.waist,
    onFold,
  );
  return made && { ...made, darts };
}
