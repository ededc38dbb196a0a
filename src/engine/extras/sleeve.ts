// The off-shoulder sleeve: a straight ring round the upper arm, sewn to the top edge on either side of the side seam and free over
// the arm.

import { pointAlong } from '../geometry/bend';
import { cutLineTurnedUp } from '../geometry/offset/cutLine';
import type { Point } from '../geometry/point';
import { polylineLength, ringThrough } from '../geometry/polyline';
import { uprightInside } from '../geometry/uprightInside';
import { outerEdge } from '../pieces/edgeLookup';
import type { Edge, Mark, Piece } from '../pieces/piece';
import { allowanceOf } from '../style/allowanceOf';
import type { Style } from '../style/style';
import { identifyPiece } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import { freeEdge } from './freeEdge';

/** A mark stands at least so far from the end of the panel's top edge, mm. */
const CLEAR_MM = 6;

/** The sleeve, and the panels with the marks up to which it is sewn to them. */
interface WithSleeve {
  readonly sleeve: readonly Piece[];
  readonly panels: readonly Piece[];
  readonly issues: readonly Issue[];
}

/**
 * Cuts the sleeve that a style asks for: as wide as the upper arm with its ease and what is gathered in, its short ends sewn to each
 * other under the arm. From there its upper edge is sewn to the top edges of the panels beside the side seam, as far as the marks
 * that both have. Where there is no such top edge, or the arm was not measured, there is no sleeve, and a warning says so. x runs
 * from the front end under the arm, y down from the upper edge; mm.
 */
export function withSleeve(upperArm: number | null, style: Style, panels: readonly Piece[]): WithSleeve {
  const asked = style.extras?.sleeve;
  const none = (issues: readonly Issue[]): WithSleeve => ({ sleeve: [], panels, issues });
  if (!asked || panels.length === 0) return none([]);
  const [front, back] = (['front', 'back'] as const).map((block) =>
    panels.find((panel) => panel.block === block && topBeside(panel) !== null),
  );
  if (!front || !back) return none([issue('sleeveNeedsTop', {}, { field: 'extras.sleeve.joined' })]);
  if (upperArm === null) return none([issue('sleeveNeedsArm', {}, { field: 'upperArm' })]);
  const width = upperArm + asked.ease + asked.gathered;
  const along = (panel: Piece): number =>
    Math.max(0, Math.min(asked.joined, width / 2, polylineLength(topBeside(panel)?.points ?? []) - CLEAR_MM));
  const made = cutSleeve(width, asked.depth, { front: along(front), back: along(back) }, style);
  return {
    sleeve: [made.piece],
    panels: panels.map((panel) =>
      panel === front || panel === back ? withMark(panel, along(panel)) : panel,
    ),
    issues: made.isValid
      ? []
      : [issue('cutLineUnsure', {}, { block: 'front', piece: identifyPiece('sleeve', 'front') })],
  };
}

/** The top edge that runs on from a panel's side seam; null for a panel without one, or with an armhole there. */
function topBeside(panel: Piece): Edge | null {
  if (!outerEdge(panel).isSideSeam) return null;
  const edge = panel.edges.find(({ at }) => at === 'top');
  return edge?.role === 'top' && !panel.edges.some(({ role }) => role === 'armhole') ? edge : null;
}

function withMark(panel: Piece, along: number): Piece {
  const edge = topBeside(panel);
  if (!edge || along === 0) return panel;
  const mark: Mark = {
    kind: 'balance',
    level: null,
    at: pointAlong(edge.points, along),
    edge: panel.edges.indexOf(edge),
  };
  return { ...panel, marks: [...panel.marks, mark] };
}

function cutSleeve(
  width: number,
  depth: number,
  joined: { readonly front: number; readonly back: number },
  { allowances }: Style,
): { piece: Piece; isValid: boolean } {
  const at = (x: number, y: number): Point => ({ x, y });
  const identity = identifyPiece('sleeve', 'front');
  const edges: Edge[] = [
    {
      ...freeEdge('inner', 'seam', allowances.seam, [at(0, 0), at(0, depth)]),
      mate: { piece: identity, edge: 2 },
    },
    freeEdge('hem', 'hem', allowances.hem, [at(0, depth), at(width, depth)]),
    {
      ...freeEdge('outer', 'seam', allowances.seam, [at(width, depth), at(width, 0)]),
      mate: { piece: identity, edge: 0 },
    },
    freeEdge('top', 'top', allowanceOf('top', allowances), [at(width, 0), at(0, 0)]),
  ];
  const ring = ringThrough(edges);
  const { line } = cutLineTurnedUp(edges);
  const mark = (x: number): Mark => ({ kind: 'balance', level: null, at: at(x, 0), edge: 3 });
  const piece: Piece = {
    ...identity,
    cut: { count: 2, onFold: false },
    edges,
    darts: [],
    cutLine: line ?? ring,
    grain: uprightInside(ring),
    marks: [joined.front, width - joined.back].filter((x) => x > 0 && x < width).map(mark),
  };
  return { piece, isValid: line !== null };
}
