// How the two half blocks lie on the cutting table: front with its centre line left, back mirrored, centre back right,
// so that both side seams face each other. One coordinate system in mm, "table" mm.

import { type Block, type BlockName, type Draft, type Piece, type Point, xAt } from '../../engine';

export interface CanvasLayout {
  /** x of the front's centre line and of the back's, table mm. */
  readonly centreX: Readonly<Record<BlockName, number>>;
  /** What is to be seen, table mm. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Room around the blocks and between them, mm. */
const ROOM = { around: 26, between: 34, above: 22, below: 26 } as const;

/** The layout for a draft; null when there is no block to lay out. */
export function layOut(draft: Draft): CanvasLayout | null {
  const { blocks, span, levels } = draft;
  const [first, last] = [levels[0], levels[levels.length - 1]];
  if (!blocks || !span || !first || !last) return null;
  const width = widest(blocks.front, span) + ROOM.between + widest(blocks.back, span);
  const heads = bandsOf(draft).flatMap(({ edges }) =>
    edges.flatMap(({ points }) => points.map(({ y }) => y)),
  );
  const top = Math.min(first.y, span.highest, ...heads.map((y) => y - BAND_LIFT_MM)) - ROOM.above;
  const foot = Math.max(span.lowest, span.waist + 60) + ROOM.below;
  return {
    centreX: { front: 0, back: width },
    left: -ROOM.around,
    top,
    width: width + 2 * ROOM.around,
    height: foot - top,
  };
}

/** An off-shoulder band lies so far above the panels it is sewn to. mm */
export const BAND_LIFT_MM = 18;

/** The off-shoulder bands of a draft, in the coordinates of their blocks. */
export const bandsOf = ({ extras }: Draft): Piece[] => extras.filter(({ id }) => id.endsWith('-band'));

/** The farthest a block reaches from its centre line between top edge and hem, mm. */
function widest({ sideSeam }: Block, { highest, lowest }: NonNullable<Draft['span']>): number {
  const heights = [highest, lowest, ...sideSeam.ys.filter((y) => y > highest && y < lowest)];
  return Math.max(...heights.map((y) => xAt(sideSeam, y)));
}

/** +1 where the block's x grows to the right on the table, −1 where it is mirrored. */
export const directionOf = (block: BlockName): 1 | -1 => (block === 'front' ? 1 : -1);

/** A place of a block on the table. */
export function onCanvas(layout: CanvasLayout, block: BlockName, point: Point): Point {
  return { x: layout.centreX[block] + directionOf(block) * point.x, y: point.y };
}
