// The off-shoulder band: what lies above the strapless top edge of a shouldered block, one piece a block, cut with its wedges
// sewn up.

import type { ShoulderFrame } from '../block/shoulders';
import { crossingAt, type DraftedEdge } from '../edges/edgeLine';
import { type EdgeEnd, edgePoints } from '../edges/edgePoints';
import { cutLineAround } from '../geometry/cutLine';
import type { Point } from '../geometry/point';
import type { TruedSeam } from '../panels/truing';
import type { Edge, Mark, Piece } from '../pieces/piece';
import { armholeRow, necklineRow } from '../pieces/shoulderLines';
import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { Side } from '../terms/names';
import { freeEdge } from './freeEdge';

/** Positions of a band's edges: centre, the edge sewn to the panels' top, armhole, shoulder, neckline. */
const [LOWER, ARMHOLE, SHOULDER] = [1, 2, 3];

/**
 * Front and back band, and a blocking issue for one whose cut line could not be made. The lower edge is the top edge as drafted, with a mark where each seam of the panels meets it.
 *
 * @param seams the panels' seams, in sewing order
 */
export function shoulderBands(
  frames: Readonly<Record<Side, ShoulderFrame>>,
  top: DraftedEdge,
  seams: readonly TruedSeam[],
  style: Style,
  onFold: Readonly<Record<Side, boolean>>,
): { pieces: Piece[]; issues: Issue[] } {
  const above = style.shoulders?.bandAbove;
  if (above === undefined) return { pieces: [], issues: [] };
  const bands = (['front', 'back'] as const).map((side) =>
    cutBand(side, frames[side], top, seams, style, onFold[side], above),
  );
  return {
    pieces: bands.map(({ piece }) => piece),
    issues: bands
      .filter(({ sure }) => !sure)
      .map(({ piece }) => issue('cutLineUnsure', 'block', { block: piece.block, piece: piece.id })),
  };
}

function cutBand(
  side: Side,
  frame: ShoulderFrame,
  top: DraftedEdge,
  seams: readonly TruedSeam[],
  { allowances }: Style,
  onFold: boolean,
  above: number,
): { piece: Piece; sure: boolean } {
  const line = top.lines[side];
  const width = line.at(-1)?.ys.at(-1) ?? 0;
  const end = (closed: number, way: 'before' | 'after'): EdgeEnd => {
    const crossing = crossingAt(line, closed);
    return { point: { x: closed, y: crossing.y }, slope: crossing[way], closed };
  };
  const [centre, underarm] = [end(0, 'after'), end(width, 'before')];
  const neckStart: Point = { x: 0, y: centre.point.y - above };
  const neckline = necklineRow({ point: neckStart, slope: 0, closed: 0 }, frame.neck, frame.slope);
  // Level with the lower edge it would end in a sliver that cannot be sewn; it comes down at half a right angle.
  const armhole = armholeRow(frame.tip, frame, frame.slope, { ...underarm, slope: 1 });
  const other = side === 'front' ? 'back' : 'front';
  const edges: Edge[] = [
    freeEdge('centre', onFold ? 0 : allowances.centre, [neckStart, centre.point]),
    freeEdge('seam', allowances.seam, edgePoints(line, centre, underarm)),
    freeEdge('armhole', allowances.top, [...armhole.points].reverse()),
    {
      ...freeEdge('shoulder', allowances.seam, [frame.tip, frame.neck]),
      mate: { piece: `${other}-band`, edge: SHOULDER },
    },
    freeEdge('top', allowances.top, [...neckline.points].reverse()),
  ];
  const cutLine = cutLineAround(edges);
  const middle = (frame.neck.x + frame.tip.x) / 2;
  const piece: Piece = {
    id: `${side}-band`,
    block: side,
    number: 0,
    cut: { count: onFold ? 1 : 2, onFold },
    edges,
    outer: ARMHOLE,
    darts: [],
    cutLine: cutLine ?? edges.flatMap(({ points }) => points.slice(0, -1)),
    grain: [
      { x: middle, y: frame.middle.y + CLEAR_MM },
      { x: middle, y: crossingAt(line, middle).y - CLEAR_MM },
    ],
    marks: seamMarks(side, top, seams),
  };
  return { piece, sure: cutLine !== null };
}

const CLEAR_MM = 12;

/** A mark on the lower edge for each seam of the block's panels. */
function seamMarks(side: Side, top: DraftedEdge, seams: readonly TruedSeam[]): Mark[] {
  return seams
    .filter(({ seam }) => seam.kind === 'wedge' && seam.a.drafted.side === side)
    .map(({ seam, edges }): Mark => {
      // A joined side panel counts the back from centre front.
      const closed = seam.a.panel.joined && side === 'back' ? edges.top.closedB : edges.top.closedA;
      return {
        kind: 'balance',
        level: 'overBust',
        at: { x: closed, y: crossingAt(top.lines[side], closed).y },
        edge: LOWER,
      };
    });
}
