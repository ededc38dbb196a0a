// The width of a panel at a level, given as a number: the wedge beside the panel is moved until it is so wide.

import {
  type Draft,
  type LevelName,
  type Piece,
  partingWedges,
  type Style,
  stationOf,
  xAt,
} from '../../engine';
import { setStation } from './commands';
import { keepAxis } from './wedges/axis';

/** A width nearer than this to what was asked is as asked. mm */
const THERE_MM = 0.02;
const MOST_ROUNDS = 6;

interface PanelWidth {
  /** The id of the piece. */
  readonly piece: string;
  readonly level: LevelName;
  /** What it is to measure there, mm. */
  readonly width: number;
}

/** The wedge that is moved, and whether the panel grows when its axis goes away from the centre line (+1) or towards it (−1). */
interface Mover {
  readonly wedge: string;
  readonly sense: 1 | -1;
}

/**
 * The style in which a panel has another width at a level: the wedge on its far side is moved, or, of the panel at the side,
 * the wedge on its near side, its axis as a whole and its intake as it was. A balanced wedge is sized anew where it comes to
 * stand, so the style is drafted again a few times. A block without a wedge to move, and a width the panel does not have,
 * leave the style as it is.
 *
 * @param redraft drafts another style for the same body
 */
export function setPanelWidth(
  style: Style,
  { piece, level, width }: PanelWidth,
  redraft: (style: Style) => Draft,
): Style {
  const before = redraft(style);
  const from = widthOf(before, piece, level);
  const mover = moverOf(before, piece);
  if (from === null || !mover) return style;
  let [by, set] = [0, style];
  let now = from;
  for (let round = 0; round < MOST_ROUNDS && Math.abs(width - now) > THERE_MM; round += 1) {
    by += (width - now) * mover.sense;
    set = moved(style, before, mover.wedge, by);
    const next = widthOf(redraft(set), piece, level);
    if (next === null) break;
    now = next;
  }
  return set;
}

/** The width of a panel at a level, mm, on its finished outline; null where it does not reach the level. */
const widthOf = ({ proof }: Draft, piece: string, level: LevelName): number | null =>
  proof.ledger.find((row) => row.level === level)?.widths[piece] ?? null;

function moverOf({ pieces, blocks }: Draft, id: string): Mover | null {
  const piece = pieces.find((each) => each.id === id);
  if (!piece || !blocks) return null;
  const block = blocks[piece.kind === 'sidePanel' ? 'front' : piece.block];
  const cuts = partingWedges(block).map(({ id }) => id);
  const number = numberOnBlock(piece, cuts.length);
  const [outer, inner] = [cuts[number - 1], cuts[number - 2]];
  if (outer) return { wedge: outer, sense: 1 };
  return inner === undefined ? null : { wedge: inner, sense: -1 };
}

const numberOnBlock = ({ kind, number }: Piece, cuts: number): number =>
  kind === 'sidePanel' ? cuts + 1 : number;

/** The style with a wedge's axis moved as a whole, mm away from the centre line. */
function moved(style: Style, { blocks, levels }: Draft, id: string, by: number): Style {
  const waist = levels.find(({ name }) => name === 'waist');
  const block =
    blocks && [blocks.front, blocks.back].find((each) => each.wedges.some((one) => one.id === id));
  const wedge = block?.wedges.find((each) => each.id === id);
  const width = block?.width.get('waist');
  if (!waist || !block || !wedge || width === undefined) return style;
  const at = xAt(wedge.axis, waist.y);
  const station =
    wedge.station + stationOf(at + by, block.bustLine, width) - stationOf(at, block.bustLine, width);
  const there = setStation(style, id, Math.min(1, Math.max(-0.99, station)));
  return keepAxis(there, { wedge, block, levels }, by);
}
