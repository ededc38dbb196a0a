// Figures of a drafting sheet: the blocks side by side, front from its centre to the right, back from its centre to the left.

import { type Draft, type Piece, type Point, pointsDown, type Side, type SmoothLine } from '../../engine';
import type { HandFigure, HandLabel, HandLineKind } from './draftingStep';
import type { HandHeight } from './heights';

export interface Drawing {
  line(side: Side, kind: HandLineKind, points: readonly Point[]): void;
  /** A line of the block between two of these heights; without any nothing is drawn. */
  down(side: Side, kind: HandLineKind, line: SmoothLine, between: readonly HandHeight[]): void;
  spot(side: Side, point: Point): void;
  label(side: Side, text: string, point: Point, anchor: HandLabel['anchor']): void;
  done(): HandFigure;
}

/** Room round the blocks for labels, and between them; mm of the draft. */
const RIM_MM = 80;
const BETWEEN_MM = 60;
const HEAD_MM = 26;
const FOOT_MM = 8;

/** Of the centre line above the garment, where the shoulder level is left out. mm */
const ABOVE_MM = 25;

/**
 * A drawing of these blocks with their centre lines and every level across, from the shoulder level down or only from the
 * garment's upper end.
 */
export function startDrawing(
  draft: Draft,
  heights: readonly HandHeight[],
  sides: readonly Side[],
  fromShoulder = false,
): Drawing {
  const widths = { front: widthOf(draft, 'front'), back: widthOf(draft, 'back') };
  const widthMm =
    sides.reduce((sum, side) => sum + widths[side], (sides.length - 1) * BETWEEN_MM) + 2 * RIM_MM;
  const upper = fromShoulder ? 0 : Math.min(...heights.map(({ y }) => y)) - ABOVE_MM;
  const top = Math.min(upper, ...draft.pieces.map((piece) => extent(piece).top));
  const foot = Math.max(...heights.map(({ y }) => y), ...draft.pieces.map((piece) => extent(piece).foot));
  const place = (side: Side, { x, y }: Point): Point => ({
    x: side === 'front' ? RIM_MM + x : widthMm - RIM_MM - x,
    y: y - top + HEAD_MM,
  });
  const lines: { kind: HandLineKind; points: readonly Point[] }[] = [];
  const spots: Point[] = [];
  const labels: HandLabel[] = [];
  const drawing: Drawing = {
    line(side, kind, points) {
      lines.push({ kind, points: points.map((point) => place(side, point)) });
    },
    down(side, kind, line, between) {
      const [first, last] = [between[0], between[between.length - 1]];
      if (first && last) drawing.line(side, kind, pointsDown(line, first.y, last.y));
    },
    spot(side, point) {
      spots.push(place(side, point));
    },
    label(side, text, point, anchor) {
      const turned = { start: 'end', end: 'start', middle: 'middle' } as const;
      labels.push({ text, at: place(side, point), anchor: side === 'back' ? turned[anchor] : anchor });
    },
    done: () => ({ widthMm, heightMm: foot - top + HEAD_MM + FOOT_MM, lines, spots, labels }),
  };
  for (const side of sides) {
    if (fromShoulder)
      drawing.line(side, 'guide', [
        { x: 0, y: 0 },
        { x: widths[side], y: 0 },
      ]);
    drawing.line(side, 'done', [
      { x: 0, y: top },
      { x: 0, y: foot },
    ]);
    for (const { y, level } of heights)
      if (level !== null)
        drawing.line(side, 'guide', [
          { x: 0, y },
          { x: widths[side], y },
        ]);
  }
  return drawing;
}

function widthOf({ blocks, pieces }: Draft, side: Side): number {
  const own = pieces.filter((piece) => piece.block === side).map((piece) => extent(piece).right);
  return Math.max(100, ...(blocks?.[side].width.values() ?? []), ...own);
}

function extent({ edges }: Piece): { top: number; foot: number; right: number } {
  const points = edges.flatMap((edge) => edge.points);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { top: Math.min(...ys), foot: Math.max(...ys), right: Math.max(...xs) };
}
