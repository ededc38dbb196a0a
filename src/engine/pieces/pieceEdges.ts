// The outline of a panel as named edges, counter-clockwise, and as it is cut: with shaped ends to its darts.

import type { AllowedEdge } from '../geometry/cutLine';
import type { Point } from '../geometry/point';
import { dartSeams } from '../panels/darts';
import type { Panel } from '../panels/panel';
import { edgeIndex, type Seam, type SeamEdge, seamEdgeOf } from '../panels/seamEdge';
import type { Allowances, Style } from '../style/style';
import { turnsHemUp } from '../style/turnedHem';
import { peakOf } from './dartMarks';
import { isDartLegs, type Outline } from './edgeRow';
import type { TruedPanel } from './outline';
import type { Edge, EdgeReference } from './piece';

/** The edges of a piece, the index of the one towards the side, and the runs that its cut line follows. */
export function pieceEdges(
  { panel, inner, outer, shoulder }: TruedPanel,
  outline: Outline,
  style: Style,
  onFold: boolean,
): { edges: Edge[]; outerEdge: number; toCut: AllowedEdge[] } {
  const innerEdge = longEdge(seamEdgeOf(panel, 'inner'), inner.seam.seam, style, onFold, outline.inner);
  const down = longEdge(seamEdgeOf(panel, 'outer'), outer.seam.seam, style, onFold, outline.outer);
  const outerEdge = turned(down);
  const { allowances } = style;
  const hem = rowEdges(outline.hem, panel, allowances, []);
  const top = rowEdges(outline.top, panel, allowances, shoulder?.mates ?? [])
    .reverse()
    .map(turned);
  const edges = [innerEdge, ...hem, outerEdge, ...top];
  return {
    edges,
    outerEdge: 1 + hem.length,
    toCut: [
      innerEdge,
      // On a fold the cloth goes on in the other half: there the allowance runs straight down.
      ...cutRuns(outline.hem, 'hem', allowances).map((run) =>
        turnsHemUp(style) ? { ...run, turnedUp: { start: !onFold, end: true } } : run,
      ),
      outerEdge,
      ...cutRuns(outline.top, 'top', allowances).reverse().map(turned),
    ],
  };
}

const turned = <Row extends { readonly points: readonly Point[] }>(row: Row): Row => ({
  ...row,
  points: [...row.points].reverse(),
});

/** Seam allowance of what lies between the legs at either end of a panel. mm */
const allowanceOf = (role: Edge['role'], allowances: Allowances): number =>
  role === 'hem' ? allowances.hem : role === 'shoulder' ? allowances.seam : allowances.top;

/** Top edge or hem as edges, from the centre to the side, with the legs of the darts that are open there. */
function rowEdges(
  rows: Outline['top'],
  panel: Panel,
  allowances: Allowances,
  shoulderMates: readonly (EdgeReference | null)[],
): Edge[] {
  let shoulders = 0;
  return rows.flatMap((row): Edge[] => {
    if (!isDartLegs(row)) {
      const mate = row.role === 'shoulder' ? (shoulderMates[shoulders++] ?? null) : null;
      const { role, points } = row;
      return [{ role, isSideSeam: false, mate, allowance: allowanceOf(role, allowances), points }];
    }
    const seam = dartSeams(panel).find(({ a }) => a.dart === row.dart);
    if (!seam?.b) return [];
    const mate = (seamEdge: SeamEdge): EdgeReference => ({ piece: panel.id, edge: edgeIndex(seamEdge) });
    const common = { role: 'seam', isSideSeam: false, dart: row.dart.wedge, allowance: 0 } as const;
    // From the centre to the side: along one leg to the dart's point, and back along the other.
    const [to, from] =
      row.dart.lower === null ? [[...row.inner].reverse(), row.outer] : [row.inner, [...row.outer].reverse()];
    return [
      { ...common, mate: mate(seam.b), points: to },
      { ...common, mate: mate(seam.a), points: from },
    ];
  });
}

/**
 * Top edge or hem as it is cut, from the centre to the side: across each dart it rises to a peak on the dart's fold, so that
 * the folded dart ends on the edge.
 */
function cutRuns(rows: Outline['top'], edge: 'top' | 'hem', allowances: Allowances): AllowedEdge[] {
  const runs: { points: Point[]; allowance: number }[] = [];
  let across = false;
  for (const row of rows) {
    const run = runs.at(-1);
    if (isDartLegs(row)) {
      const peak = run && peakOf(run.points, row, edge);
      if (peak) run.points.push(peak);
      across = true;
    } else if (run && across) {
      run.points.push(...row.points);
      across = false;
    } else runs.push({ points: [...row.points], allowance: allowanceOf(row.role, allowances) });
  }
  return runs;
}

function longEdge(
  seamEdge: SeamEdge,
  seam: Seam,
  style: Style,
  onFold: boolean,
  points: readonly Point[],
): Edge {
  if (seam.kind === 'centre')
    return {
      role: 'centre',
      isSideSeam: false,
      mate: null,
      allowance: centreAllowance(style, onFold),
      points,
    };
  const mate = seam.a.panel === seamEdge.panel && seam.a.which === seamEdge.which ? seam.b : seam.a;
  const atSideSeam = seam.kind === 'side' || seam.a.panel.joined || seam.b?.panel.joined;
  return {
    role: 'seam',
    isSideSeam: seam.kind === 'side',
    mate: mate ? { piece: mate.panel.id, edge: edgeIndex(mate) } : null,
    allowance: atSideSeam ? style.allowances.side : style.allowances.seam,
    points,
  };
}

function centreAllowance(style: Style, onFold: boolean): number {
  return onFold ? 0 : style.allowances.centre;
}
