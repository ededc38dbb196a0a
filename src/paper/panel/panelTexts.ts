// What is written on a panel, and where: its title, the names of the levels, and what becomes of each edge.

import { LEVEL_TITLES, type LengthUnit, pieceLabel } from '../../document';
import { type DartLines, type Edge, type Piece, type Point, polylineLength, type Style } from '../../engine';
import { type Box, boxAround } from '../geometry/box';
import { shortened } from '../text/textWidth';
import { cleaned, settable } from '../text/writable';
import { edgeText } from './edgeText';
import { placeAlong } from './edgeWalk';
import { leaderTextInside } from './leaderText';
import { balanceMarkLine } from './panelLines';
import { isClear, isInside, type Room, roomAmong, touchesAny } from './room';
import type { PlacedText, Stroke } from './strokes';
import {
  boxOf,
  readable,
  setBlock,
  type TextBlock,
  type TextLine,
  type TurnedBox,
  textsOfBlock,
} from './textBlock';

export interface PanelNames {
  readonly client: string;
  readonly draft: string;
  readonly unit: LengthUnit;
  /** What was drafted: it says which edges close with a zip. */
  readonly style: Style;
  /** How many times as large as on paper letters are where there is room; 1 is for reading at arm's length. */
  readonly textScale: number;
  /** How much farther lines reach to either side than on paper, where they are drawn heavier. mm */
  readonly heavierMm: number;
}

/** Letters smaller than this are not read at arm's length. pt */
const LEAST_PT = 6;
/** Wider names are cut off with an ellipsis on the panels; the first page has more room. */
const MOST_NAME_MM = 75;
const NAME_PT = 8.5;
const QUARTER_TURN = Math.PI / 2;

/**
 * Texts of a panel in the coordinates of its block, and the lines that lead to texts that have no room where they belong.
 * Where there is room a text stays clear of every line, of every other text, and of `bands`, where sheets meet.
 */
export function panelTexts(
  piece: Piece,
  lines: readonly Stroke[],
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
  };
  const levels = levelTexts(panel);
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

interface PanelRoom {
  readonly piece: Piece;
  readonly room: Room;
  /** The sew line as a ring. */
  readonly sewn: readonly Point[];
  readonly bands: readonly Box[];
  /** Scales to try before the usual sizes, the largest first. */
  readonly larger: readonly number[];
  readonly heavierMm: number;
}

const largerThan = (textScale: number): number[] => (textScale > 1 ? [textScale, Math.sqrt(textScale)] : []);

interface Candidate {
  readonly block: TextBlock;
  readonly box: TurnedBox;
}

/** Nearer to a line a text seems to stand on it. mm */
const USUAL_CLEAR_MM = 1.3;

/** The first candidate with room, outside the bands and well clear of lines if any is, else with the least room; it is taken. */
function takeFirstClear(
  { room, bands, heavierMm }: PanelRoom,
  candidates: readonly Candidate[],
  leastMm: number,
): Candidate | null {
  const clear = (avoid: readonly Box[], clearMm: number): Candidate | undefined =>
    candidates.find(({ box }) => !touchesAny(box, avoid) && isClear(room, box, clearMm + heavierMm));
  const either = (avoid: readonly Box[]): Candidate | undefined =>
    (leastMm < USUAL_CLEAR_MM ? clear(avoid, USUAL_CLEAR_MM) : undefined) ?? clear(avoid, leastMm);
  const found = either(bands) ?? (bands.length > 0 ? either([]) : undefined);
  if (found) room.taken.push(found.box);
  return found ?? null;
}

// ── title ──

const SCALES = [1, 0.9, 0.8, 0.72];

/** Of the title from lines: what is wished, and the least. mm */
const TITLE_CLEAR_MM = [4, 2.5, 1.6];

function titleTexts(panel: PanelRoom, names: PanelNames): { texts: PlacedText[]; leaders: Stroke[] } {
  const { piece, sewn } = panel;
  const sided = piece.side === null ? '' : ', right side up';
  const cut = piece.cut.onFold ? `Cut ${piece.cut.count} on fold` : `Cut ${piece.cut.count}${sided}`;
  const lines: TextLine[] = [
    { text: pieceLabel(piece), sizePt: 16, bold: true },
    { text: cut, sizePt: 10.5, bold: true },
    { text: onPanel(names.client), sizePt: NAME_PT, bold: false },
    { text: onPanel(names.draft), sizePt: NAME_PT, bold: false },
  ].filter((line) => line.text !== '');
  const oneLine: TextLine[] = [{ text: lines.map((line) => line.text).join(' · '), sizePt: 9, bold: true }];
  // Smaller rather than close to a line, and close rather than turned.
  const upright = [...panel.larger, 1, 0.9, 0.8].map((scale) => ({
    block: setBlock(lines, scale),
    turnRad: 0,
  }));
  const turned = [
    ...SCALES.map((scale) => ({ block: setBlock(lines, scale), turnRad: -QUARTER_TURN })),
    ...[1, 0.85, LEAST_PT / 9].map((scale) => ({ block: setBlock(oneLine, scale), turnRad: -QUARTER_TURN })),
  ];
  const tries = [upright, turned].flatMap((blocks) =>
    TITLE_CLEAR_MM.flatMap((clearMm) => blocks.map((each) => ({ ...each, clearMm }))),
  );
  const box = boxAround(sewn);
  if (!box) return { texts: [], leaders: [] };
  for (const avoid of panel.bands.length > 0 ? [panel.bands, []] : [[]])
    for (const { block, turnRad, clearMm } of tries) {
      const candidates = spots(box, piece, block, turnRad)
        .filter((each) => isInside(each.box.centre, sewn))
        .filter((each) => !touchesAny(each.box, avoid));
      const found = takeFirstClear({ ...panel, bands: [] }, candidates, clearMm);
      if (found) return { texts: textsOfBlock(found.block, found.box), leaders: [] };
    }
  return leadOut(panel, oneLine);
}

const onPanel = (name: string): string => shortened(cleaned(name), NAME_PT, false, MOST_NAME_MM);

/** Places all over the panel, those beside the upper half of the grain line first. */
function spots(box: Box, { grain }: Piece, block: TextBlock, turnRad: number): Candidate[] {
  const upright = turnRad === 0;
  const [width, height] = upright ? [block.widthMm, block.heightMm] : [block.heightMm, block.widthMm];
  const bestY = upright ? box.top + 0.36 * (box.bottom - box.top) : (box.top + box.bottom) / 2;
  const found: { box: TurnedBox; cost: number }[] = [];
  for (let y = box.top + height / 2 + 3; y <= box.bottom - height / 2 - 3; y += 4)
    for (const side of [1, -1])
      for (const away of [3, 5, 8, 12]) {
        const x = grain[0].x + side * (away + width / 2);
        const cost = Math.abs(y - bestY) + Math.abs(away - 5) + (side < 0 ? 6 : 0);
        found.push({ box: boxOf(block, { x, y }, turnRad), cost });
      }
  return found.sort((a, b) => a.cost - b.cost).map((each) => ({ block, box: each.box }));
}

/** A title without room inside stands outside the cut line, with a line that leads to the grain line. */
function leadOut(
  { piece, room }: PanelRoom,
  oneLine: readonly TextLine[],
): { texts: PlacedText[]; leaders: Stroke[] } {
  const box = boxAround(piece.cutLine);
  if (!box) return { texts: [], leaders: [] };
  const block = setBlock(oneLine, LEAST_PT / 9);
  const x = box.right + 1 + block.heightMm / 2;
  const middle = { x: piece.grain[0].x, y: (piece.grain[0].y + piece.grain[1].y) / 2 };
  const placed = boxOf(block, { x, y: middle.y }, -QUARTER_TURN);
  const leader = [{ x: x - block.heightMm / 2 - 0.4, y: middle.y }, middle] as const;
  room.taken.push(placed);
  room.segments.push(leader);
  return { texts: textsOfBlock(block, placed), leaders: [{ kind: 'leader', points: leader }] };
}

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
    const markLine = mark.kind === 'balance' ? balanceMarkLine(mark, piece) : null;
    if (!markLine) return [];
    const inward = { x: -markLine.out.x, y: -markLine.out.y };
    const line = (sizePt: number): TextBlock =>
      setBlock([{ text: LEVEL_TITLES[mark.level], sizePt, bold: false }]);
    const candidates = sizesOn(panel).flatMap((sizePt) => {
      const block = line(sizePt);
      const beside = 1.4 + panel.heavierMm + block.widthMm / 2;
      const level = [0, -1, 1].map((step) => ({
        x: markLine.inner.x + Math.sign(inward.x) * beside,
        y: markLine.inner.y + step * (block.heightMm / 2 + 1),
      }));
      const upright = [-1, 1].map((step) => ({
        x: mark.at.x + inward.x * (1.2 + block.heightMm / 2),
        y: mark.at.y + step * (block.widthMm / 2 + 1.4),
      }));
      return [
        ...level.map((centre) => ({ block, box: boxOf(block, centre, 0) })),
        ...upright.map((centre) => ({ block, box: boxOf(block, centre, -QUARTER_TURN) })),
      ];
    });
    const found = takeFirstClear(panel, candidates, 0.7);
    return found ? textsOfBlock(found.block, found.box) : [];
  });
}

// ── darts ──

/** "Dart" between its legs where it is wide enough, beside it where it is not. */
function dartTexts(panel: PanelRoom, { inner, outer }: DartLines): PlacedText[] {
  const candidates = sizesOn(panel).flatMap((sizePt) => {
    const block = setBlock([{ text: 'Dart', sizePt, bold: false }]);
    return FRACTIONS.flatMap((fraction) => {
      const [a, b] = [placeAlong(inner, fraction)?.at, placeAlong(outer, fraction)?.at];
      if (!a || !b) return [];
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      const beside = Math.abs(a.x - b.x) / 2 + block.widthMm / 2 + 2 + panel.heavierMm;
      return [
        boxOf(block, middle, 0),
        boxOf(block, middle, -QUARTER_TURN),
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
  const at = (sizePt: number, away: (height: number) => number): Candidate[] => {
    const block = setBlock([{ text, sizePt, bold: false }]);
    if (block.widthMm > length) return [];
    return FRACTIONS.flatMap((fraction) => {
      const place = placeAlong(edge.points, fraction);
      if (!place) return [];
      const out = away(block.heightMm);
      const centre = { x: place.at.x + place.out.x * out, y: place.at.y + place.out.y * out };
      return [{ block, box: boxOf(block, centre, readable(Math.atan2(place.along.y, place.along.x))) }];
    });
  };
  const between = (): number => edge.allowance / 2;
  const inside = (height: number): number => -(height / 2 + 2.5 + panel.heavierMm);
  const outside = (height: number): number => edge.allowance + height / 2 + 1.4 + panel.heavierMm;
  const found =
    takeFirstClear(
      panel,
      sizesOn(panel).flatMap((sizePt) => at(sizePt, between)),
      0.6,
    ) ??
    takeFirstClear(panel, [...at(7.5, inside), ...at(LEAST_PT, inside)], 0.6) ??
    takeFirstClear(panel, [...at(7.5, outside), ...at(LEAST_PT, outside)], 0.4);
  if (found) return { texts: textsOfBlock(found.block, found.box), leaders: [] };
  const middle = placeAlong(edge.points, 0.5)?.at;
  const led =
    middle && leaderTextInside({ text, bold: false }, sizesOn(panel), middle, panel.sewn, panel.room);
  if (!led) return { texts: [], leaders: [] };
  panel.room.taken.push(led.box);
  panel.room.segments.push(led.points);
  return { texts: textsOfBlock(led.block, led.box), leaders: [led.leader] };
}
