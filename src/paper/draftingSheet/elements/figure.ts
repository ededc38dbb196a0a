// Figures of a drafting sheet. The blocks are side by side: the front from its centre to the right, the back to the left.

import {
  type BlockName,
  type Draft,
  type Piece,
  type Point,
  pointsDown,
  type SmoothLine,
} from '../../../engine';
import type { DraftingFigure, FigureLabel, FigureLineKind } from './draftingStep';
import type { DraftingHeight } from './heights';

export interface Drawing {
  line(block: BlockName, kind: FigureLineKind, points: readonly Point[]): void;
  /** Draws a line of the block from the first to the last of these heights; nothing where there are none. */
  down(block: BlockName, kind: FigureLineKind, line: SmoothLine, between: readonly DraftingHeight[]): void;
  spot(block: BlockName, point: Point): void;
  label(block: BlockName, text: string, point: Point, anchor: FigureLabel['anchor']): void;
  done(): DraftingFigure;
}

/** Margins around the blocks for labels, and the gap between them; mm of the draft. */
const RIM_MM = 80;
const BETWEEN_MM = 60;
const HEAD_MM = 26;
const FOOT_MM = 8;

/** Length of the centre line above the garment where the shoulder level is left out. mm */
const ABOVE_MM = 25;

/**
 * Begins a drawing of these blocks with their centre lines and levels, from the shoulder level or from just above the garment's
 * upper end.
 */
export function startDrawing(
  draft: Draft,
  heights: readonly DraftingHeight[],
  blocks: readonly BlockName[],
  fromShoulder = false,
): Drawing {
  const widths = { front: widthOf(draft, 'front'), back: widthOf(draft, 'back') };
  const widthMm =
    blocks.reduce((sum, block) => sum + widths[block], (blocks.length - 1) * BETWEEN_MM) + 2 * RIM_MM;
  const upper = fromShoulder ? 0 : Math.min(...heights.map(({ y }) => y)) - ABOVE_MM;
  const top = Math.min(upper, ...draft.pieces.map((piece) => extent(piece).top));
  const foot = Math.max(...heights.map(({ y }) => y), ...draft.pieces.map((piece) => extent(piece).foot));
  const place = (block: BlockName, { x, y }: Point): Point => ({
    x: block === 'front' ? RIM_MM + x : widthMm - RIM_MM - x,
    y: y - top + HEAD_MM,
  });
  const lines: { kind: FigureLineKind; points: readonly Point[] }[] = [];
  const spots: Point[] = [];
  const labels: FigureLabel[] = [];
  const drawing: Drawing = {
    line(block, kind, points) {
      lines.push({ kind, points: points.map((point) => place(block, point)) });
    },
    down(block, kind, line, between) {
      const [first, last] = [between[0], between[between.length - 1]];
      if (first && last) drawing.line(block, kind, pointsDown(line, first.y, last.y));
    },
    spot(block, point) {
      spots.push(place(block, point));
    },
    label(block, text, point, anchor) {
      const turned = { start: 'end', end: 'start', middle: 'middle' } as const;
      labels.push({ text, at: place(block, point), anchor: block === 'back' ? turned[anchor] : anchor });
    },
    done: () => ({ widthMm, heightMm: foot - top + HEAD_MM + FOOT_MM, lines, spots, labels }),
  };
  for (const block of blocks) {
    if (fromShoulder)
      drawing.line(block, 'guide', [
        { x: 0, y: 0 },
        { x: widths[block], y: 0 },
      ]);
    drawing.line(block, 'done', [
      { x: 0, y: top },
      { x: 0, y: foot },
    ]);
    for (const { y, level } of heights)
      if (level !== null)
        drawing.line(block, 'guide', [
          { x: 0, y },
          { x: widths[block], y },
        ]);
  }
  return drawing;
}

function widthOf({ blocks, pieces }: Draft, block: BlockName): number {
  const own = pieces.filter((piece) => piece.block === block).map((piece) => extent(piece).right);
  return Math.max(100, ...(blocks?.[block].width.values() ?? []), ...own);
}

function extent({ edges }: Piece): { top: number; foot: number; right: number } {
  const points = edges.flatMap((edge) => edge.points);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { top: Math.min(...ys), foot: Math.max(...ys), right: Math.max(...xs) };
}
