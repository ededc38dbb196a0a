// The layout of the two half blocks on the canvas: the front with its centre line on the left, the back mirrored with its centre
// line on the right, so that both side seams face each other. Both share one coordinate system, canvas mm: x right, y down.

import {
  type Block,
  type BlockName,
  type Draft,
  type LevelName,
  type Piece,
  type Point,
  xAt,
} from '../../engine';

export interface CanvasLayout {
  /** x of the centre line of each block, canvas mm. */
  readonly centreX: Readonly<Record<BlockName, number>>;
  /** The rectangle that holds all that is drawn, canvas mm. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Heights at which the lines of levels far below the hem are drawn, out of scale, canvas mm. */
  readonly beyond: Partial<Readonly<Record<LevelName, number>>>;
}

/** Which of the two blocks are shown. */
export type ShownBlocks = BlockName | 'both';

/** Margins around the blocks and between them, mm. */
const ROOM = { around: 20, between: 34, above: 16, below: 20 } as const;
/** The distance between lines that are drawn out of scale, and from the last one in scale, mm: name and note have room between. */
const BEYOND_MM = { apart: 26, below: 30 } as const;

/** The layout of a draft; null when it has no blocks. */
export function layOut(draft: Draft): CanvasLayout | null {
  const { blocks, span, levels } = draft;
  const highest = levels[0];
  if (!blocks || !span || !highest) return null;
  const width = widest(blocks.front, span) + ROOM.between + widest(blocks.back, span);
  const heads = bandsOf(draft).flatMap(({ edges }) =>
    edges.flatMap(({ points }) => points.map(({ y }) => y)),
  );
  const top = Math.min(highest.y, span.highest, ...heads.map((y) => y - BAND_LIFT_MM)) - ROOM.above;
  const foot = Math.max(span.lowest, span.waist + 60) + ROOM.below;
  const lowest = Math.max(...levels.filter(({ y }) => y <= foot).map(({ y }) => y));
  const first = Math.max(foot, lowest + BEYOND_MM.below);
  const beyond = levels
    .filter(({ y }) => y > foot)
    .map(({ name }, i) => [name, first + i * BEYOND_MM.apart] as const);
  return {
    centreX: { front: 0, back: width },
    left: -ROOM.around,
    top,
    width: width + 2 * ROOM.around,
    height: (beyond.length > 0 ? first + (beyond.length - 1) * BEYOND_MM.apart + ROOM.below : foot) - top,
    beyond: Object.fromEntries(beyond),
  };
}

/** The height at which the line of a level at `y` is drawn, canvas mm. */
export const lineHeight = ({ beyond }: Pick<CanvasLayout, 'beyond'>, level: LevelName, y: number): number =>
  beyond[level] ?? y;

/** The layout with no more in it than the blocks that are shown; both keep their places. */
export function layoutOf(layout: CanvasLayout, { blocks, span }: Draft, shown: ShownBlocks): CanvasLayout {
  if (shown === 'both' || !blocks || !span) return layout;
  const width = widest(blocks[shown], span);
  const left = shown === 'front' ? layout.centreX.front : layout.centreX.back - width;
  return { ...layout, left: left - ROOM.around, width: width + 2 * ROOM.around };
}

/** The distance at which an off-shoulder band is drawn above the panels it is sewn to, mm. */
export const BAND_LIFT_MM = 18;

/** The off-shoulder bands of a draft, in the coordinates of their blocks. */
export const bandsOf = ({ extras }: Draft): Piece[] => extras.filter(({ kind }) => kind === 'band');

/** The greatest width of a block between its top edge and its hem, mm. */
function widest({ sideSeam }: Block, { highest, lowest }: NonNullable<Draft['span']>): number {
  const heights = [highest, lowest, ...sideSeam.ys.filter((y) => y > highest && y < lowest)];
  return Math.max(...heights.map((y) => xAt(sideSeam, y)));
}

/** +1 where the block's x increases to the right on the canvas, −1 where it is mirrored. */
export const directionOf = (block: BlockName): 1 | -1 => (block === 'front' ? 1 : -1);

/** Converts a point of a block, mm, to canvas mm. */
export function onCanvas(layout: CanvasLayout, block: BlockName, point: Point): Point {
  return { x: layout.centreX[block] + directionOf(block) * point.x, y: point.y };
}
