// Sets lines of text as a block that is placed and turned as a whole.

import type { Point } from '../../engine';
import { MM_PER_POINT, textWidth } from '../text/textWidth';
import type { PlacedText } from './strokes';

export interface TextLine {
  readonly text: string;
  readonly sizePt: number;
  readonly bold: boolean;
}

export interface TextBlock {
  readonly lines: readonly (TextLine & { readonly widthMm: number; readonly baselineMm: number })[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A box that may be turned about its centre. */
export interface TurnedBox {
  readonly centre: Point;
  readonly halfWidth: number;
  readonly halfHeight: number;
  /** Clockwise as seen on paper, rad. */
  readonly turnRad: number;
}

// The face's ascender and descender as factors of the size (b ends at 0.722, g at −0.198), and the line spacing.
const ASCENT = 0.72;
const DESCENT = 0.21;
const LINE = 1.28;

/** Sets lines below each other, with all sizes multiplied by `scale`. */
export function setBlock(lines: readonly TextLine[], scale = 1): TextBlock {
  const set: TextBlock['lines'][number][] = [];
  let baselineMm = 0;
  for (const line of lines) {
    const sizePt = line.sizePt * scale;
    baselineMm += sizePt * MM_PER_POINT * (set.length === 0 ? ASCENT : LINE);
    set.push({ ...line, sizePt, baselineMm, widthMm: textWidth(line.text, sizePt, line.bold) });
  }
  const last = set[set.length - 1];
  return {
    lines: set,
    widthMm: Math.max(0, ...set.map((line) => line.widthMm)),
    heightMm: last ? last.baselineMm + last.sizePt * MM_PER_POINT * DESCENT : 0,
  };
}

/** The box of a block whose centre is at `centre`. */
export const boxOf = (block: TextBlock, centre: Point, turnRad: number): TurnedBox => ({
  centre,
  halfWidth: block.widthMm / 2,
  halfHeight: block.heightMm / 2,
  turnRad,
});

/** The lines of a block as placed texts, flush left in the box or centred in it. */
export function textsOfBlock(
  block: TextBlock,
  { centre, turnRad }: TurnedBox,
  centred = false,
): PlacedText[] {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return block.lines.map(({ text, sizePt, bold, widthMm, baselineMm }) => {
    const along = centred ? -widthMm / 2 : -block.widthMm / 2;
    const down = baselineMm - block.heightMm / 2;
    const start = { x: centre.x + along * cos - down * sin, y: centre.y + along * sin + down * cos };
    return { text, start, turnRad, sizePt, bold };
  });
}

/** The corners of a turned box, in order. */
export function cornersOf({ centre, halfWidth, halfHeight, turnRad }: TurnedBox): Point[] {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([along, down]) => {
    const [u, v] = [(along as number) * halfWidth, (down as number) * halfHeight];
    return { x: centre.x + u * cos - v * sin, y: centre.y + u * sin + v * cos };
  });
}

/** The box of a placed text. */
export function boxOfText({ text, start, turnRad, sizePt, bold }: PlacedText): TurnedBox {
  const block = setBlock([{ text, sizePt, bold }]);
  const [along, up] = [block.widthMm / 2, (block.lines[0]?.baselineMm ?? 0) - block.heightMm / 2];
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const centre = { x: start.x + along * cos + up * sin, y: start.y + along * sin - up * cos };
  return boxOf(block, centre, turnRad);
}

/** A text's direction turned by π where it would read upside down, rad. Texts on nearly upright edges read upwards. */
export function readable(turnRad: number): number {
  let turn = turnRad;
  while (turn > Math.PI / 2 - NEARLY_UPRIGHT) turn -= Math.PI;
  while (turn <= -Math.PI / 2 - NEARLY_UPRIGHT) turn += Math.PI;
  return turn;
}

const NEARLY_UPRIGHT = Math.PI / 9;
