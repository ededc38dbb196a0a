// Truing left to right: the two centre edges of a block made equal from waist to top and from waist to hem, and their
// balance marks set alike.

import { heightAtLength, seamLength } from '../geometry/seamLength';
import { type SmoothLine, straightDown, xAt } from '../geometry/smoothLine';
import { innerEdge, longEdgeIndex } from '../pieces/edgeLookup';
import type { Edge, Piece } from '../pieces/piece';
import type { EdgeNode, Style } from '../style/style';
import { type BlockName, type LevelName, SIDES, type Side } from '../terms/names';
import type { Draft } from './draft';

type Halves = Readonly<Record<Side, Draft>>;

/** A half's centre edge: the line it lies on, where the waist is, and its ends; heights in mm. */
interface CentreEdge {
  readonly piece: Piece;
  readonly edge: Edge;
  readonly line: SmoothLine;
  readonly waist: number;
  readonly top: number;
  readonly hem: number;
}

/** The centre edge of a block of a half; null where its panel was not made. */
export function centreEdge(half: Draft, name: BlockName): CentreEdge | null {
  const piece = half.pieces.find((each) => each.block === name && each.number === 1);
  const edge = piece && innerEdge(piece);
  const block = half.blocks?.[name];
  const [first, last] = [edge?.points[0], edge?.points.at(-1)];
  if (!piece || !block || !half.span || edge?.role !== 'centre' || !first || !last) return null;
  const drafted = block.wedges.find((wedge) => wedge.onCentre)?.outerLeg ?? straightDown(0);
  const { line, waist } = half.centres?.[name] ?? { line: drafted, waist: half.span.waist };
  return { piece, edge, line, waist, top: first.y, hem: last.y };
}

/** How far the upper and the lower end of a half's centre edges have to go down, mm. */
export type CentreMoves = Readonly<Record<BlockName, { readonly top: number; readonly hem: number }>>;

/**
 * How far each half's centre edges have to be moved at their ends for left and right to be as long as their mean, measured
 * from the waist; nothing where one of them was not made.
 */
export function mateCentres(halves: Halves): Record<Side, CentreMoves> {
  const movesOf = (side: Side, block: BlockName): CentreMoves[BlockName] => {
    const edges = SIDES.map((each) => centreEdge(halves[each], block));
    const own = centreEdge(halves[side], block);
    const [left, right] = edges;
    if (!own || !left || !right) return { top: 0, hem: 0 };
    const move = (end: 'top' | 'hem'): number => {
      const [a, b] = [left, right].map((each) => seamLength(each.line, each.waist, each[end])) as [
        number,
        number,
      ];
      if (Math.abs(a - b) < ALIKE_MM) return 0;
      return heightAtLength(own.line, own.waist, (a + b) / 2) - own[end];
    };
    return { top: move('top'), hem: move('hem') };
  };
  const movesOfSide = (side: Side): CentreMoves => ({
    front: movesOf(side, 'front'),
    back: movesOf(side, 'back'),
  });
  return { left: movesOfSide('left'), right: movesOfSide('right') };
}

/** A difference that no tape shows. mm */
const ALIKE_MM = 1e-6;

/** A style with the centre places of its top edge and hem moved. */
export function withCentresMoved(style: Style, { front, back }: CentreMoves): Style {
  const { topShape, hemShape } = style;
  const moved = (node: EdgeNode, by: number): EdgeNode => ({ ...node, beyond: node.beyond + by });
  return {
    ...style,
    topShape: {
      ...topShape,
      centreFront: moved(topShape.centreFront, -front.top),
      centreBack: moved(topShape.centreBack, -back.top),
    },
    hemShape: {
      ...hemShape,
      centreFront: moved(hemShape.centreFront, front.hem),
      centreBack: moved(hemShape.centreBack, back.hem),
    },
  };
}

/** The marks of both centre edges, by side, at the mean of their distances from the waist; how far one moved at most, mm. */
export function centreMarks(
  left: CentreEdge,
  right: CentreEdge,
): { readonly marks: Readonly<Record<Side, Piece['marks']>>; readonly drift: number } {
  const along = (own: CentreEdge): Map<LevelName, number> =>
    new Map(
      own.piece.marks
        .filter((mark) => mark.edge === longEdgeIndex(own.piece, 'inner'))
        .flatMap(({ level, at }): [LevelName, number][] =>
          level === null ? [] : [[level, seamLength(own.line, own.waist, at.y)]],
        ),
    );
  const [leftAlong, rightAlong] = [along(left), along(right)];
  let drift = 0;
  const placed = [...leftAlong].flatMap(([level, length]) => {
    const other = rightAlong.get(level);
    if (other === undefined) return [];
    drift = Math.max(drift, Math.abs(length - other) / 2);
    return [{ level, length: (length + other) / 2 }];
  });
  const marksOf = (own: CentreEdge): Piece['marks'] => {
    const edge = longEdgeIndex(own.piece, 'inner');
    return [
      ...placed.map(({ level, length }) => {
        const y = heightAtLength(own.line, own.waist, length);
        return { kind: 'balance', level, at: { x: xAt(own.line, y), y }, edge } as const;
      }),
      ...own.piece.marks.filter((mark) => mark.edge !== edge),
    ];
  };
  return { marks: { left: marksOf(left), right: marksOf(right) }, drift };
}
