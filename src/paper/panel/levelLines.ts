// Lines right across a panel for fitting: the levels, the centre line, and a cross at the bust point.

import { LEVEL_TITLES, PATTERN } from '../../document';
import {
  crossingsAt,
  type Draft,
  distance,
  isInside,
  type LevelName,
  type Piece,
  type Point,
  raisedPath,
  stopsAlong,
} from '../../engine';
import { placeAlong, placeNear, reachTo } from './edgeWalk';
import { foldOf } from './panelLines';
import { cross, type Stroke } from './strokes';
import { turnedLevel } from './turnedLevels';

/** Which lines run right across the panels: waist line, bust line and bust point, or all levels and the centre lines as well. */
export type LinesAcross = 'waistAndBust' | 'all';

/** A text that belongs to a point of a panel. */
export interface PanelLabel {
  readonly text: string;
  readonly at: Point;
}

interface Across {
  readonly lines: readonly Stroke[];
  readonly labels: readonly PanelLabel[];
}

const WAIST_AND_BUST: readonly LevelName[] = ['bust', 'waist'];

/** Half the length of an arm of the cross. mm */
const CROSS_MM = 6;

/** A bust point no farther outside a panel than this lies on its seam. mm */
const ON_SEAM_MM = 15;

/** The lines of one panel in the coordinates of its block, from cut line to cut line; none on what is no panel. */
export function levelLines(draft: Draft, piece: Piece, which: LinesAcross): Across {
  if (piece.kind !== 'panel' && piece.kind !== 'sidePanel') return { lines: [], labels: [] };
  const own = (piece.side && draft.halves?.[piece.side]) || draft;
  const sewn = piece.edges.flatMap(({ points }) => points.slice(0, -1));
  const levels = own.levels
    .filter(({ name }) => which === 'all' || WAIST_AND_BUST.includes(name))
    // A level that runs through the allowance only is no level of the garment.
    .filter(({ y }) => spansAt(sewn, y).length > 0);
  const across = levels.flatMap(({ name, y }) => {
    const turned = turnedOn(own, piece, name, y, isMirrored(sewn));
    if (turned) return turned.map((points) => ({ name, points }));
    const raised = raisedPath(own.raisedLevels, piece, name);
    if (!raised) return spansAt(piece.cutLine, y).map((points) => ({ name, points }));
    const stops = stopsAlong(piece, raised);
    return stops ? [{ name, points: throughout(stops, piece) }] : [];
  });
  const centres = which === 'all' ? piece.edges.filter((edge) => edge.role === 'centre') : [];
  const bustPoint = bustPointOn(own, piece, sewn);
  return {
    lines: [
      ...across.map(({ points }) => level(points)),
      ...centres
        .filter((edge) => edge !== foldOf(piece))
        .map((edge) => level(throughout(edge.points, piece))),
      ...(bustPoint ? cross(bustPoint, CROSS_MM) : []),
    ],
    labels: [
      ...across
        .filter(({ name }) => !piece.marks.some((mark) => mark.kind === 'balance' && mark.level === name))
        .flatMap(({ name, points }) => {
          const middle = placeAlong(points, 0.5);
          return middle ? [{ text: LEVEL_TITLES[name], at: middle.at }] : [];
        }),
      ...(bustPoint ? [{ text: PATTERN.panel.bustPoint, at: bustPoint }] : []),
    ],
  };
}

/** A level's parts on the front whose bust dart was turned into the side seam, its ends at the cut line; null on any other line. */
function turnedOn(
  draft: Draft,
  piece: Piece,
  name: LevelName,
  y: number,
  mirrored: boolean,
): Point[][] | null {
  if (!draft.turnedDart || piece.block !== 'front' || piece.number !== 1) return null;
  const parts = turnedLevel(draft, name, y)?.map((points) =>
    points.map((point) => (mirrored ? { x: -point.x, y: point.y } : point)),
  );
  if (!parts) return null;
  return parts.map((points, i) => {
    const [from, ...rest] = points as [Point, Point];
    const to = rest[0];
    return [
      ...(i === 0 ? [beyond(to, from, piece.cutLine)] : []),
      from,
      to,
      ...(i === parts.length - 1 ? [beyond(from, to, piece.cutLine)] : []),
    ];
  });
}

/** The right half lies mirrored on the paper where it is drafted by itself. */
const isMirrored = (outline: readonly Point[]): boolean => outline.reduce((sum, { x }) => sum + x, 0) < 0;

const level = (points: readonly Point[]): Stroke => ({ kind: 'level', points });

/** The parts of the line at height `y` that lie within a closed ring. */
function spansAt(ring: readonly Point[], y: number): [Point, Point][] {
  const [first] = ring;
  if (!first) return [];
  const xs = crossingsAt([...ring, first], y).sort((a, b) => a - b);
  return xs.flatMap((x, i): [Point, Point][] => {
    const end = xs[i + 1];
    return i % 2 === 0 && end !== undefined
      ? [
          [
            { x, y },
            { x: end, y },
          ],
        ]
      : [];
  });
}

/** A line lengthened at both ends as far as the cut line. */
function throughout(points: readonly Point[], { cutLine }: Piece): Point[] {
  const [first, second, before, last] = [points[0], points[1], points.at(-2), points.at(-1)];
  if (!first || !second || !before || !last) return [...points];
  return [beyond(second, first, cutLine), ...points, beyond(before, last, cutLine)];
}

function beyond(from: Point, end: Point, ring: readonly Point[]): Point {
  const length = distance(from, end);
  if (length === 0) return end;
  const direction = { x: (end.x - from.x) / length, y: (end.y - from.y) / length };
  const reach = reachTo(ring, end, direction) ?? 0;
  return { x: end.x + direction.x * reach, y: end.y + direction.y * reach };
}

/** The bust point where it lies on a front panel or on one of its seams; null elsewhere. */
function bustPointOn({ levels, blocks }: Draft, piece: Piece, outline: readonly Point[]): Point | null {
  const y = levels.find(({ name }) => name === 'bust')?.y;
  if (piece.block !== 'front' || !blocks || y === undefined) return null;
  const point = { x: isMirrored(outline) ? -blocks.front.bustLine : blocks.front.bustLine, y };
  if (isInside(outline, point)) return point;
  const near = placeNear([...outline, ...outline.slice(0, 1)], point)?.at;
  return near && distance(near, point) <= ON_SEAM_MM ? near : null;
}
