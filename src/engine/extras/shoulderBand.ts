// The off-shoulder band: what lies above the strapless top edge of a shouldered block, one piece a block, cut with its wedges
// sewn up.

import { armholeCurve, necklineCurve, type ShoulderFrame } from '../block/shoulderFrame';
import { crossingAt, type DraftedEdge } from '../edges/edgeLine';
import { type EdgeEnd, edgePoints } from '../edges/edgePoints';
import { cutLineAround } from '../geometry/cutLine';
import type { Point } from '../geometry/point';
import { pointsAlong } from '../geometry/polyline';
import type { TruedSeam } from '../panels/truing';
import { edgeIndex } from '../pieces/edgeLookup';
import type { Edge, EdgePlace, Mark, Piece } from '../pieces/piece';
import { pointsThrough } from '../pieces/shoulderLines';
import { allowanceOf } from '../style/allowanceOf';
import type { Style } from '../style/style';
import { identifyPiece, identityOf } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { freeEdge } from './freeEdge';

/** The edge sewn to the panels' top, and the shoulder. */
const LOWER: EdgePlace = { at: 'hem' };
const SHOULDER: EdgePlace = { at: 'top', shoulder: 'whole' };

/**
 * Front and back band, and a blocking issue for one whose cut line could not be made. The lower edge is the top edge as drafted, with a mark where each seam of the panels meets it.
 *
 * @param seams the panels' seams, in sewing order
 */
export function shoulderBands(
  frames: Readonly<Record<BlockName, ShoulderFrame>>,
  top: DraftedEdge,
  seams: readonly TruedSeam[],
  style: Style,
  onFold: Readonly<Record<BlockName, boolean>>,
): { pieces: Piece[]; issues: Issue[] } {
  const above = style.shoulders?.bandAbove;
  if (above === undefined) return { pieces: [], issues: [] };
  const bands = (['front', 'back'] as const).map((block) =>
    cutBand(block, frames[block], top, seams, style, onFold[block], above),
  );
  return {
    pieces: withShouldersMated(bands.map(({ piece }) => piece)),
    issues: bands
      .filter(({ isValid }) => !isValid)
      .map(({ piece }) => issue('cutLineUnsure', {}, { block: piece.block, piece: identityOf(piece) })),
  };
}

function cutBand(
  block: BlockName,
  frame: ShoulderFrame,
  top: DraftedEdge,
  seams: readonly TruedSeam[],
  { allowances }: Style,
  onFold: boolean,
  above: number,
): { piece: Piece; isValid: boolean } {
  const line = top.lines[block];
  const width = line.at(-1)?.ys.at(-1) ?? 0;
  const end = (sewnDistance: number, way: 'before' | 'after'): EdgeEnd => {
    const crossing = crossingAt(line, sewnDistance);
    return { point: { x: sewnDistance, y: crossing.y }, slope: crossing[way], sewnDistance };
  };
  const [centre, underarm] = [end(0, 'after'), end(width, 'before')];
  const neckStart: Point = { x: 0, y: centre.point.y - above };
  const { neck, tip, angle } = frame;
  const neckline = pointsAlong(necklineCurve({ point: neckStart, angle: 0 }, neck, angle));
  // Level with the lower edge it would end in a sliver that cannot be sewn; it comes down at half a right angle.
  const inward = { x: frame.inward, y: (tip.y + underarm.point.y) / 2 };
  const armhole = pointsThrough(armholeCurve(block, { point: tip, angle }, inward, underarm.point, 1));
  const edges: Edge[] = [
    freeEdge('inner', 'centre', onFold ? 0 : allowances.centre, [neckStart, centre.point]),
    freeEdge('hem', 'seam', allowances.seam, edgePoints(line, centre, underarm)),
    freeEdge('outer', 'armhole', allowanceOf('armhole', allowances), [...armhole].reverse()),
    {
      ...freeEdge('top', 'shoulder', allowances.seam, [tip, neck]),
      ...SHOULDER,
      ...(frame.ease > 0 ? { ease: frame.ease } : {}),
    },
    freeEdge('top', 'top', allowanceOf('neckline', allowances), [...neckline].reverse()),
  ];
  const cutLine = cutLineAround(edges.map((edge) => (edge.role === 'centre' ? { ...edge, onFold } : edge)));
  const middle = (neck.x + tip.x) / 2;
  const piece: Piece = {
    ...identifyPiece('band', block),
    cut: { count: onFold ? 1 : 2, onFold },
    edges,
    darts: [],
    cutLine: cutLine ?? edges.flatMap(({ points }) => points.slice(0, -1)),
    grain: [
      { x: middle, y: (neck.y + tip.y) / 2 + CLEAR_MM },
      { x: middle, y: crossingAt(line, middle).y - CLEAR_MM },
    ],
    marks: seamMarks(block, top, seams, edgeIndex(edges, LOWER)),
  };
  return { piece, isValid: cutLine !== null };
}

const CLEAR_MM = 12;

/** The bands with their shoulders sewn to each other's. */
function withShouldersMated(bands: readonly Piece[]): Piece[] {
  const shoulders = bands.map((band) => ({
    piece: identityOf(band),
    edge: edgeIndex(band.edges, SHOULDER),
  }));
  return bands.map((band) => {
    const mate = shoulders.find(({ piece }) => piece.id !== band.id) ?? null;
    return { ...band, edges: band.edges.map((edge) => (edge.shoulder ? { ...edge, mate } : edge)) };
  });
}

/**
 * A mark on the lower edge for each seam of the block's panels.
 *
 * @param edge index of the lower edge
 */
function seamMarks(block: BlockName, top: DraftedEdge, seams: readonly TruedSeam[], edge: number): Mark[] {
  return seams
    .filter(({ seam }) => seam.identity.kind === 'wedge' && seam.a.drafted.block === block)
    .map(({ seam, edges }): Mark => {
      // A joined side panel counts the back from centre front.
      const sewnDistance =
        seam.a.panel.kind === 'sidePanel' && block === 'back'
          ? edges.top.sewnDistanceB
          : edges.top.sewnDistanceA;
      return {
        kind: 'balance',
        level: 'overBust',
        at: { x: sewnDistance, y: crossingAt(top.lines[block], sewnDistance).y },
        edge,
      };
    });
}
