// Places pieces on the plan with their lines, and writes texts on them.

import type { Piece, Point } from '../../engine';
import { type Box, moved } from '../geometry/box';
import { halfTurned } from '../geometry/halfTurn';
import type { Placement } from '../packing/placements';
import { eyeletLines } from '../panel/eyeletLines';
import { panelLines } from '../panel/panelLines';
import { panelTexts } from '../panel/panelTexts';
import type { PlacedText, Stroke } from '../panel/strokes';
import type { PlanInput } from './planInput';

/** How large texts are for the distance at which they are read. */
export interface Reading {
  /** Factor on the sizes of texts on paper, where there is room. */
  readonly textScale: number;
  /** How much farther heavier lines reach to either side than on paper. mm */
  readonly heavierMm: number;
}

const PAPER_READING: Reading = { textScale: 1, heavierMm: 0 };

export interface LinedPiece {
  readonly piece: Piece;
  readonly lines: readonly Stroke[];
}

/** A piece on the plan. Lines and texts are in the coordinates of the plan. */
export interface PlacedPanel extends LinedPiece {
  /** It lies upside down: `piece` is turned by half a turn, not mirrored, and its texts read upright. */
  readonly turned: boolean;
  /** Added to the coordinates of `piece`. mm */
  readonly offset: Point;
  readonly texts: readonly PlacedText[];
}

export const linedPieces = ({ draft, making }: PlanInput): LinedPiece[] =>
  [...draft.pieces, ...draft.extras].map((piece) => ({
    piece,
    lines: [...panelLines(piece), ...(making ? eyeletLines(draft, making, piece.id) : [])],
  }));

/** Panels at their placements with their texts, which keep clear of `bands` of the plan where there is room. */
export function placePanels(
  lined: readonly LinedPiece[],
  placements: readonly Placement[],
  { client, savedDraft }: PlanInput,
  bands: readonly Box[],
  { textScale, heavierMm }: Reading = PAPER_READING,
): PlacedPanel[] {
  const names = {
    client: client.name,
    draft: savedDraft.name,
    unit: client.unit,
    style: savedDraft.style,
    textScale,
    heavierMm,
  };
  return lined.map((drafted, i) => {
    const { turned, offset } = placements[i] ?? { turned: false, offset: { x: 0, y: 0 } };
    const { piece, lines } = turned ? halfTurned(drafted) : drafted;
    const ownBands = bands.map((band) => shifted(band, { x: -offset.x, y: -offset.y }));
    const { texts, leaders } = panelTexts(piece, lines, names, ownBands);
    return movedPanel(
      { piece, turned, offset: { x: 0, y: 0 }, lines: [...lines, ...leaders], texts },
      offset,
    );
  });
}

const shifted = (box: Box, by: Point): Box => ({
  left: box.left + by.x,
  right: box.right + by.x,
  top: box.top + by.y,
  bottom: box.bottom + by.y,
});

/** A panel moved on the plan. */
export const movedPanel = (panel: PlacedPanel, by: Point): PlacedPanel => ({
  ...panel,
  offset: { x: panel.offset.x + by.x, y: panel.offset.y + by.y },
  lines: panel.lines.map((line) => ({ ...line, points: moved(line.points, by) })),
  texts: panel.texts.map((text) => ({
    ...text,
    start: { x: text.start.x + by.x, y: text.start.y + by.y },
  })),
});
