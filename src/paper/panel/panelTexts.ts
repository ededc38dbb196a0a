// Places the texts on a panel: its title, the names of the levels, the darts and a text for each edge.

import { LEVEL_TITLES, PATTERN } from '../../document';
import { type DartLines, type Edge, type Piece, polylineLength } from '../../engine';
import type { Box } from '../geometry/box';
import { settable } from '../text/writable';
import { edgeText } from './edgeText';
import { placeAlong } from './edgeWalk';
import { leaderTextInside } from './leaderText';
import type { PanelLabel } from './levelLines';
import { BRACKET_MM, balanceMarkLine, foldOf } from './panelLines';
import {
  type Candidate,
  LEAST_PT,
  type PanelNames,
  type PanelRoom,
  readableOn,
  sideways,
  takeFirstClear,
} from './panelRoom';
import { titleTexts } from './panelTitle';
import { roomAmong } from './room';
import type { PlacedText, Stroke } from './strokes';
import { boxOf, setBlock, type TextBlock, textsOfBlock } from './textBlock';

/**
 * Texts of a panel in the coordinates of its block, and leaders to texts that have no room where they belong. Where there is room
 * a text stays clear of every line, every other text, and `bands`, where sheets overlap.
 */
export function panelTexts(
  piece: Piece,
  lines: readonly Stroke[],
  labels: readonly PanelLabel[],
  names: PanelNames,
  bands: readonly Box[],
): { texts: PlacedText[]; leaders: Stroke[] } {
  const room = roomAmong(lines);
  const sewn = piece.edges.flatMap((edge) => edge.points.slice(0, -1));
  const panel: PanelRoom = {
    piece,
    room,
    sewn,
    bands,
    larger: largerThan(names.textScale),
    heavierMm: names.heavierMm,
    isSideways: names.isSideways ?? false,
  };
  const levels = [...levelTexts(panel), ...labels.flatMap((label) => labelTexts(panel, label))];
  const title = titleTexts(panel, names);
  const edges = piece.edges
    .filter((edge) => edge.dart === undefined)
    .map((edge) => edgeTexts(panel, edge, names));
  return {
    texts: [
      ...title.texts,
      ...levels,
      ...piece.darts.flatMap((dart) => dartTexts(panel, dart)),
      ...edges.flatMap(({ texts }) => texts),
    ],
    leaders: [...title.leaders, ...edges.flatMap(({ leaders }) => leaders)],
  };
}

const largerThan = (textScale: number): number[] => (textScale > 1 ? [textScale, Math.sqrt(textScale)] : []);

const sizesOn = ({ larger }: PanelRoom): number[] => [
  ...larger.map((scale) => 7.5 * scale),
  7.5,
  6.75,
  LEAST_PT,
];

// ── levels ──

function levelTexts(panel: PanelRoom): PlacedText[] {
  const { piece } = panel;
  return piece.marks.flatMap((mark) => {
    const { level: named } = mark;
    const markLine = mark.kind === 'balance' ? balanceMarkLine(mark, piece) : null;
    if (!markLine || named === null) return [];
    const inward = { x: -markLine.out.x, y: -markLine.out.y };
    const line = (sizePt: number): TextBlock =>
      setBlock([{ text: LEVEL_TITLES[named], sizePt, bold: false }]);
    const candidates = sizesOn(panel).flatMap((sizePt) => {
      const block = line(sizePt);
      const beside = 1.4 + panel.heavierMm + block.widthMm / 2;
      const level = BEYOND_MM.flatMap((beyond) =>
        [0, -1, 1].map((step) => ({
          x: markLine.inner.x + Math.sign(inward.x) * (beside + beyond),
          y: markLine.inner.y + step * (block.heightMm / 2 + 1),
        })),
      );
      const upright = [-1, 1].map((step) => ({
        x: mark.at.x + inward.x * (1.2 + block.heightMm / 2),
        y: mark.at.y + step * (block.widthMm / 2 + 1.4),
      }));
      return [
        ...level.map((centre) => ({ block, box: boxOf(block, centre, 0) })),
        ...upright.map((centre) => ({ block, box: boxOf(block, centre, sideways(panel)) })),
      ];
    });
    const found = takeFirstClear(panel, candidates, 0.7);
    return found ? textsOfBlock(found.block, found.box) : [];
  });
}

/** How much farther in a level's name stands where the channel of a bone is in its way. mm */
const BEYOND_MM = [0, 3, 6];

/** The name of a point or line, beside it. */
function labelTexts(panel: PanelRoom, { text, at }: PanelLabel): PlacedText[] {
  const candidates = sizesOn(panel).flatMap((sizePt): Candidate[] => {
    const block = setBlock([{ text, sizePt, bold: false }]);
    const [across, down] = [block.widthMm / 2, block.heightMm / 2 + 1.2 + panel.heavierMm];
    return [
      [across + 7, -down],
      [-across - 7, -down],
      [across + 7, down],
      [-across - 7, down],
      [0, -down - 6],
      [0, down + 6],
    ].map(([dx = 0, dy = 0]) => ({ block, box: boxOf(block, { x: at.x + dx, y: at.y + dy }, 0) }));
  });
  const found = takeFirstClear(panel, candidates, 0.6);
  return found ? textsOfBlock(found.block, found.box) : [];
}

// ── darts ──

/** "Dart" between the legs where they are far enough apart, beside them elsewhere. */
function dartTexts(panel: PanelRoom, { inner, outer }: DartLines): PlacedText[] {
  const candidates = sizesOn(panel).flatMap((sizePt) => {
    const block = setBlock([{ text: PATTERN.panel.dart, sizePt, bold: false }]);
    return FRACTIONS.flatMap((fraction) => {
      const [a, b] = [placeAlong(inner, fraction)?.at, placeAlong(outer, fraction)?.at];
      if (!a || !b) return [];
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      const beside = Math.abs(a.x - b.x) / 2 + block.widthMm / 2 + 2 + panel.heavierMm;
      return [
        boxOf(block, middle, 0),
        boxOf(block, middle, sideways(panel)),
        boxOf(block, { x: middle.x - beside, y: middle.y }, 0),
        boxOf(block, { x: middle.x + beside, y: middle.y }, 0),
      ].map((box, rank) => ({ block, box, rank }));
    });
  });
  const found = takeFirstClear(
    panel,
    candidates.sort((a, b) => b.block.heightMm - a.block.heightMm || a.rank - b.rank),
    0.7,
  );
  return found ? textsOfBlock(found.block, found.box) : [];
}

// ── edges ──

const FRACTIONS = [
  0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9,
];

function edgeTexts(
  panel: PanelRoom,
  edge: Edge,
  { unit, style }: PanelNames,
): { texts: PlacedText[]; leaders: Stroke[] } {
  const text = settable(edgeText(panel.piece, edge, unit, style));
  const length = polylineLength(edge.points);
  const places = FRACTIONS.flatMap((fraction) => placeAlong(edge.points, fraction) ?? []);
  const at = (sizePt: number, away: (height: number) => number): Candidate[] => {
    const block = setBlock([{ text, sizePt, bold: false }]);
    if (block.widthMm > length) return [];
    const far = away(block.heightMm);
    return places.map(({ at, out, along }) => {
      const centre = { x: at.x + out.x * far, y: at.y + out.y * far };
      return { block, box: boxOf(block, centre, readableOn(panel, Math.atan2(along.y, along.x))) };
    });
  };
  const between = (): number => edge.allowance / 2;
  const inside = (height: number): number => -(height / 2 + 2.5 + panel.heavierMm);
  // Past the bracket, where a channel or an arm of the bracket is in the way beside the fold: outside is not part of the panel.
  const pastBracket = (height: number): number => -(BRACKET_MM + height / 2 + 1.4 + panel.heavierMm);
  const isFold = edge === foldOf(panel.piece);
  const outside = (height: number): number => edge.allowance + height / 2 + 1.4 + panel.heavierMm;
  const found =
    takeFirstClear(
      panel,
      sizesOn(panel).flatMap((sizePt) => at(sizePt, between)),
      0.6,
    ) ??
    takeFirstClear(panel, [...at(7.5, inside), ...at(LEAST_PT, inside)], 0.6) ??
    (isFold ? takeFirstClear(panel, [...at(7.5, pastBracket), ...at(LEAST_PT, pastBracket)], 0.6) : null) ??
    takeFirstClear(panel, [...at(7.5, outside), ...at(LEAST_PT, outside)], 0.4);
  if (found) return { texts: textsOfBlock(found.block, found.box), leaders: [] };
  const middle = placeAlong(edge.points, 0.5)?.at;
  const led =
    middle &&
    leaderTextInside({ text, bold: false }, sizesOn(panel), sideways(panel), middle, panel.sewn, panel.room);
  if (!led) return { texts: [], leaders: [] };
  panel.room.taken.push(led.box);
  panel.room.segments.push(led.points);
  return { texts: textsOfBlock(led.block, led.box), leaders: [led.leader] };
}
