// The outline of a panel as named edges, counter-clockwise, and as it is cut: with shaped ends to its darts.

import type { AllowedEdge } from '../geometry/offset/cutLine';
import type { Point } from '../geometry/point';
import { dartSeam } from '../panels/darts';
import type { Panel, PanelDart } from '../panels/panel';
import { type Seam, type SeamEdge, seamEdgeOf } from '../panels/seamEdge';
import { allowanceOf } from '../style/allowanceOf';
import type { Allowances, Style } from '../style/style';
import { turnsHemUp } from '../style/turnedHem';
import { peakOf } from './dartMarks';
import { type EdgeRow, isDartLegs, type Outline } from './edgeRow';
import type { TruedPanel } from './outline';
import type { Edge, EdgePlace } from './piece';

/** An edge that is not told yet where its mate stands among the edges of the piece it belongs to. */
export interface OutlineEdge extends Omit<Edge, 'mate'> {
  /** What it is sewn to; null for nothing, and for a part of the shoulder, which is sewn to that part of the other block. */
  readonly sewnTo: SeamEdge | null;
}

/** A panel's outline as edges, and the runs that its cut line follows. */
export interface PanelEdges {
  readonly edges: readonly OutlineEdge[];
  readonly toCut: readonly AllowedEdge[];
}

/** Which edge of its piece a panel's edge or a dart's leg is. A dart's inner leg is the outer edge of the cloth beside it. */
export const placeOf = ({ which, dart }: SeamEdge): EdgePlace =>
  dart ? legPlace(dart, which === 'outer' ? 'inner' : 'outer') : { at: which };

const legPlace = ({ wedge, lower }: PanelDart, leg: 'inner' | 'outer'): EdgePlace => ({
  at: lower === null ? 'hem' : 'top',
  dart: { wedge, leg },
});

/**
 * The edges of a panel's outline, each with what it is sewn to, and the edges that its cut line is offset from.
 *
 * @param onFold whether its centre edge lies on the fold of the cloth
 */
export function pieceEdges(
  { panel, inner, outer }: TruedPanel,
  outline: Outline,
  style: Style,
  onFold: boolean,
): PanelEdges {
  const innerEdge = longEdge(seamEdgeOf(panel, 'inner'), inner.seam.seam, style, onFold, outline.inner);
  const outerEdge = turned(
    longEdge(seamEdgeOf(panel, 'outer'), outer.seam.seam, style, onFold, outline.outer),
  );
  const { allowances } = style;
  const hem = rowEdges('hem', outline.hem, panel, allowances);
  const top = rowEdges('top', outline.top, panel, allowances).reverse().map(turned);
  return {
    edges: [innerEdge, ...hem, outerEdge, ...top],
    toCut: [
      { ...innerEdge, onFold },
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

/** Seam allowance of a row between a panel's legs, among the rows of its top edge or hem. mm */
const allowanceOfRow = ({ role }: EdgeRow, rows: Outline['top'], allowances: Allowances): number =>
  allowanceOf(role === 'top' && isShouldered(rows) ? 'neckline' : role, allowances);

const isShouldered = (rows: Outline['top']): boolean =>
  rows.some((row) => !isDartLegs(row) && row.role === 'shoulder');

/** Top edge or hem as edges, from the centre to the side, with the legs of the darts that are open there. */
function rowEdges(
  at: 'top' | 'hem',
  rows: Outline['top'],
  panel: Panel,
  allowances: Allowances,
): OutlineEdge[] {
  return rows.flatMap((row): OutlineEdge[] => {
    if (!isDartLegs(row)) {
      const { role, points, shoulder, ease } = row;
      return [
        {
          role,
          at,
          dart: undefined,
          shoulder,
          isSideSeam: false,
          sewnTo: null,
          ease,
          allowance: allowanceOfRow(row, rows, allowances),
          points,
        },
      ];
    }
    const { a, b } = dartSeam(panel, row.dart);
    const common = { role: 'seam', isSideSeam: false, allowance: 0 } as const;
    // From the centre to the side: along one leg to the dart's point, and back along the other.
    const [to, from] =
      row.dart.lower === null ? [[...row.inner].reverse(), row.outer] : [row.inner, [...row.outer].reverse()];
    return [
      { ...common, ...placeOf(a), sewnTo: b, points: to },
      { ...common, ...placeOf(b), sewnTo: a, points: from },
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
    } else runs.push({ points: [...row.points], allowance: allowanceOfRow(row, rows, allowances) });
  }
  return runs;
}

function longEdge(
  seamEdge: SeamEdge,
  { identity, a, b }: Seam,
  style: Style,
  onFold: boolean,
  points: readonly Point[],
): OutlineEdge {
  const { at } = placeOf(seamEdge);
  if (identity.kind === 'centre')
    return {
      role: 'centre',
      at,
      dart: undefined,
      shoulder: undefined,
      isSideSeam: false,
      sewnTo: null,
      allowance: centreAllowance(style, onFold),
      points,
    };
  const isSideSeam = identity.kind === 'sideSeam';
  const atSideSeam = isSideSeam || a.panel.kind === 'sidePanel' || b?.panel.kind === 'sidePanel';
  return {
    role: 'seam',
    at,
    dart: undefined,
    shoulder: undefined,
    isSideSeam,
    sewnTo: a.panel === seamEdge.panel && a.which === seamEdge.which ? b : a,
    allowance: atSideSeam ? style.allowances.side : style.allowances.seam,
    points,
  };
}

function centreAllowance(style: Style, onFold: boolean): number {
  return onFold ? 0 : style.allowances.centre;
}
