// Darts on their panels: an open one parts top edge or hem and has a seam; a closed one lies wholly inside.

import type { Extent } from '../block/lines/extent';
import { xAt } from '../geometry/smoothLine';
import { identifyDart, identityOf } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import type { Panel, PanelDart } from './panel';
import type { Seam, SeamEdge } from './seamEdge';

/** Both legs of a dart as a seam. */
export function dartSeam(panel: Panel, dart: PanelDart): Seam & { readonly b: SeamEdge } {
  // The dart's inner leg is the outer edge of the cloth beside it.
  const a: SeamEdge = { panel, which: 'outer', line: dart.innerLeg, drafted: dart.drafted.inner, dart };
  const b: SeamEdge = { panel, which: 'inner', line: dart.outerLeg, drafted: dart.drafted.outer, dart };
  return { identity: identifyDart(panel, dart.wedge), a, b };
}

/** The seam of each open dart, from its point to the edge. A closed one is sewn from point to point and ends nowhere. */
export const dartSeams = (panel: Panel): Seam[] =>
  panel.darts
    .filter(({ upper, lower }) => (upper === null) !== (lower === null))
    .map((dart) => dartSeam(panel, dart));

/** A point nearer to an edge than this, or a dart that opens less there, cannot be sewn. mm */
const CLEAR_OF_EDGE_MM = 10;
const LEAST_OPENING_MM = 2;

/** A dart that opens too little at an edge is closed so far before it; a little more than the least, as the edge may lean. mm */
const CLOSED_BEFORE_MM = CLEAR_OF_EDGE_MM + 2;

const isClear = (point: number | null, edge: number): boolean =>
  point !== null && Math.abs(edge - point) >= CLEAR_OF_EDGE_MM;

/** A dart that was refused because it shuts at an edge, and where it would have to run instead, closed before that edge. */
export interface ShutDart {
  readonly wedge: string;
  readonly extent: Extent;
}

/**
 * A panel's darts against its top edge and hem: a point that lies beyond an edge opens the dart there. One that neither
 * ends inside nor opens at the edge, or would run through, is taken off the panel and refused.
 *
 * @param edgeAt height of top edge and hem where a dart's legs stand
 */
export function clearDarts(
  panel: Panel,
  edgeAt: (dart: PanelDart, edge: 'top' | 'hem') => number,
): { panel: Panel; shut: ShutDart[]; issues: Issue[] } {
  const issues: Issue[] = [];
  const shut: ShutDart[] = [];
  const darts = panel.darts.flatMap((dart) => {
    const top = edgeAt(dart, 'top');
    const hem = edgeAt(dart, 'hem');
    const width = (y: number): number => xAt(dart.outerLeg, y) - xAt(dart.innerLeg, y);
    const adjusted = {
      ...dart,
      upper: dart.upper === null || dart.upper < top ? null : dart.upper,
      lower: dart.lower === null || dart.lower > hem ? null : dart.lower,
    };
    const sewable =
      (adjusted.upper !== null || adjusted.lower !== null) &&
      (adjusted.upper === null ? width(top) >= LEAST_OPENING_MM : adjusted.upper - top >= CLEAR_OF_EDGE_MM) &&
      (adjusted.lower === null ? width(hem) >= LEAST_OPENING_MM : hem - adjusted.lower >= CLEAR_OF_EDGE_MM) &&
      (adjusted.upper === null || hem - adjusted.upper >= CLEAR_OF_EDGE_MM) &&
      (adjusted.lower === null || adjusted.lower - top >= CLEAR_OF_EDGE_MM);
    if (sewable) return [adjusted];
    shut.push({
      wedge: dart.wedge,
      extent: {
        upper: isClear(adjusted.upper, top) ? adjusted.upper : top + CLOSED_BEFORE_MM,
        lower: isClear(adjusted.lower, hem) ? adjusted.lower : hem - CLOSED_BEFORE_MM,
      },
    });
    issues.push(
      issue(
        'dartEndsAtEdge',
        {},
        {
          block: dart.drafted.inner.block,
          piece: identityOf(panel),
          wedge: dart.wedge,
        },
      ),
    );
    return [];
  });
  return { panel: { ...panel, darts }, shut, issues };
}

/**
 * Whether a dart lies on a panel: whether the middle of its extent does.
 *
 * @param top height of the upper end of a dart that is open at the top edge, mm
 * @param hem height of the lower end of one that is open at the hem, mm
 */
export function liesOn(
  dart: PanelDart,
  panel: Pick<Panel, 'inner' | 'outer'>,
  top: number,
  hem: number,
): boolean {
  const y = ((dart.upper ?? top) + (dart.lower ?? hem)) / 2;
  const x = (xAt(dart.innerLeg, y) + xAt(dart.outerLeg, y)) / 2;
  return x > xAt(panel.inner, y) && x <= xAt(panel.outer, y);
}
