// Pieces beside the panels: modesty panel and facings of a laced centre, and straps. Straight strips all, cut from their
// measures; ledger, seam walk and closed-up view know nothing of them.

import { cutLineAround } from '../geometry/cutLine';
import type { Point } from '../geometry/point';
import { distance } from '../geometry/point';
import { polylineLength } from '../geometry/polyline';
import { inches } from '../units';
import type { Edge, Mark, Piece } from './piece';
import type { Extras, Side, Style } from './types';

/** What is usual where a piece is first asked for, mm. Common practice, no source. */
export const USUAL_EXTRAS = {
  modesty: { overlap: inches(2) },
  facing: { width: inches(2) },
  straps: { length: inches(16), width: inches(1) },
} as const satisfies Required<Extras>;

/** Positions of the long edges of a strip; the first edge of a panel is its inner one as well. */
const [INNER, OUTER] = [0, 2];

/** What can be cut, mm. */
export const EXTRAS_SPANS = {
  'modesty.overlap': [0, 150],
  'facing.width': [10, 200],
  'straps.length': [50, 1500],
  'straps.width': [5, 150],
} as const;

/**
 * The pieces that `style.extras` asks for, from front to back. Modesty panel and facings are as long as the finished laced
 * edge they lie behind, with its balance marks; there is none where that edge is not laced or its panel was not made.
 * x runs from the left edge of each strip, y as on its block. A strap begins at the shoulder level.
 */
export function extraPieces(style: Style, laced: readonly Side[], pieces: readonly Piece[]): Piece[] {
  const { modesty, facing, straps } = style.extras ?? {};
  const { seam, top, hem, centre } = style.allowances;
  const behind = laced.flatMap((side): Strip[] => {
    const panel = pieces.find((piece) => piece.block === side && piece.number === 1);
    const edge = panel?.edges[INNER];
    if (!panel || edge?.role !== 'centre') return [];
    const strip = (id: string, width: number, count: number, inner: Strip['inner']): Strip => ({
      id,
      block: side,
      width,
      count,
      top: (edge.points[0] as Point).y,
      length: polylineLength(edge.points),
      inner,
      outer: { role: 'seam', allowance: seam },
      ends: [
        { role: 'top', allowance: top },
        { role: 'hem', allowance: hem },
      ],
      marks: marksAlong(panel, edge),
    });
    const gap = style.closure.lacingGap;
    return [
      ...(modesty
        ? [strip(`${side}-modesty`, gap + 2 * modesty.overlap, 1, { role: 'seam', allowance: seam })]
        : []),
      ...(facing ? [strip(`${side}-facing`, facing.width, 2, { role: 'centre', allowance: centre })] : []),
    ];
  });
  const sewn = { role: 'seam', allowance: seam } as const;
  const strap: Strip[] = straps
    ? [
        {
          id: 'strap',
          block: 'front',
          // Doubled: folded along its middle.
          width: 2 * straps.width,
          count: 2,
          top: 0,
          length: straps.length,
          inner: sewn,
          outer: sewn,
          ends: [sewn, sewn],
          marks: [],
        },
      ]
    : [];
  return [...behind, ...strap].filter(({ width, length }) => width > 0 && length > 0).map(cutStrip);
}

interface StripEdge {
  readonly role: Edge['role'];
  readonly allowance: number;
}

/** A rectangle to be cut, mm. */
interface Strip {
  readonly id: string;
  readonly block: Side;
  readonly width: number;
  readonly count: number;
  readonly top: number;
  readonly length: number;
  readonly inner: StripEdge;
  readonly outer: StripEdge;
  /** Upper and lower end. */
  readonly ends: readonly [StripEdge, StripEdge];
  /** Levels by their distance from the upper end. */
  readonly marks: readonly { readonly level: Mark['level']; readonly along: number }[];
}

function cutStrip(strip: Strip): Piece {
  const { width, top, length, inner, outer, ends } = strip;
  const corner = (x: number, y: number): Point => ({ x, y: top + y });
  const [a, b, c, d] = [corner(0, 0), corner(0, length), corner(width, length), corner(width, 0)];
  const edge = ({ role, allowance }: StripEdge, ...points: Point[]): Edge => ({
    role,
    side: false,
    mate: null,
    allowance,
    points,
  });
  const edges = [edge(inner, a, b), edge(ends[1], b, c), edge(outer, c, d), edge(ends[0], d, a)];
  const marks = strip.marks.flatMap(({ level, along }) =>
    [INNER, OUTER].map(
      (at): Mark => ({ kind: 'balance', level, at: corner(at === INNER ? 0 : width, along), edge: at }),
    ),
  );
  return {
    id: strip.id,
    block: strip.block,
    number: 0,
    cut: { count: strip.count, onFold: false },
    edges,
    outer: OUTER,
    darts: [],
    // A rectangle always has a cut line; its ring is the outline itself where nothing is allowed.
    cutLine: cutLineAround(edges) ?? [a, b, c, d],
    grain: [corner(width / 2, length * 0.12), corner(width / 2, length * 0.88)],
    marks,
  };
}

/** Balance marks of the centre edge by their distance along it from its upper end. */
function marksAlong(panel: Piece, edge: Edge): Strip['marks'] {
  return panel.marks
    .filter((mark) => mark.kind === 'balance' && mark.edge === INNER)
    .map(({ level, at }) => {
      const above = edge.points.filter(({ y }) => y < at.y);
      const last = above.at(-1);
      return { level, along: polylineLength(above) + (last ? distance(last, at) : 0) };
    });
}

type NumberCheck = (field: string, value: unknown, least: number, most: number) => void;

/** Checks what came in as `extras`; one that is not asked for is no fault. */
export function checkExtras(given: unknown, number: NumberCheck): void {
  const part = (of: unknown, name: string): unknown =>
    typeof of === 'object' && of !== null ? (of as Readonly<Record<string, unknown>>)[name] : undefined;
  for (const [path, [least, most]] of Object.entries(EXTRAS_SPANS)) {
    const [name, field] = path.split('.') as [string, string];
    const asked = part(given, name);
    if (asked !== undefined) number(`extras.${path}`, part(asked, field), least, most);
  }
}
