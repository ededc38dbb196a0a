// One piece as one block of a DXF file.

import { pieceLabel } from '../../document';
import type { Piece, Point } from '../../engine';
import { balanceMarkLine, panelLines } from '../panel/panelLines';
import { ascii } from '../text/ascii';
import { LAYERS } from './layers';
import {
  lineEntity,
  pointEntity,
  pointTags,
  ringEntity,
  rowEntity,
  type Tags,
  tag,
  textEntity,
} from './tags';

/** The outline turns by more than this at a corner, and by less between the points of a flattened curve. rad */
const CORNER_RAD = 0.25;
const TEXT_MM = 4;

/** The block of a piece in its own coordinates. `holes` are added to its drill marks, `remarks` are written below its name. */
export function pieceBlock(
  piece: Piece,
  name: string,
  holes: readonly Point[],
  remarks: readonly string[],
): Tags {
  const sewn = piece.edges.flatMap(({ points }) => points.slice(0, -1));
  return [
    ...tag(0, 'BLOCK'),
    ...tag(8, '0'),
    ...tag(2, name),
    ...tag(70, 0),
    ...pointTags({ x: 0, y: 0 }),
    ...tag(3, name),
    ...ringEntity(LAYERS.cut.name, piece.cutLine),
    ...outlinePoints(piece.cutLine),
    ...ringEntity(LAYERS.sew.name, sewn),
    ...panelLines(piece)
      .filter(({ kind }) => kind === 'fold')
      .flatMap(({ points }) => lineEntity(LAYERS.mirror.name, points[0] as Point, points.at(-1) as Point)),
    // The legs of an open dart are part of the sew line.
    ...piece.darts
      .filter(({ open }) => !open)
      .flatMap(({ inner, outer }) => [
        ...rowEntity(LAYERS.internal.name, inner),
        ...rowEntity(LAYERS.internal.name, outer),
      ]),
    ...lineEntity(LAYERS.grain.name, piece.grain[0], piece.grain[1]),
    ...piece.marks.flatMap((mark) => {
      if (mark.kind === 'drill') return pointEntity(LAYERS.drill.name, mark.at);
      const markLine = balanceMarkLine(mark, piece);
      // The notch is where the mark's line crosses the cut line.
      return markLine
        ? [
            ...pointEntity(LAYERS.notch.name, markLine.outer),
            ...lineEntity(LAYERS.internal.name, markLine.outer, markLine.inner),
          ]
        : [];
    }),
    ...holes.flatMap((hole) => pointEntity(LAYERS.drill.name, hole)),
    ...texts(piece, remarks),
    ...tag(0, 'ENDBLK'),
    ...tag(8, '0'),
  ];
}

const outlinePoints = (ring: readonly Point[]): Tags =>
  ring.flatMap((point, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as Point;
    const after = ring[(i + 1) % ring.length] as Point;
    const [ax, ay, bx, by] = [point.x - before.x, point.y - before.y, after.x - point.x, after.y - point.y];
    const turn = Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
    return pointEntity((turn > CORNER_RAD ? LAYERS.turnPoint : LAYERS.curvePoint).name, point);
  });

function texts(piece: Piece, remarks: readonly string[]): Tags {
  const content = [
    `Piece Name: ${ascii(pieceLabel(piece))}`,
    `Quantity: ${piece.cut.count}${piece.cut.onFold ? ' on fold' : ''}`,
    'Units: METRIC (1 unit = 1 mm)',
    ...remarks,
  ];
  // Texts read upwards along the grain line, where every piece has room.
  const foot = piece.grain[1];
  return content.flatMap((line, i) =>
    textEntity(LAYERS.cut.name, { x: foot.x + (i + 1) * 1.6 * TEXT_MM, y: foot.y }, TEXT_MM, line, 90),
  );
}
