// The off-shoulder band: what lies above the strapless top edge of a shouldered block, one piece a block, cut with its wedges
// sewn up.

import { necklineCurve, type ShoulderFrame } from '../block/shoulders/shoulderFrame';
import { crossingAt, type DraftedEdge, type EdgeLine } from '../edges/edgeLine';
import { type EdgeEnd, edgePoints } from '../edges/edgePoints';
import { first, last } from '../geometry/lists';
import { cutLineAround } from '../geometry/offset/cutLine';
import type { Point } from '../geometry/point';
import { pointsAlong, polylineLength, ringThrough } from '../geometry/polyline';
import type { TruedSeam } from '../panels/truing';
import { edgeIndex, edgesLength } from '../pieces/edgeLookup';
import type { Edge, EdgePlace, Mark, Piece } from '../pieces/piece';
import { pointsThrough } from '../pieces/shoulderLines';
import { allowanceOf } from '../style/allowanceOf';
import type { Style } from '../style/style';
import { identifyPiece, identityOf } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { bandArmhole } from './bandArmhole';
import { lowerParts, meetingMarks, type TopEdge, topsOf } from './bandParts';
import { freeEdge } from './freeEdge';

/** The edge sewn to the panels' top, and the shoulder. */
const LOWER: EdgePlace = { at: 'hem' };
const SHOULDER: EdgePlace = { at: 'top', shoulder: 'whole' };

/**
 * Front and back band, and a blocking issue for one whose cut line could not be made. The lower edge is the top edge as drafted,
 * drawn together or apart across so that each band is as long as the top edges of its panels, with a mark where each seam of the
 * panels meets it.
 *
 * @param seams the panels' seams, in sewing order
 * @param panels the panels of one half
 */
export function shoulderBands(
  frames: Readonly<Record<BlockName, ShoulderFrame>>,
  top: DraftedEdge,
  seams: readonly TruedSeam[],
  style: Style,
  onFold: Readonly<Record<BlockName, boolean>>,
  panels: readonly Piece[],
): { pieces: Piece[]; issues: Issue[] } {
  const above = style.shoulders?.bandAbove;
  if (above === undefined) return { pieces: [], issues: [] };
  const drafted = (['front', 'back'] as const).map((block) => ({
    block,
    lower: lowerEdge(top.lines[block]),
  }));
  // A side panel cut in one lies under both bands, which are then drawn by one scale.
  const lowers = drafted.map(({ lower }) => lower);
  const isJoined = panels.some(({ kind }) => kind === 'sidePanel');
  const common = isJoined ? scaleToLength(lowers, edgesLength(panels, 'top')) : null;
  const bands = drafted.map(({ block, lower }) => {
    const own = panels.filter((panel) => panel.block === block);
    const scale = common ?? scaleToLength([lower], edgesLength(own, 'top'));
    const tops = isJoined ? [] : topsOf(own);
    return cutBand(block, frames[block], { top, lower, scale, tops }, seams, style, onFold[block], above);
  });
  return {
    pieces: withShouldersMated(bands.map(({ piece }) => piece)),
    issues: bands
      .filter(({ isValid }) => !isValid)
      .map(({ piece }) => issue('cutLineUnsure', {}, { block: piece.block, piece: identityOf(piece) })),
  };
}

/** The top edge of one block as drafted, from the centre to the underarm, wedges sewn up. */
function lowerEdge(line: EdgeLine): Point[] {
  const width = line.at(-1)?.ys.at(-1) ?? 0;
  const end = (sewnDistance: number, way: 'before' | 'after'): EdgeEnd => {
    const crossing = crossingAt(line, sewnDistance);
    return { point: { x: sewnDistance, y: crossing.y }, slope: crossing[way], sewnDistance };
  };
  return edgePoints(line, end(0, 'after'), end(width, 'before'));
}

const scaledAcross = (points: readonly Point[], scale: number): Point[] =>
  points.map(({ x, y }) => ({ x: scale * x, y }));

/** Rounds of the fixed-point iteration below; each leaves a small part of what the one before left. */
const SCALE_ROUNDS = 6;

/** By how much lines are drawn together or apart across so that they are `length` mm long together. */
function scaleToLength(lines: readonly (readonly Point[])[], length: number): number {
  let scale = 1;
  for (let round = 0; round < SCALE_ROUNDS && length > 0; round += 1)
    scale *= length / lines.reduce((sum, line) => sum + polylineLength(scaledAcross(line, scale)), 0);
  return scale;
}

interface LowerEdge {
  readonly top: DraftedEdge;
  readonly lower: readonly Point[];
  readonly scale: number;
  /** The panels' top edges that it is sewn to, from the centre; none where they cannot be told apart by block. */
  readonly tops: readonly TopEdge[];
}

function cutBand(
  block: BlockName,
  frame: ShoulderFrame,
  { top, lower, scale, tops }: LowerEdge,
  seams: readonly TruedSeam[],
  { allowances }: Style,
  onFold: boolean,
  above: number,
): { piece: Piece; isValid: boolean } {
  const line = top.lines[block];
  const sewn = scaledAcross(lower, scale);
  const [centre, underarm] = [first(sewn), last(sewn)];
  const neckStart: Point = { x: 0, y: centre.y - above };
  const { neck, tip, angle } = frame;
  const neckline = pointsAlong(necklineCurve({ point: neckStart, angle: 0 }, neck, angle));
  const armhole = pointsThrough(bandArmhole({ point: tip, angle }, frame.inward, underarm));
  const edges: Edge[] = [
    freeEdge('inner', 'centre', onFold ? 0 : allowances.centre, [neckStart, centre]),
    ...lowerParts(sewn, tops).map(({ points, mate }) => ({
      ...freeEdge('hem', 'seam', allowances.seam, points),
      mate,
    })),
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
    cutLine: cutLine ?? ringThrough(edges),
    grain: [
      { x: middle, y: (neck.y + tip.y) / 2 + CLEAR_MM },
      { x: middle, y: crossingAt(line, middle / scale).y - CLEAR_MM },
    ],
    marks:
      tops.length > 0 ? meetingMarks(edges) : seamMarks(block, top, seams, scale, edgeIndex(edges, LOWER)),
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
function seamMarks(
  block: BlockName,
  top: DraftedEdge,
  seams: readonly TruedSeam[],
  scale: number,
  edge: number,
): Mark[] {
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
        level: null,
        at: { x: scale * sewnDistance, y: crossingAt(top.lines[block], sewnDistance).y },
        edge,
      };
    });
}
